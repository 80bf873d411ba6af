import { lazy, Suspense } from "react";
import { today } from "../../analyses/today";
import { blocksOf, currentBlock } from "../../programme/blocks";
import { type CycleState, cycleState } from "../../programme/cycle";
import type { Background } from "../../store/background";
import type { Screen } from "../screen";
import { type ProgrammeFacts, useProgramme } from "../useProgramme";
import { nextStepWords } from "../words/nextStep";
import { useWorkbook } from "../workbook";

/** It needs all that priorities are made of, which nobody needs before a retest. */
const AfterRetest = lazy(() => import("./AfterRetest"));

/** Where the squad is in the cycle, what is due, and the one thing to do next. */
export default function NextStep({ go }: { readonly go: (screen: Screen) => void }) {
  const { background, state } = useWorkbook();
  const { value: facts, error } = useProgramme();
  // What is wrong with the workbook is told where it is worked on.
  if (state !== "read" || facts === null || error !== null) return null;
  const cycle = stateNow(facts, background, false);
  if (cycle.stage !== "review") return <Step cycle={cycle} go={go} />;
  return (
    <Suspense fallback={null}>
      <AfterRetest facts={facts}>
        {(arePrioritiesNew) => <Step cycle={stateNow(facts, background, arePrioritiesNew)} go={go} />}
      </AfterRetest>
    </Suspense>
  );
}

function stateNow({ programme, kept }: ProgrammeFacts, background: Background, arePrioritiesNew: boolean): CycleState {
  const { plan, priorities, diary } = programme;
  return cycleState(
    {
      ...{ squad: background.squad, battery: background.battery, kept, diary, arePrioritiesNew },
      hasPriorities: priorities.length > 0,
      block: currentBlock(blocksOf(plan), today()),
    },
    today(),
  );
}

function Step({ cycle, go }: { readonly cycle: CycleState; readonly go: (screen: Screen) => void }) {
  const { background } = useWorkbook();
  const { text, press, screen } = nextStep(cycle, background);
  const due = dueItems(cycle);
  return (
    <section className="next-step" aria-label={nextStepWords.label}>
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

type Told = { readonly text: string; readonly press: string; readonly screen: Screen };

function nextStep({ stage, daysToBlock, daysOfBlockLeft }: CycleState, { squad, battery }: Background): Told {
  switch (stage) {
    case "setUp":
      return { ...nextStepWords.setUp, screen: { kind: "setUp" } };
    case "test":
      return { ...nextStepWords.test(squad.length, battery.length), screen: { kind: "testDay" } };
    case "understand":
      return { ...nextStepWords.understand, screen: { kind: "priorities" } };
    case "plan":
      return { ...nextStepWords.plan, screen: { kind: "plan" } };
    case "deliver":
      return {
        ...(daysToBlock === null ? nextStepWords.deliver(daysOfBlockLeft ?? 0) : nextStepWords.toCome(daysToBlock)),
        screen: { kind: "deliver" },
      };
    case "retest":
      return { ...nextStepWords.retest, screen: { kind: "testDay" } };
    case "review":
      return { ...nextStepWords.review, screen: { kind: "outcome" } };
    case "planNext":
      return { ...nextStepWords.planNext, screen: { kind: "plan" } };
  }
}

/** A diary is thought of after this many days without an entry: common practice, no source. */
const diaryGap = 3;
/** A retest is thought of when so few days of a block are left: common practice, no source. */
const endingDays = 7;
const testsNamed = 3;

function dueItems({ overdue, daysWithoutDiary, daysToBlock, daysOfBlockLeft, stage }: CycleState): string[] {
  const tests = overdue
    .slice(0, testsNamed)
    .map(({ series, athletes, never }) => nextStepWords.due(series, athletes, never));
  const more = overdue.length - tests.length;
  const isEnding = stage === "deliver" && daysToBlock === null && daysOfBlockLeft! <= endingDays;
  return [
    ...(isEnding ? [nextStepWords.ending(daysOfBlockLeft!)] : []),
    ...((daysWithoutDiary ?? 0) > diaryGap ? [nextStepWords.noDiary(daysWithoutDiary!)] : []),
    ...tests,
    ...(more > 0 ? [nextStepWords.moreDue(more)] : []),
  ];
}
