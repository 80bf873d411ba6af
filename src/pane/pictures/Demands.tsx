import { useState } from "react";
import { numeral } from "../../language/say";
import { type AskedStanding, type SquadDemand, sureAndMaybe } from "../../programme/demands";
import { Disclosure } from "../parts/Disclosure";
import { demandWords } from "../words/demands";
import { Drawing } from "./Drawing";
import "./demands.css";

const words = demandWords.picture;

const rowHeight = 22;
const nameWidth = 106;
const askedFrom = 110;
const askedWidth = 46;
const plotFrom = 174;
const plotWidth = 126;
const top = 20;
/** Standard deviations to either side of the middle that the plot reaches; who stands beyond is drawn at its edge. */
const reach = 2.5;
/** Width of a weight of 1; a larger one than the room is drawn as wide as the room. */
const widthOfOne = 20;

type Row = {
  readonly quality: string;
  readonly weight: number;
  /** In words, for the table and whoever cannot see the picture. */
  readonly told: string;
  readonly bar: { readonly z: number; readonly limits: AskedStanding["limits"] } | null;
  readonly athletes: readonly { readonly key: string; readonly z: number; readonly stands: boolean }[];
};

/** What is asked of an athlete in each quality, and where they stand: for certain, and as far as noise lets it be. */
export function AthleteDemands({
  athlete,
  asked,
}: {
  readonly athlete: string;
  readonly asked: readonly AskedStanding[];
}) {
  const rows = asked.map(
    ({ quality, weight, z, limits, judgement }): Row => ({
      ...{ quality, weight, athletes: [] },
      bar: z === null ? null : { z, limits },
      told:
        z === null
          ? words.notTested
          : words.athleteTold(
              Math.round(10 * z),
              limits && Math.max(Math.round(5 * (limits.high - limits.low)), 1),
              judgement,
            ),
    }),
  );
  return <Demands title={words.athlete(athlete)} rows={rows} legend={words.athleteKey} />;
}

/** What is asked of the squad in each quality, and where each athlete of it stands. */
export function SquadDemands({ demands }: { readonly demands: readonly SquadDemand[] }) {
  const rows = demands.map(
    ({ quality, weight, weak, strong, tested, z }): Row => ({
      ...{ quality, weight, bar: null },
      told: tested === 0 ? words.notTested : words.squadTold(weak.length, strong.length, tested),
      athletes: z.map((one) => ({
        ...{ key: one.athlete, z: one.z },
        stands: weak.includes(one.athlete) || strong.includes(one.athlete),
      })),
    }),
  );
  return <Demands title={words.squad} rows={rows} legend={words.squadKey} />;
}

function Demands(props: { readonly title: string; readonly rows: readonly Row[]; readonly legend: string }) {
  const { title, rows, legend } = props;
  const [isOpen, setOpen] = useState(false);
  const height = top + rows.length * rowHeight + 2;
  const middle = plotFrom + plotWidth / 2;
  return (
    <figure className="picture demands">
      <Drawing title={title} told={rows.map(({ quality, told }) => `${quality}: ${told}`)} width={300} height={height}>
        <text className="axis" x={askedFrom} y={12}>
          {words.asked}
        </text>
        <text className="axis" x={plotFrom} y={12}>
          {words.below}
        </text>
        <text className="axis" x={plotFrom + plotWidth} y={12} textAnchor="end">
          {words.above}
        </text>
        {rows.map((row, index) => (
          <Line key={row.quality} row={row} y={top + index * rowHeight} />
        ))}
        <line className="zero" x1={middle} x2={middle} y1={top - 2} y2={height} />
      </Drawing>
      <figcaption>{`${legend}. ${words.points}`}</figcaption>
      <Disclosure title={words.table} open={isOpen} onOpenChange={setOpen}>
        <table aria-label={title}>
          <thead>
            <tr>
              <th scope="col">{words.quality}</th>
              <th scope="col">{words.asked}</th>
              <th scope="col">{words.standing}</th>
            </tr>
          </thead>
          <tbody>
            {rows.map(({ quality, weight, told }) => (
              <tr key={quality}>
                <th scope="row">{quality}</th>
                <td>{numeral(Number(weight.toFixed(1)))}</td>
                <td>{told}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </Disclosure>
    </figure>
  );
}

/** Place of a standing on the plot. */
const at = (z: number): number =>
  plotFrom + plotWidth / 2 + (Math.min(Math.max(z, -reach), reach) / reach) * (plotWidth / 2);

const longestName = 17;

function Line({ row: { quality, weight, bar, athletes }, y }: { readonly row: Row; readonly y: number }) {
  const spread = bar && sureAndMaybe(bar.z, bar.limits);
  return (
    <>
      <text className="name" x={0} y={y + 14} textLength={quality.length > longestName ? nameWidth : undefined}>
        {quality.length > 24 ? `${quality.slice(0, 23)}…` : quality}
      </text>
      {weight > 0 && (
        <rect className="asked" x={askedFrom} y={y + 5} width={Math.min(weight * widthOfOne, askedWidth)} height={10} />
      )}
      {spread && (
        <>
          <rect
            className="maybe"
            x={at(spread.maybeBelow)}
            y={y + 5}
            width={Math.max(at(spread.maybeAbove) - at(spread.maybeBelow), 1)}
            height={10}
          />
          {spread.sure !== 0 && (
            <rect
              className="sure"
              x={Math.min(at(0), at(spread.sure))}
              y={y + 5}
              width={Math.abs(at(spread.sure) - at(0))}
              height={10}
            />
          )}
        </>
      )}
      {athletes.map(({ key, z, stands }) => (
        <line key={key} className="athlete" data-stands={stands} x1={at(z)} x2={at(z)} y1={y + 4} y2={y + 16} />
      ))}
      {bar === null && athletes.length === 0 && (
        <text className="axis" x={plotFrom} y={y + 14}>
          {words.notTested}
        </text>
      )}
    </>
  );
}
