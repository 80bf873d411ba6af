import type { Chart, ChartPart } from "../../engine/charts";

const font = "format\\.font\\.(bold|color|italic|name|size|underline)";
const edge = "format\\.border\\.(color|lineStyle|weight)";
const words = `(${font}|${edge}|format\\.fill\\.color|textOrientation)`;

/** The settings of a chart that its part in the file holds, by their paths; the others do not come along. */
const kept = [
  `^title\\.(text|visible|overlay|${words})$`,
  `^legend\\.(visible|position|overlay|${words})$`,
  `^axes\\.(category|value)\\.(title\\.(text|visible|${words})|${words}|minimum|maximum|reversePlotOrder|visible)$`,
  "^axes\\.(category|value)\\.(format\\.line\\.(color|lineStyle|weight)|(major|minor)Gridlines\\.(visible|standard))$",
  "^axes\\.(category|value)\\.(major|minor)Gridlines\\.format\\.line\\.(color|lineStyle|weight)$",
  "^axes\\.(category|value)\\.(linkNumberFormat|numberFormat|majorUnit|minorUnit|(major|minor)TickMark|tickLabelPosition)$",
  "^axes\\.(category|value)\\.(scaleType|logBase)$",
  `^(dataLabels|series\\.\\d+\\.(dataLabels|points\\.\\d+\\.dataLabel))\\.(show\\w+|position|separator|(linkN|n)umberFormat|autoText|${words})$`,
  "^series\\.\\d+\\.(name|values|categories|fill\\.color|line\\.(color|lineStyle|weight))$",
  "^series\\.\\d+\\.look\\.(chartType|gapWidth|overlap|hasDataLabels|marker\\w+|smooth|filtered|showLeaderLines)$",
  "^series\\.\\d+\\.trendlines\\.\\d+\\.(?!showShadow)",
  "^series\\.\\d+\\.points\\.\\d+\\.(hasDataLabel|markerBackgroundColor|format\\.fill\\.color)$",
  "^look\\.(displayBlanksAs|plotVisibleOnly|plotBy)$",
  "^(fill\\.(fill\\.color|roundedCorners|font\\.\\w+|border\\.(color|lineStyle|weight)))$",
  "^plotArea\\.format\\.(fill\\.color|border\\.(color|lineStyle|weight))$",
].map((path) => new RegExp(path));

/** What was set of a chart that the file does not hold, each in words such as "title: show shadow". */
export function settingsLeft({ look, fill, title, legend, dataLabels, plotArea, axes, series }: Chart): string[] {
  const all = { look, fill, title, legend, dataLabels, plotArea, axes, series };
  const left = pathsOf(all as unknown as ChartPart).filter((path) => !kept.some((one) => one.test(path)));
  return [...new Set(left.map(worded))];
}

/** Paths of all that is set: values, not the empty parts they lie in. */
function pathsOf(part: ChartPart): string[] {
  return Object.entries(part).flatMap(([name, value]) => {
    if (value === undefined || value === null || value === "") return [];
    return typeof value === "object" ? pathsOf(value as ChartPart).map((rest) => `${name}.${rest}`) : [name];
  });
}

function worded(path: string): string {
  const [first = "", ...rest] = path
    .split(".")
    .filter((name) => !/^\d+$|^(format|look)$/.test(name))
    .map((name) => name.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`));
  return rest.length > 0 ? `${first}: ${rest.join(" ")}` : first;
}
