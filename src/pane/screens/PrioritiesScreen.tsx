import { useMemo, useState } from "react";
import { groupBy } from "../../analyses/groupBy";
import { priorities } from "../../programme/priorities";
import { trainingGroups } from "../../programme/trainingGroups";
import type { Renewed } from "../../sheet/renewPlanned";
import { writePriorities } from "../../sheet/writePriorities";
import { Amount } from "../parts/Amount";
import { NeedsResults } from "../parts/NeedsResults";
import { Page } from "../parts/Page";
import type { Screen } from "../screen";
import { useDeed } from "../useDeed";
import type { ProgrammeFacts } from "../useProgramme";
import { useProfiles, useResults, useWeakerSides } from "../useStandings";
import { words } from "../words";
import { useWorkbook } from "../workbook";
import { Missing } from "./Missing";
import { RenewedMessage } from "./RenewedMessage";

/** What each athlete should work on first, and why; the coach has the last word. */
export default function PrioritiesScreen({ go }: { readonly go: (screen: Screen) => void }) {
  return (
    <Page title={words.tasks.priorities.title} text={words.tasks.priorities.question} go={go}>
      <NeedsResults go={go}>{(facts) => <Found facts={facts} go={go} />}</NeedsResults>
    </Page>
  );
}

const shownAtFirst = 6;

function Found({ facts, go }: { readonly facts: ProgrammeFacts; readonly go: (screen: Screen) => void }) {
  const { background } = useWorkbook();
  const [most, setMost] = useState(3);
  const [all, setAll] = useState(false);
  const writing = useDeed<Renewed>();
  const results = useResults(facts);
  const profiles = useProfiles(results);
  const sides = useWeakerSides(results);
  const found = useMemo(() => priorities(profiles, sides, background, { most }), [profiles, sides, background, most]);
  const { groups } = useMemo(() => trainingGroups(profiles), [profiles]);
  const athletes = [...groupBy(found.priorities, ({ athlete }) => athlete)];
  const together = groups.filter((group) => group.athletes.length > 1);
  return (
    <>
      <section className="card" aria-labelledby="priorities-title">
        <h2 id="priorities-title">{words.priorities.title(athletes.length)}</h2>
        <dl className="priorities">
          {(all ? athletes : athletes.slice(0, shownAtFirst)).map(([athlete, own]) => (
            <div key={athlete}>
              <dt>{athlete}</dt>
              <dd>
                <ol>
                  {own.map(({ rank, quality, why }) => (
                    <li key={rank}>
                      <strong>{quality}</strong> <span className="quiet">{why}</span>
                    </li>
                  ))}
                </ol>
              </dd>
            </div>
          ))}
        </dl>
        {athletes.length > shownAtFirst && (
          <button type="button" className="link" aria-expanded={all} onClick={() => setAll(!all)}>
            {all ? words.priorities.fewer : words.priorities.all(athletes.length)}
          </button>
        )}
        <Amount
          label={words.priorities.most}
          meaning={words.priorities.mostMeaning}
          unit=""
          value={most}
          low={1}
          high={5}
          trouble={words.settings.range(1, 5, "")}
          onChange={(value) => setMost(Math.round(value))}
        />
      </section>
      <Missing missing={found.missing} />
      {together.length > 0 && (
        <section className="card" aria-labelledby="together-title">
          <h2 id="together-title">{words.priorities.together}</h2>
          <ul>
            {together.map(({ lowest, athletes: members }) => (
              <li key={lowest.join()}>
                <strong>{lowest.join(", ")}</strong> <span className="quiet">{members.join(", ")}</span>
              </li>
            ))}
          </ul>
        </section>
      )}
      <p className="quiet">{words.priorities.rule}</p>
      <footer className="write-bar">
        <RenewedMessage writing={writing} next={{ label: words.tasks.plan.title, go: () => go({ kind: "plan" }) }}>
          <p>{words.priorities.overrule}</p>
        </RenewedMessage>
        <button
          type="button"
          className="button primary"
          disabled={writing.busy || athletes.length === 0}
          onClick={() => void writing.run(() => writePriorities(found.priorities))}
        >
          {writing.busy ? words.write.writing : words.priorities.write}
        </button>
      </footer>
    </>
  );
}
