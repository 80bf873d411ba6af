import { useState } from "react";
import { groupBy } from "../../analyses/groupBy";
import { today } from "../../analyses/today";
import { blocksOf, currentBlock } from "../../programme/blocks";
import { exerciseLibrary } from "../../programme/exerciseLibrary";
import type { Page as PrintedPage } from "../../programme/page";
import { athleteSession, groupSession } from "../../programme/sessionSheets";
import type { Paper } from "../../sheet/printPage";
import { setUpProgramme } from "../../sheet/setUpProgramme";
import { type Background, memberCalled } from "../../store/background";
import type { Exercise } from "../../store/exercises";
import type { PlanRow } from "../../store/planTable";
import { Choice } from "../parts/Choice";
import { HostTrouble } from "../parts/HostTrouble";
import { Message } from "../parts/Message";
import { Page } from "../parts/Page";
import { ReadsProgramme } from "../parts/ReadsProgramme";
import type { Screen } from "../screen";
import { useDeed } from "../useDeed";
import type { ProgrammeFacts } from "../useProgramme";
import { words } from "../words";
import { deliverWords } from "../words/deliver";
import { diaryWords } from "../words/diary";
import { pageWords } from "../words/pages";
import { useWorkbook } from "../workbook";
import { DiaryFromCells } from "./DiaryFromCells";
import { PagesBar } from "./PagesBar";

/** Session sheets to print, and the diary in which it is kept what was done. */
export default function DeliverScreen({ go }: { readonly go: (screen: Screen) => void }) {
  return (
    <Page title={words.tasks.deliver.title} text={words.tasks.deliver.question} go={go}>
      <ReadsProgramme>
        {(facts) => {
          const block = currentBlock(blocksOf(facts.programme.plan), today());
          const { present, exercises } = facts.programme;
          return (
            <>
              <Diary facts={facts} go={go} />
              <DiaryFromCells stands={facts.programme.present.has("diary")} />
              {block ? (
                <Sessions plan={block.rows} exercises={present.has("exercises") ? exercises : exerciseLibrary} />
              ) : (
                <Message tone="plain" title={deliverWords.noPlan}>
                  <button type="button" className="button" onClick={() => go({ kind: "plan" })}>
                    {words.tasks.plan.title}
                  </button>
                </Message>
              )}
            </>
          );
        }}
      </ReadsProgramme>
    </Page>
  );
}

function Diary({ facts, go }: { readonly facts: ProgrammeFacts; readonly go: (screen: Screen) => void }) {
  const making = useDeed<Awaited<ReturnType<typeof setUpProgramme>>>();
  const { present, diary } = facts.programme;
  return (
    <section className="card" aria-labelledby="diary-title">
      <h2 id="diary-title">{diaryWords.title}</h2>
      {present.has("diary") ? (
        <>
          <p>{diaryWords.entries(diary.length)}</p>
          {diary.length > 0 && (
            <button type="button" className="link" onClick={() => go({ kind: "load" })}>
              {words.tasks.load.title}
            </button>
          )}
        </>
      ) : (
        <>
          <p>{diaryWords.none}</p>
          <button
            type="button"
            className="button"
            disabled={making.busy}
            onClick={() => void making.run(() => setUpProgramme({ diary: [] }))}
          >
            {diaryWords.make}
          </button>
        </>
      )}
      {making.error !== null && <HostTrouble error={making.error} />}
    </section>
  );
}

const layouts = ["athletes", "groups", "squad"] as const;
type Layout = (typeof layouts)[number];
const layoutWords: Readonly<Record<Layout, string>> = {
  athletes: deliverWords.perAthlete,
  groups: deliverWords.perGroup,
  squad: deliverWords.forSquad,
};

function Sessions(props: { readonly plan: readonly PlanRow[]; readonly exercises: readonly Exercise[] }) {
  const { plan, exercises } = props;
  const { background } = useWorkbook();
  const sessions = sessionsOf(plan);
  const [wished, setKey] = useState<string | null>(null);
  const [wishedLayout, setLayout] = useState<Layout>("athletes");
  const [paper, setPaper] = useState<Paper>("a4");
  const chosen = sessions.find(({ key }) => key === wished) ?? firstToCome(sessions, today());
  const hasGroups = background.squad.some(({ group }) => group !== null);
  const layout = wishedLayout === "groups" && !hasGroups ? "squad" : wishedLayout;
  const pages = pagesOf(chosen.rows, exercises, background, layout);
  return (
    <>
      <section className="card" aria-labelledby="sessions-title">
        <h2 id="sessions-title">{deliverWords.sheets}</h2>
        <Choice
          label={deliverWords.session}
          value={chosen.key}
          options={sessions.map(
            ({ key, week, session, begins }) => [key, deliverWords.sessionOf(week, session, begins)] as const,
          )}
          onChange={setKey}
        />
        <Choice
          label={deliverWords.layout}
          value={layout}
          options={layouts
            .filter((one) => one !== "groups" || hasGroups)
            .map((one) => [one, layoutWords[one]] as const)}
          onChange={setLayout}
        />
        <Choice label={pageWords.paper} value={paper} options={pageWords.papers} onChange={setPaper} />
      </section>
      <PagesBar label={words.deliver.print(pages.length)} pages={pages} paper={paper} />
    </>
  );
}

type Session = {
  readonly key: string;
  readonly week: number;
  readonly session: number;
  readonly begins: string;
  readonly rows: readonly PlanRow[];
};

/** The sessions of a block in their order. */
const sessionsOf = (plan: readonly PlanRow[]): Session[] =>
  [...groupBy(plan, ({ week, session }) => `${week}.${session}`)]
    .map(([key, rows]) => ({
      ...{ key, rows, week: rows[0]!.week, session: rows[0]!.session },
      begins: rows.map(({ begins }) => begins).sort()[0]!,
    }))
    .sort((a, b) => a.week - b.week || a.session - b.session);

/** The first session of the week that is under way, or of the first to come. */
const firstToCome = (sessions: readonly Session[], day: string): Session =>
  sessions.find((one) => one.week === sessions.findLast(({ begins }) => begins <= day)?.week) ?? sessions[0]!;

function pagesOf(
  rows: readonly PlanRow[],
  exercises: readonly Exercise[],
  background: Background,
  layout: Layout,
): PrintedPage[] {
  const { week, session } = rows[0]!;
  if (layout === "athletes") {
    return [...groupBy(rows, ({ athlete }) => athlete).values()].flatMap(
      (own) => athleteSession(own, week, session, exercises) ?? [],
    );
  }
  const groupOf = ({ athlete }: PlanRow): string =>
    layout === "squad" ? deliverWords.squad : (memberCalled(background, athlete)?.group ?? deliverWords.noGroup);
  return [...groupBy(rows, groupOf)].flatMap(
    ([group, own]) => groupSession(own, group, week, session, exercises) ?? [],
  );
}
