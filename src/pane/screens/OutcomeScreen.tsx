import { useMemo } from "react";
import { today } from "../../analyses/today";
import { nextCycle } from "../../programme/nextCycle";
import { priorities } from "../../programme/priorities";
import { reviewReport } from "../../programme/reviewReport";
import { decided } from "../../store/priorityTable";
import { Message } from "../parts/Message";
import { NeedsResults } from "../parts/NeedsResults";
import { Page } from "../parts/Page";
import type { Screen } from "../screen";
import type { ProgrammeFacts } from "../useProgramme";
import { useReview } from "../useReview";
import { useProfiles, useResults, useWeakerSides } from "../useStandings";
import { words } from "../words";
import { useWorkbook } from "../workbook";
import { ReportCard } from "./ReportCard";

/** What became of a block: who changed beyond noise, who was there for it, and what comes next. */
export default function OutcomeScreen({ go }: { readonly go: (screen: Screen) => void }) {
  return (
    <Page title={words.tasks.outcome.title} text={words.tasks.outcome.question} go={go}>
      <NeedsResults go={go}>{(facts) => <Outcome facts={facts} go={go} />}</NeedsResults>
    </Page>
  );
}

function Outcome({ facts, go }: { readonly facts: ProgrammeFacts; readonly go: (screen: Screen) => void }) {
  const results = useResults(facts);
  const reviewed = useReview(facts, results);
  const profiles = useProfiles(results);
  const sides = useWeakerSides(results);
  const { background } = useWorkbook();
  const next = useMemo(() => {
    if (!reviewed || facts.programme.priorities.length === 0) return [];
    const fresh = priorities(profiles, sides, background, { most: 3 }).priorities;
    return nextCycle(decided(facts.programme.priorities), fresh, reviewed);
  }, [reviewed, facts, profiles, sides, background]);
  if (!reviewed || reviewed.changes.length === 0) {
    return (
      <Message tone="plain" title={words.outcome.nothing}>
        <p>{words.outcome.nothingText}</p>
      </Message>
    );
  }
  const count = (fate: (typeof next)[number]["fate"]) => next.filter((one) => one.fate === fate).length;
  return (
    <>
      {next.length > 0 && (
        <section className="card" aria-labelledby="next-cycle-title">
          <h2 id="next-cycle-title">{words.outcome.next}</h2>
          <p>{words.outcome.fates(count("carried over"), count("new"), count("done"), count("set aside"))}</p>
          <button type="button" className="button" onClick={() => go({ kind: "priorities" })}>
            {words.outcome.toPriorities}
          </button>
        </section>
      )}
      <ReportCard report={reviewReport(reviewed, { source: words.outcome.source, date: today() })} />
    </>
  );
}
