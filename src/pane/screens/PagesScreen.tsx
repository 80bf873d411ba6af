import { useMemo } from "react";
import { today } from "../../analyses/today";
import { type AthleteFacts, athletePage } from "../../programme/athletePage";
import { isMinorIn } from "../../programme/plannedSquad";
import { priorities } from "../../programme/priorities";
import { decided } from "../../store/priorityTable";
import { isSameName } from "../../store/sameName";
import { NeedsResults } from "../parts/NeedsResults";
import { Page } from "../parts/Page";
import type { Screen } from "../screen";
import type { ProgrammeFacts } from "../useProgramme";
import { useReview } from "../useReview";
import { useProfiles, useResults, useWeakerSides } from "../useStandings";
import { words } from "../words";
import { useWorkbook } from "../workbook";
import { PagesBar } from "./PagesBar";

/** A page for each athlete, with nobody else's results on it. */
export default function PagesScreen({ go }: { readonly go: (screen: Screen) => void }) {
  return (
    <Page title={words.tasks.pages.title} text={words.tasks.pages.question} go={go}>
      <NeedsResults go={go}>{(facts) => <Pages facts={facts} />}</NeedsResults>
    </Page>
  );
}

function Pages({ facts }: { readonly facts: ProgrammeFacts }) {
  const { background } = useWorkbook();
  const results = useResults(facts);
  const reviewed = useReview(facts, results);
  const profiles = useProfiles(results);
  const sides = useWeakerSides(results);
  const pages = useMemo(() => {
    const { programme, kept } = facts;
    const date =
      kept
        .map((result) => result.date)
        .sort()
        .at(-1) ?? today();
    // What the coach has written and decided goes before what would be proposed now.
    const worked =
      programme.priorities.length > 0
        ? decided(programme.priorities)
        : priorities(profiles, sides, background, { most: 3 }).priorities;
    return profiles
      .filter(({ qualities }) => qualities.some(({ z }) => z !== null))
      .map((profile): AthleteFacts => {
        const own = <Row extends { readonly athlete: string }>(rows: readonly Row[]): Row[] =>
          rows.filter(({ athlete }) => isSameName(athlete, profile.athlete));
        return {
          profile,
          priorities: own(worked),
          changes: own(reviewed?.changes ?? []),
          plan: own(programme.plan),
          isMinor: isMinorIn(Number(today().slice(0, 4)), profile.athlete, background),
          date,
        };
      })
      .map(athletePage);
  }, [facts, profiles, sides, reviewed, background]);
  return (
    <>
      <section className="card" aria-labelledby="pages-title">
        <h2 id="pages-title">{words.pages.title(pages.length)}</h2>
        <p>{words.pages.text}</p>
        <p className="quiet">{words.pages.caution}</p>
      </section>
      <PagesBar label={words.deliver.print(pages.length)} pages={pages} />
    </>
  );
}
