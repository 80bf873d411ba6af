import { numeral } from "../../language/say";
import { Drawing } from "./Drawing";

const width = 300;
const height = 200;
const left = 30;
const top = 10;
const bottom = 30;

export type PicturedAthlete = {
  readonly name: string;
  /** Sessions attended, percent. */
  readonly share: number;
  /** Mean change in sizes of the noise; above 0 is better. */
  readonly change: number;
};

/** Attendance across, change upwards, an athlete each; within the band nobody can tell a change from noise. */
export function WorkAndChange(props: {
  readonly title: string;
  readonly athletes: readonly PicturedAthlete[];
  readonly across: string;
  readonly upwards: string;
  readonly band: string;
}) {
  const { title, athletes, across, upwards, band } = props;
  if (athletes.length === 0) return null;
  const lowest = Math.min(80, Math.floor(Math.min(...athletes.map(({ share }) => share)) / 10) * 10);
  const highest = Math.max(100, ...athletes.map(({ share }) => share));
  const reach = Math.max(1.25, ...athletes.map(({ change }) => Math.abs(change) * 1.1));
  const x = (share: number) => left + 6 + ((share - lowest) / (highest - lowest)) * (width - left - 14);
  const y = (change: number) => top + ((reach - change) / (2 * reach)) * (height - top - bottom);
  const told = ({ name, share, change }: PicturedAthlete) =>
    `${name}: ${share.toFixed(0)} %, ${numeral(change.toFixed(1))}`;
  return (
    <figure className="picture">
      <Drawing title={title} told={athletes.map(told)} width={width} height={height}>
        <rect className="band" x={left} y={y(1)} width={width - left} height={y(-1) - y(1)} />
        {[-1, 0, 1].map((change) => (
          <g key={change}>
            <line className="rule" x1={left} x2={width} y1={y(change)} y2={y(change)} />
            <text className="axis" x={left - 4} y={y(change) + 4} textAnchor="end">
              {change > 0 ? `+${change}` : change < 0 ? `−${-change}` : "0"}
            </text>
          </g>
        ))}
        {[lowest, (lowest + 100) / 2, 100].map((share) => (
          <text key={share} className="axis" x={x(share)} y={height - bottom + 14} textAnchor="middle">
            {share}
          </text>
        ))}
        {athletes.map((athlete) => (
          <circle key={athlete.name} className="dot" cx={x(athlete.share)} cy={y(athlete.change)} r={3.5}>
            <title>{told(athlete)}</title>
          </circle>
        ))}
        <text className="axis" x={width} y={height - 2} textAnchor="end">
          {across}
        </text>
      </Drawing>
      <figcaption>
        <span>
          <span className="key" data-tone="dot" /> {upwards}
        </span>
        <span>
          <span className="key" data-tone="band" /> {band}
        </span>
      </figcaption>
    </figure>
  );
}
