import type { Area } from "./area";
import type { Book } from "./book";
import { readText, readValues } from "./cells";
import { resolveArea } from "./references";

/** What was set of a part of a chart, by the API's names of the properties; what was not set has Excel's default. */
export type ChartPart = { [property: string]: unknown };

export type ChartSeries = {
  /** Where the name is read from ("=Sheet1!B1"), or the name itself. */
  name: string;
  /** Addresses the numbers and the categories (or x values) are read from; "" for none. */
  values: string;
  categories: string;
  bubbleSizes: string;
  /** What was set of the series: chartType, gapWidth, overlap, markers .. */
  look: ChartPart;
  fill: ChartPart;
  line: ChartPart;
  dataLabels: ChartPart;
  trendlines: ChartPart[];
  points: Record<number, ChartPart>;
  errorBars: { x: ChartPart; y: ChartPart };
};

/** A chart as plain data: drawn by the page, kept by the file. Places and sizes are in points. */
export type Chart = {
  readonly id: string;
  sheetId: string;
  /** Excel.ChartType, such as "BarClustered". */
  type: string;
  name: string;
  left: number;
  top: number;
  width: number;
  height: number;
  /** Other properties of the chart itself. */
  look: ChartPart;
  fill: ChartPart;
  title: ChartPart;
  legend: ChartPart;
  dataLabels: ChartPart;
  plotArea: ChartPart;
  axes: { category: ChartPart; value: ChartPart; series: ChartPart };
  series: ChartSeries[];
};

/** The numbers and words a chart shows now. */
export type ChartData = {
  readonly categories: readonly string[];
  readonly series: readonly {
    readonly name: string;
    /** null where the cell holds no number: a gap. */
    readonly values: readonly (number | null)[];
    readonly x: readonly (number | null)[];
  }[];
};

export const newSeries = (name: string): ChartSeries => ({
  name,
  values: "",
  categories: "",
  bubbleSizes: "",
  look: {},
  fill: {},
  line: {},
  dataLabels: {},
  trendlines: [],
  points: {},
  errorBars: { x: {}, y: {} },
});

/** How the labels of a series are set, of the series or of the whole chart; null where it has none. */
export function labelsOf({ dataLabels }: Chart, series: ChartSeries): ChartPart | null {
  const part = { ...dataLabels, ...series.dataLabels };
  const shown = series.look.hasDataLabels;
  const asked = Object.entries(part).some(([name, value]) => /^show[A-Z]/.test(name) && value === true);
  return shown === true || (shown === undefined && asked) ? part : null;
}

type ChartEvent = "added" | "deleted" | "changed" | "activated" | "deactivated";

/** The charts of the workbook. The engine has none, so that these are the host's own. */
export class Charts {
  readonly #book: Book;
  readonly #charts: Chart[] = [];
  readonly #listeners = new Set<(event: ChartEvent, chart: Chart) => void>();
  #count = 0;
  #active: Chart | null = null;

  constructor(book: Book) {
    this.#book = book;
  }

  list(sheetId?: string): readonly Chart[] {
    return this.#charts.filter((chart) => sheetId === undefined || chart.sheetId === sheetId);
  }

  get(id: string): Chart | null {
    return this.#charts.find((chart) => chart.id === id) ?? null;
  }

  /** Adds a chart; what is not given is as Excel makes a new one. */
  add(sheetId: string, type: string, given: Partial<Omit<Chart, "id">> = {}): Chart {
    this.#count += 1;
    const chart: Chart = {
      id: `chart-${this.#count}`,
      sheetId,
      type,
      name: `Chart ${this.#count}`,
      left: 96,
      top: 60,
      width: 360,
      height: 216,
      look: {},
      fill: {},
      title: {},
      legend: {},
      dataLabels: {},
      plotArea: {},
      axes: { category: {}, value: {}, series: {} },
      series: [],
      ...given,
    };
    this.#charts.push(chart);
    this.#tell("added", chart);
    return chart;
  }

  remove(chart: Chart): void {
    const at = this.#charts.indexOf(chart);
    if (at < 0) return;
    this.#charts.splice(at, 1);
    if (this.#active === chart) this.#active = null;
    this.#tell("deleted", chart);
  }

  /** A chart the person or an add-in turned to; null for none. */
  activate(chart: Chart | null): void {
    if (chart === this.#active) return;
    const before = this.#active;
    this.#active = chart;
    if (before) this.#tell("deactivated", before);
    if (chart) this.#tell("activated", chart);
  }

  get active(): Chart | null {
    return this.#active;
  }

  removeOf(sheetId: string): void {
    for (const chart of this.list(sheetId)) this.remove(chart);
  }

  changed(chart: Chart): void {
    this.#tell("changed", chart);
  }

  /** Calls back when a chart comes, goes or changes; answers how to stop. Cells that change are told by the book. */
  listen(listener: (event: ChartEvent, chart: Chart) => void): () => void {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  }

  /** Reads the cells a chart points at. */
  dataOf(chart: Chart): ChartData {
    const areaAt = (address: string): Area | null =>
      address ? resolveArea(this.#book, address, { book: this.#book, id: chart.sheetId }) : null;
    const numbers = (address: string): (number | null)[] => {
      const area = areaAt(address);
      return area
        ? readValues(area)
            .flat()
            .map((value) => (typeof value === "number" ? value : null))
        : [];
    };
    const words = (address: string): string[] => {
      const area = areaAt(address);
      return area ? readText(area).flat() : [];
    };
    const series = chart.series.map((one) => ({
      name: one.name.startsWith("=") ? (words(one.name)[0] ?? "") : one.name,
      values: numbers(one.values),
      x: numbers(one.categories),
    }));
    const longest = Math.max(0, ...series.map(({ values }) => values.length));
    const named = chart.series.find(({ categories }) => categories);
    const categories = named ? words(named.categories) : [];
    return {
      categories: Array.from({ length: longest }, (_, index) => categories[index] ?? String(index + 1)),
      series,
    };
  }

  #tell(event: ChartEvent, chart: Chart): void {
    for (const listener of [...this.#listeners]) listener(event, chart);
  }
}
