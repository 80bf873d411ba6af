import type { ColumnMap } from "../../reading/columns";
import type { Reading } from "../../reading/readResults";
import { CellButton } from "../parts/CellButton";
import { words } from "../words";

/** Names so alike that they may be one person's: merged if the coach says so, never by themselves. */
export function AlikeNames(props: {
  readonly sheet: string;
  readonly reading: Reading;
  readonly map: ColumnMap;
  readonly setMap: (map: ColumnMap) => void;
}) {
  const { sheet, reading, map, setMap } = props;
  const merged = Object.entries(map.sameAthlete);
  if (reading.alike.length === 0 && merged.length === 0) return null;
  const merge = ([kept, ...others]: readonly string[]) =>
    setMap({ ...map, sameAthlete: { ...map.sameAthlete, ...Object.fromEntries(others.map((name) => [name, kept!])) } });
  const part = (name: string) => {
    const { [name]: _, ...rest } = map.sameAthlete;
    setMap({ ...map, sameAthlete: rest });
  };
  return (
    <section className="card" aria-labelledby="alike-title">
      <h2 id="alike-title">{words.alike.title}</h2>
      <ul className="alike">
        {reading.alike.map(({ names, cells }) => (
          <li key={names.join("|")}>
            <span>{words.alike.pair(names)}</span>
            <span className="cells">
              {cells.map((cell) => (
                <CellButton key={cell} sheet={sheet} cell={cell} />
              ))}
            </span>
            <button type="button" className="link" onClick={() => merge(names)}>
              {words.alike.merge(names[0]!)}
            </button>
          </li>
        ))}
        {merged.map(([name, kept]) => (
          <li key={name}>
            <span>{words.alike.merged(name, kept)}</span>
            <button type="button" className="link" onClick={() => part(name)}>
              {words.alike.part}
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
}
