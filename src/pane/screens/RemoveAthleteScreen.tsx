import { useEffect, useState } from "react";
import { type AthleteFound, type AthleteRemoved, findAthlete, removeAthlete } from "../../sheet/removeAthlete";
import { nameKey } from "../../store/sameName";
import { CellButton } from "../parts/CellButton";
import { Choice } from "../parts/Choice";
import { HostTrouble } from "../parts/HostTrouble";
import { Message } from "../parts/Message";
import { Page } from "../parts/Page";
import type { Screen } from "../screen";
import { useDeed } from "../useDeed";
import { useProgramme } from "../useProgramme";
import { removeAthleteWords as words } from "../words/removeAthlete";
import { useWorkbook } from "../workbook";

/** Takes an athlete out of all that is ours in the workbook: shows what goes and what stays, asks once, and does it. */
export default function RemoveAthleteScreen({ go }: { readonly go: (screen: Screen) => void }) {
  const { background } = useWorkbook();
  const { value: facts, error } = useProgramme();
  const [name, setName] = useState("");
  const removing = useDeed<AthleteRemoved & { readonly name: string }>();
  const names = namesOf([
    ...background.squad.map(({ athlete }) => athlete),
    ...(facts?.kept ?? []).map(({ athlete }) => athlete),
  ]);
  const run = (wished: string) => {
    setName("");
    return removing.run(async () => ({ ...(await removeAthlete(wished)), name: wished }));
  };
  return (
    <Page title={words.title} text={words.text} go={go}>
      {error !== null && <HostTrouble error={error} />}
      {removing.error !== null && <HostTrouble error={removing.error} />}
      {removing.outcome !== null && (
        <>
          <Message tone="good" title={words.done(removing.outcome.name)}>
            <p>{words.doneText}</p>
          </Message>
          <Elsewhere places={removing.outcome.elsewhere} />
        </>
      )}
      {removing.busy ? (
        <p className="quiet" role="status">
          {words.removing}
        </p>
      ) : names.length === 0 ? (
        <p className="quiet">{words.nobody}</p>
      ) : (
        <section className="card">
          <Choice
            label={words.who}
            value={name}
            options={[["", words.choose], ...names.map((one) => [one, one] as const)]}
            onChange={setName}
          />
        </section>
      )}
      {name !== "" && <Found key={name} name={name} remove={() => void run(name)} keep={() => setName("")} />}
    </Page>
  );
}

/** Each name once, however it is spelled, in the order of the alphabet. */
const namesOf = (names: readonly string[]): string[] =>
  [...new Map(names.map((name) => [nameKey(name), name])).values()].sort((a, b) => a.localeCompare(b));

function Found(props: { readonly name: string; readonly remove: () => void; readonly keep: () => void }) {
  const { name, remove, keep } = props;
  const [found, setFound] = useState<AthleteFound | null>(null);
  const [error, setError] = useState<unknown>(null);
  const [asked, setAsked] = useState(false);
  useEffect(() => {
    let isShown = true;
    findAthlete(name).then(
      (value) => isShown && setFound(value),
      (trouble) => isShown && setError(trouble),
    );
    return () => {
      isShown = false;
    };
  }, [name]);
  if (error !== null) return <HostTrouble error={error} />;
  if (!found) {
    return (
      <p className="quiet" role="status">
        {words.looking}
      </p>
    );
  }
  const { tables, lines, pages, marks, elsewhere } = found;
  const isNothing = tables.length + lines + pages.length === 0 && !marks;
  return (
    <>
      <section className="card" aria-labelledby="goes-title">
        <h2 id="goes-title">{isNothing ? words.nothing(name) : words.goes(name)}</h2>
        <ul>
          {tables.map((table) => (
            <li key={table.sheet}>{words.rows(table)}</li>
          ))}
          {lines > 0 && <li>{words.lines(lines)}</li>}
          {pages.length > 0 && <li>{words.pages(pages)}</li>}
          {marks && <li>{words.marks}</li>}
        </ul>
        <p className="quiet">{words.copies}</p>
      </section>
      <Elsewhere places={elsewhere} />
      {!isNothing && !asked && (
        <button type="button" className="button primary" onClick={() => setAsked(true)}>
          {words.press(name)}
        </button>
      )}
      {asked && (
        <Message tone="trouble" title={words.sure(name)}>
          <p>{words.sureText(pages.length > 0)}</p>
          <button type="button" className="button" onClick={remove}>
            {words.yes}
          </button>{" "}
          <button type="button" className="link" onClick={keep}>
            {words.no}
          </button>
        </Message>
      )}
    </>
  );
}

const shownAtMost = 20;

/** Places of the coach's own that name the athlete. */
function Elsewhere({ places }: { readonly places: readonly string[] }) {
  if (places.length === 0) return null;
  return (
    <section className="card" aria-labelledby="stays-title">
      <h2 id="stays-title">{words.stays(places.length)}</h2>
      <p>{words.staysText}</p>
      <ul className="remarks">
        {places.slice(0, shownAtMost).map((place) => {
          const at = /^(.*)!([A-Z]+\d+)( \(.+\))?$/.exec(place);
          const sheet = at?.[1]?.replace(/^'(.*)'$/, "$1").replaceAll("''", "'");
          return (
            <li key={place}>
              {at && sheet !== undefined ? <CellButton sheet={sheet} cell={at[2]!} called={place} /> : null}
              <span>{at ? `${sheet}${at[3] ?? ""}` : place}</span>
            </li>
          );
        })}
      </ul>
      {places.length > shownAtMost && <p className="quiet">{words.left(places.length - shownAtMost)}</p>}
    </section>
  );
}
