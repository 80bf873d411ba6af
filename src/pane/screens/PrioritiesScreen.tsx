import { useMemo, useState } from "react";
import { groupBy } from "../../analyses/groupBy";
import { priorities } from "../../programme/priorities";
import { trainingGroups } from "../../programme/trainingGroups";
import { goTo } from "../../sheet/goTo";
import type { Renewed } from "../../sheet/renewPlanned";
import { writePriorities } from "../../sheet/writePriorities";
import { Amount } from "../parts/Amount";
import { HostTrouble } from "../parts/HostTrouble";
import { Message } from "../parts/Message";
import { NeedsResults } from "../parts/NeedsResults";
import { Page } from "../parts/Page";
import type { Screen } from "../screen";
import { useDeed } from "../useDeed";
import type { ProgrammeFacts } from "../useProgramme";
import { words } from "../words";
import { useWorkbook } from "../workbook";

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
  const { profiles, sides } = facts;
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
      {found.missing.length > 0 && <Missing missing={found.missing} />}
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
        {writing.error !== null && <HostTrouble error={writing.error} />}
        {writing.outcome && <Written outcome={writing.outcome} go={go} />}
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

function Written({ outcome, go }: { readonly outcome: Renewed; readonly go: (screen: Screen) => void }) {
  const { sheet, written, coachs, inTheWay } = outcome;
  if (inTheWay) {
    return (
      <Message tone="trouble" title={words.programme.notWritten}>
        <p>{inTheWay.why}</p>
      </Message>
    );
  }
  return (
    <Message tone="good" title={words.programme.written(sheet, written)}>
      {coachs > 0 && <p>{words.programme.coachs(coachs)}</p>}
      <p>{words.priorities.overrule}</p>
      <button type="button" className="link" onClick={() => void goTo(sheet, "A1")}>
        {words.write.show}
      </button>{" "}
      <button type="button" className="link" onClick={() => go({ kind: "plan" })}>
        {words.tasks.plan.title}
      </button>
    </Message>
  );
}

export function Missing({ missing }: { readonly missing: readonly string[] }) {
  return (
    <Message tone="plain" title={words.programme.missing(missing.length)}>
      <ul>
        {missing.slice(0, shownAtFirst).map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
      {missing.length > shownAtFirst && <p>{words.programme.more(missing.length - shownAtFirst)}</p>}
    </Message>
  );
}
