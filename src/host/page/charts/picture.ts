/** What a chart shows, read from the workbook at one moment: all that drawing needs. */
export type ChartPicture = {
  readonly kind: "columns" | "bars" | "lines" | "points";
  readonly title: string | null;
  /** One label for each place along the category axis; points have none. */
  readonly categories: readonly string[];
  readonly series: readonly PictureSeries[];
  readonly categoryAxis: PictureAxis;
  readonly valueAxis: PictureAxis;
  readonly legend: "top" | "bottom" | "left" | "right" | null;
  /** How far bars of one category cover each other, from -100 (a bar's width apart) to 100 (on top of each other). */
  readonly overlap: number;
  /** Room between categories, in percent of a bar's width. */
  readonly gapWidth: number;
};

export type PictureSeries = {
  readonly name: string;
  readonly values: readonly (number | null)[];
  /** Horizontal places of points; others stand at their category. */
  readonly horizontal?: readonly (number | null)[];
  /** "#rrggbb" where the workbook asks for a colour. */
  readonly colour: string | null;
  readonly pointColours?: readonly (string | null)[];
  readonly showLabels?: boolean;
};

export type PictureAxis = {
  readonly title: string | null;
  readonly minimum: number | null;
  readonly maximum: number | null;
  readonly reversed: boolean;
  readonly gridlines: boolean;
  readonly visible: boolean;
};
