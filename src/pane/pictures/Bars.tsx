import { useState } from "react";
import type { ReportChart, ReportTable, ReportValue } from "../../analyses/report";
import { numeral } from "../../language/say";
import { words } from "../words";
import { Drawing } from "./Drawing";

const shownAtFirst = 10;
const rowHeight = 20;
const nameWidth = 104;
const plotWidth = 196;
const valueWidth = 34;
const valueGap = 4;

type Bar = {
  readonly key: string;
  readonly name: string;
  readonly value: number;
  readonly band: number | null;
  readonly strong: boolean;
};

/**
 * Bars, one per row of the table: from zero to the right, or to both sides of it where the values have a sign, with a
 * band for what noise explains. The strong bars are solid, the soft ones outlined: the difference does not rest on
 * colour. The numbers stand beside the bars.
 */
export function Bars({ table, chart }: { readonly table: ReportTable; readonly chart: ReportChart }) {
  const [all, setAll] = useState(false);
  const bars = barsOf(table, chart);
  if (bars.length === 0) return null;
  const shown = all ? bars : bars.slice(0, shownAtFirst);
  const reach = Math.max(...bars.map((bar) => Math.max(Math.abs(bar.value), bar.band ?? 0)), 1) * 1.02;
  const twoSided = chart.ends !== undefined;
  const reachWidth = twoSided ? (plotWidth - 2 * valueWidth) / 2 : plotWidth - valueWidth;
  const zero = nameWidth + (twoSided ? valueWidth + reachWidth : 0);
  const length = (value: number) => (Math.abs(value) / reach) * reachWidth;
  const height = shown.length * rowHeight + 22;
  const shownAs = twoSided ? signed : (value: number) => numeral(value.toFixed(1));
  return (
    <figure className="picture">
      <Drawing
        title={chart.title}
        told={shown.map((bar) => `${bar.name} ${shownAs(bar.value)}`)}
        width={nameWidth + plotWidth}
        height={height}
      >
        {chart.ends && (
          <>
            <text className="axis" x={nameWidth} y={12}>
              {chart.ends.negative}
            </text>
            <text className="axis" x={nameWidth + plotWidth} y={12} textAnchor="end">
              {chart.ends.positive}
            </text>
          </>
        )}
        {shown.map((bar, index) => {
          const top = 20 + index * rowHeight;
          const start = bar.value < 0 ? zero - length(bar.value) : zero;
          const atEnd = bar.value < 0 ? start - valueGap : start + length(bar.value) + valueGap;
          return (
            <g key={bar.key}>
              <text className="name" x={0} y={top + 13}>
                {bar.name.length > 16 ? `${bar.name.slice(0, 15)}…` : bar.name}
              </text>
              {bar.band !== null && (
                <rect
                  className="band"
                  x={zero - length(bar.band)}
                  y={top}
                  width={2 * length(bar.band)}
                  height={rowHeight}
                />
              )}
              <rect
                className="bar"
                data-tone={bar.strong ? "strong" : "soft"}
                x={start}
                y={top + 4}
                width={Math.max(length(bar.value), 1)}
                height={rowHeight - 8}
              />
              <text className="value" x={atEnd} y={top + 13} textAnchor={bar.value < 0 ? "end" : "start"}>
                {shownAs(bar.value)}
              </text>
            </g>
          );
        })}
        <line className="zero" x1={zero} x2={zero} y1={18} y2={height} />
      </Drawing>
      <figcaption>
        {[...chart.series, ...(chart.band ? [{ name: chart.band.name, tone: "band" }] : [])].map(({ name, tone }) => (
          <span key={name}>
            <span className="key" data-tone={tone} /> {name}
          </span>
        ))}
        <span className="unit">{chart.valueAxisTitle}</span>
      </figcaption>
      {bars.length > shownAtFirst && (
        <button type="button" className="link" aria-expanded={all} onClick={() => setAll(!all)}>
          {all ? words.answer.showFew : words.answer.showAll(bars.length)}
        </button>
      )}
    </figure>
  );
}

function barsOf(table: ReportTable, chart: ReportChart): Bar[] {
  const place = (key: string) => table.columns.findIndex((column) => column.key === key);
  const name = place(chart.categories);
  const band = chart.band ? place(chart.band.column) : -1;
  const series = chart.series.map(({ column, tone }) => ({ at: place(column), strong: tone === "strong" }));
  const number = (value: ReportValue | undefined) => (typeof value === "number" ? value : null);
  return table.rows.flatMap((row, index) =>
    series.flatMap(({ at, strong }): Bar[] => {
      const value = number(row[at]);
      return value === null
        ? []
        : [{ key: `${index} ${at}`, name: String(row[name]), value, band: number(row[band]), strong }];
    }),
  );
}

const signed = (value: number): string =>
  numeral(`${value > 0 ? "+" : value < 0 ? "−" : ""}${Math.abs(value).toFixed(1)}`);
