/** What a chart shows, read from the workbook at one moment: all that drawing needs. */
export type ChartPicture = {
  /** Columns stand, bars lie; lines run over categories; points stand at two numbers. */
  readonly kind: "columns" | "bars" | "lines" | "points";
  /** Whether bars of one category stand on each other instead of beside each other. */
  readonly stacked: boolean;
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
  /** Horizontal places of points; other series stand at their categories. */
  readonly horizontal: readonly (number | null)[];
  /** Whether the series is a line among columns, or a line through points. */
  readonly isLine: boolean;
  readonly hasMarks: boolean;
  /** "#rrggbb" where the workbook asks for a colour. */
  readonly colour: string | null;
  /** Colours of single points, by their place. */
  readonly pointColours: { readonly [index: number]: string };
  readonly hasLabels: boolean;
};

export type PictureAxis = {
  readonly title: string | null;
  readonly minimum: number | null;
  readonly maximum: number | null;
  readonly reversed: boolean;
  readonly gridlines: boolean;
  readonly visible: boolean;
};
