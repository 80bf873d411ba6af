import { useMemo, useState } from "react";
import { today } from "../../analyses/today";
import { blocksOf, currentBlock } from "../../programme/blocks";
import { athletePages, overviewPage } from "../../programme/printedPages";
import { priorities } from "../../programme/priorities";
import type { Paper } from "../../sheet/printPage";
import { decided } from "../../store/priorityTable";
import { Choice } from "../parts/Choice";
import { NeedsResults } from "../parts/NeedsResults";
import { Page } from "../parts/Page";
import type { Screen } from "../screen";
import type { ProgrammeFacts } from "../useProgramme";
import { useReview } from "../useReview";
import { useProfiles, useSeries, useWeakerSides } from "../useStandings";
import { words } from "../words";
import { pageWords } from "../words/pages";
import { useWorkbook } from "../workbook";
import { LeftOut } from "./LeftOut";
import { PagesBar } from "./PagesBar";

/** A page for each athlete, with nobody else's results on it, or one about all of them for the head coach. */
export default function PagesScreen({ go }: { readonly go: (screen: Screen) => void }) {
  return (
    <Page title={words.tasks.pages.title} text={words.tasks.pages.question} go={go}>
      <NeedsResults go={go}>{(facts) => <Pages facts={facts} />}</NeedsResults>
    </Page>
  );
}

type ForWhom = (typeof pageWords.forWhom)[number][0];
const everybody = "";

function Pages({ facts }: { readonly facts: ProgrammeFacts }) {
  const { background } = useWorkbook();
  const [forWhom, setForWhom] = useState<ForWhom>("athletes");
  const [group, setGroup] = useState<string>(everybody);
  const [paper, setPaper] = useState<Paper>("a4");
  const { results, leftOut } = useSeries(facts);
  const review = useReview(facts, results);
  const profiles = useProfiles(results);
  const sides = useWeakerSides(results);
  const groups = [...new Set(background.squad.flatMap((member) => member.group ?? []))];
  const pages = useMemo(() => {
    const { programme } = facts;
    // What the coach has written and decided goes before what would be proposed now.
    const worked =
      programme.priorities.length > 0
        ? decided(programme.priorities)
        : priorities(profiles, sides, background, { most: 3 }).priorities;
    const { diary } = programme;
    const plan = currentBlock(blocksOf(programme.plan), today())?.rows ?? [];
    const printed = { results, profiles, sides, priorities: worked, review, plan, diary, today: today() };
    return forWhom === "athletes"
      ? athletePages(printed, background)
      : [overviewPage(printed, background, group === everybody ? null : group)];
  }, [facts, results, profiles, sides, review, background, forWhom, group]);
  const isForAthletes = forWhom === "athletes";
  return (
    <>
      <LeftOut leftOut={leftOut} />
      <section className="card" aria-labelledby="pages-title">
        <h2 id="pages-title">{isForAthletes ? words.pages.title(pages.length) : pageWords.coachTitle}</h2>
        <Choice label={pageWords.who} value={forWhom} options={pageWords.forWhom} onChange={setForWhom} />
        {!isForAthletes && groups.length > 1 && (
          <Choice
            label={pageWords.about}
            value={group}
            options={[[everybody, pageWords.wholeSquad], ...groups.map((one) => [one, one] as const)]}
            onChange={setGroup}
          />
        )}
        <Choice label={pageWords.paper} value={paper} options={pageWords.papers} onChange={setPaper} />
        <p>{isForAthletes ? words.pages.text : pageWords.coachText}</p>
        <p className="quiet">{isForAthletes ? words.pages.caution : pageWords.coachCaution}</p>
      </section>
      <PagesBar
        label={isForAthletes ? words.deliver.print(pages.length) : pageWords.make}
        pages={pages}
        paper={paper}
      />
    </>
  );
}
