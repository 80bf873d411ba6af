import { useMemo } from "react";
import { today } from "../../analyses/today";
import { type CycleState, cycleState } from "../../programme/cycle";
import type { Background } from "../../store/background";
import type { Screen } from "../screen";
import { useProgramme } from "../useProgramme";
import { words } from "../words";
import { useWorkbook } from "../workbook";

/** Where the squad is in the cycle, what is due, and the one thing to do next. */
export default function NextStep({ go }: { readonly go: (screen: Screen) => void }) {
  const { background } = useWorkbook();
  const cycle = useCycle();
  if (!cycle) return null;
  const { text, press, screen } = nextStep(cycle, background);
  const due = dueItems(cycle);
  return (
    <section className="next-step" aria-label={words.next.label}>
      <p>{text}</p>
      {due.length > 0 && (
        <ul className="quiet">
          {due.map((item) => (
            <li key={item}>{item}</li>
          ))}
        </ul>
      )}
      <button type="button" className="button" onClick={() => go(screen)}>
        {press}
      </button>
    </section>
  );
}

/** Null while it is being read, and where the workbook cannot be read: what is wrong is told where it is worked on. */
function useCycle(): CycleState | null {
  const { background, state } = useWorkbook();
  const { value: facts, error } = useProgramme();
  return useMemo(() => {
    if (state !== "read" || facts === null || error !== null) return null;
    const { plan, priorities, diary } = facts.programme;
    const begins = plan.map((row) => row.begins).sort()[0];
    return cycleState(
      {
        ...{ squad: background.squad, battery: background.battery, kept: facts.kept, diary },
        hasPriorities: priorities.length > 0,
        block: begins === undefined ? null : { start: begins, weeks: Math.max(...plan.map(({ week }) => week)) },
      },
      today(),
    );
  }, [facts, error, background, state]);
}

type Step = { readonly text: string; readonly press: string; readonly screen: Screen };

function nextStep({ stage, daysOfBlockLeft }: CycleState, { squad, battery }: Background): Step {
  switch (stage) {
    case "setUp":
      return { ...words.next.setUp, screen: { kind: "setUp" } };
    case "test":
      return { ...words.next.test(squad.length, battery.length), screen: { kind: "testDay" } };
    case "understand":
      return { ...words.next.understand, screen: { kind: "priorities" } };
    case "plan":
      return { ...words.next.plan, screen: { kind: "plan" } };
    case "deliver":
      return { ...words.next.deliver(daysOfBlockLeft ?? 0), screen: { kind: "deliver" } };
    case "review":
      return { ...words.next.review, screen: { kind: "question", id: reviewed } };
  }
}

/** The question that a finished block leads to. */
const reviewed = "change";

/** A diary is thought of after this many days without an entry: common practice, no source. */
const diaryGap = 3;
const testsNamed = 3;

function dueItems({ overdue, daysWithoutDiary, stage }: CycleState): string[] {
  const tests = overdue
    .slice(0, testsNamed)
    .map(({ series, athletes, never }) => words.next.due(series, athletes, never));
  const more = overdue.length - tests.length;
  return [
    ...tests,
    ...(more > 0 ? [words.next.moreDue(more)] : []),
    ...(stage === "deliver" && (daysWithoutDiary ?? 0) > diaryGap ? [words.next.noDiary(daysWithoutDiary!)] : []),
  ];
}
