/** Words of the API for parts of charts, and the file's for the same (ECMA-376 part 1, 20.1.10 and 21.2.3). */
export const legendPlaces = { Top: "t", Bottom: "b", Left: "l", Right: "r", Corner: "tr" } as const;
export const tickLabelPlaces = { High: "high", Low: "low", None: "none", NextToAxis: "nextTo" } as const;
export const tickMarks = { None: "none", Cross: "cross", Inside: "in", Outside: "out" } as const;
export const labelPlaces = {
  Center: "ctr",
  InsideEnd: "inEnd",
  InsideBase: "inBase",
  OutsideEnd: "outEnd",
  Left: "l",
  Right: "r",
  Top: "t",
  Bottom: "b",
} as const;
export const dashes = {
  Dash: "dash",
  DashDot: "dashDot",
  DashDotDot: "lgDashDotDot",
  Dot: "sysDot",
  RoundDot: "dot",
} as const;
export const markers = {
  Circle: "circle",
  Dash: "dash",
  Diamond: "diamond",
  Dot: "dot",
  Plus: "plus",
  Square: "square",
  Star: "star",
  Triangle: "triangle",
  X: "x",
} as const;
export const trendlines = {
  Linear: "linear",
  Exponential: "exp",
  Logarithmic: "log",
  MovingAverage: "movingAvg",
  Polynomial: "poly",
  Power: "power",
} as const;
export const blanks = { NotPlotted: "gap", Zero: "zero", Interplotted: "span" } as const;

/** What a data label can show, in the order the file wants. */
export const labelContents = {
  showLegendKey: "showLegendKey",
  showValue: "showVal",
  showCategoryName: "showCatName",
  showSeriesName: "showSerName",
  showPercentage: "showPercent",
  showBubbleSize: "showBubbleSize",
} as const;

/** The file's word for one of the API's; `undefined` for none. */
export const fileWord = (words: Readonly<Record<string, string>>, word: unknown): string | undefined =>
  typeof word === "string" ? words[word] : undefined;

/** The API's word for one of the file's; `undefined` for none. */
export const apiWord = (words: Readonly<Record<string, string>>, word: string | undefined): string | undefined =>
  Object.keys(words).find((key) => words[key] === word);
