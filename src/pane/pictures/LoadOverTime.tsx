import { Drawing } from "./Drawing";

const width = 300;
const height = 132;
const left = 34;
const top = 10;
const bottom = 18;

/** A week of the season: a bar, and what stands beside it to compare with. */
export type PicturedWeek = {
  readonly key: string;
  readonly name: string;
  readonly value: number | null;
  /** What was usual before; null where that is not known. */
  readonly usual: number | null;
  /** Lowest and highest of those behind a mean; null for a single athlete. */
  readonly range: readonly [number, number] | null;
  readonly standsOut: boolean;
  /** The week in words. */
  readonly told: string;
};

/**
 * A season week by week: a bar for each, a dash at what was usual before, a line from the lowest to the highest athlete.
 * A week that stands out is solid, the others are outlined: the difference does not rest on colour.
 */
export function LoadOverTime(props: {
  readonly title: string;
  readonly weeks: readonly PicturedWeek[];
  /** What the marks are called; those that do not occur are left out. */
  readonly legend: {
    readonly bar: string;
    readonly standsOut: string;
    readonly usual: string;
    readonly range: string;
  };
}) {
  const { title, weeks, legend } = props;
  const most = Math.max(...weeks.flatMap(({ value, usual, range }) => [value ?? 0, usual ?? 0, range?.[1] ?? 0]));
  if (weeks.length === 0 || most === 0) return null;
  const reach = niceReach(most);
  const step = (width - left) / weeks.length;
  const y = (value: number) => top + (height - top - bottom) * (1 - value / reach);
  const everyNth = Math.ceil(weeks.length / 6);
  const keys = [
    { name: legend.bar, tone: "soft", there: true },
    { name: legend.standsOut, tone: "strong", there: weeks.some(({ standsOut }) => standsOut) },
    { name: legend.usual, tone: "dash", there: weeks.some(({ usual }) => usual !== null) },
    { name: legend.range, tone: "line", there: weeks.some(({ range }) => range !== null) },
  ].filter(({ there }) => there);
  return (
    <figure className="picture">
      <Drawing title={title} told={weeks.map(({ told }) => told)} width={width} height={height}>
        {[0, reach / 2, reach].map((value) => (
          <g key={value}>
            <line className="rule" x1={left} x2={width} y1={y(value)} y2={y(value)} />
            <text className="axis" x={left - 4} y={y(value) + 4} textAnchor="end">
              {value}
            </text>
          </g>
        ))}
        {weeks.map((week, index) => {
          const start = left + index * step;
          const middle = start + step / 2;
          return (
            <g key={week.key}>
              {week.value !== null && (
                <rect
                  className="bar"
                  data-tone={week.standsOut ? "strong" : "soft"}
                  x={start + step * 0.18}
                  y={y(week.value)}
                  width={step * 0.64}
                  height={y(0) - y(week.value)}
                />
              )}
              {week.range !== null && (
                <line className="range" x1={middle} x2={middle} y1={y(week.range[0])} y2={y(week.range[1])} />
              )}
              {week.usual !== null && (
                <line
                  className="usual"
                  x1={start + step * 0.04}
                  x2={start + step * 0.96}
                  y1={y(week.usual)}
                  y2={y(week.usual)}
                />
              )}
              {index % everyNth === 0 && (
                <text className="axis" x={middle} y={height - 4} textAnchor="middle">
                  {week.name}
                </text>
              )}
            </g>
          );
        })}
      </Drawing>
      <figcaption>
        {keys.map(({ name, tone }) => (
          <span key={name}>
            <span className="key" data-tone={tone} /> {name}
          </span>
        ))}
      </figcaption>
    </figure>
  );
}

/** The next round number from which half is still whole: 2, 4, 6, 8 or 10 times a power of ten. */
function niceReach(most: number): number {
  const power = 10 ** Math.floor(Math.log10(most));
  const times = [1, 2, 4, 6, 8, 10].find((one) => one * power >= most)!;
  return Math.max(times * power, 2);
}
