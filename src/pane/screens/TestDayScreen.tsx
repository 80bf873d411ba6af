import { useState } from "react";
import { groupBy } from "../../analyses/groupBy";
import { today } from "../../analyses/today";
import { goTo } from "../../sheet/goTo";
import { type EntrySheetMade, makeEntrySheet } from "../../sheet/makeEntrySheet";
import { type BatteryTest, isEntered } from "../../store/battery";
import { type EntryColumn, planEntrySheet } from "../../store/entrySheet";
import { isSameName, nameKey } from "../../store/sameName";
import type { SquadMember } from "../../store/squad";
import { Day } from "../parts/Day";
import { HostTrouble } from "../parts/HostTrouble";
import { Message } from "../parts/Message";
import { Page } from "../parts/Page";
import { Tick } from "../parts/Tick";
import type { Screen, WishedTests } from "../screen";
import { useDeed } from "../useDeed";
import { words } from "../words";
import { testDayWords } from "../words/testDay";
import { useWorkbook } from "../workbook";

/** Makes the sheet on which a day's results are typed, or written by pencil. */
export default function TestDayScreen(props: {
  readonly wished?: WishedTests | undefined;
  readonly go: (screen: Screen) => void;
}) {
  const { wished, go } = props;
  const { state, error, refresh, background } = useWorkbook();
  const ready = background.squad.length > 0 && background.battery.length > 0;
  return (
    <Page title={words.tasks.testDay.title} text={words.tasks.testDay.question} go={go}>
      {state === "failed" && <HostTrouble error={error} again={refresh} />}
      {state === "read" && !ready && (
        <Message tone="plain" title={testDayWords.notReady}>
          <p>{testDayWords.notReadyText}</p>
          <button type="button" className="button" onClick={() => go({ kind: "setUp" })}>
            {words.tasks.setUp.title}
          </button>
        </Message>
      )}
      {ready && <TestDayForm squad={background.squad} battery={background.battery} wished={wished} go={go} />}
    </Page>
  );
}

function TestDayForm(props: {
  readonly squad: readonly SquadMember[];
  readonly battery: readonly BatteryTest[];
  readonly wished: WishedTests | undefined;
  readonly go: (screen: Screen) => void;
}) {
  const { squad, battery, wished, go } = props;
  const entered = battery.filter(isEntered);
  const names = [...new Set(entered.map(({ test }) => test))];
  const roles = [...new Set(squad.map(({ role }) => role ?? ""))];
  const [day, setDay] = useState(today());
  const [tests, setTests] = useState<ReadonlySet<string>>(
    () => new Set(names.filter((name) => wished?.some(({ test }) => isOf(name, test)))),
  );
  const [without, setWithout] = useState<ReadonlySet<string>>(new Set());
  const making = useDeed<EntrySheetMade>();

  const athletes = squad.filter(
    ({ athlete, role }) =>
      !without.has(role ?? "") && (!wished || wished.some((one) => isSameName(one.athlete, athlete))),
  );
  const plan = planEntrySheet({ date: day, tests: entered.filter(({ test }) => tests.has(test)), athletes });
  const toggled = (set: ReadonlySet<string>, item: string, on: boolean) =>
    new Set(on ? [...set, item] : [...set].filter((one) => one !== item));

  const make = () => void making.run(() => makeEntrySheet(plan));
  const made = making.outcome;
  const withoutRange = [
    ...new Set(plan.columns.flatMap(({ test, use, rule }) => (isForResults(use) && rule === null ? [test] : []))),
  ];

  return (
    <>
      <section className="card" aria-labelledby="day-title">
        <h2 id="day-title">{testDayWords.when}</h2>
        <Day label={testDayWords.day} value={day} onChange={setDay} />
      </section>
      <section className="card" aria-labelledby="tests-title">
        <h2 id="tests-title">{testDayWords.which}</h2>
        {[...groupBy(names, (name) => qualityOf(name, battery))].map(([quality, own]) => (
          <fieldset key={quality} className="ticks">
            <legend>{quality || testDayWords.noQuality}</legend>
            {own.map((name) => (
              <Tick key={name} checked={tests.has(name)} onChange={(on) => setTests(toggled(tests, name, on))}>
                {name}
              </Tick>
            ))}
          </fieldset>
        ))}
        {withoutRange.length > 0 && <p className="quiet">{testDayWords.noRange(withoutRange)}</p>}
      </section>
      <section className="card" aria-labelledby="who-title">
        <h2 id="who-title">{testDayWords.who(athletes.length)}</h2>
        {!wished && roles.length > 1 && (
          <div className="ticks">
            {roles.map((role) => (
              <Tick key={role} checked={!without.has(role)} onChange={(on) => setWithout(toggled(without, role, !on))}>
                {role || testDayWords.noRole}
              </Tick>
            ))}
          </div>
        )}
        {wished && <p className="quiet">{testDayWords.onlyWished}</p>}
      </section>
      {made !== null && (
        <Message tone={made.remembered ? "good" : "trouble"} title={testDayWords.made(made.sheet)}>
          {!made.remembered && <p>{testDayWords.notRemembered}</p>}
          <p>{testDayWords.madeText}</p>
          <button type="button" className="link" onClick={() => void goTo(made.sheet, "A1")}>
            {words.write.show}
          </button>{" "}
          <button type="button" className="link" onClick={() => go({ kind: "keep" })}>
            {words.tasks.keep.title}
          </button>
        </Message>
      )}
      {making.error !== null && <HostTrouble error={making.error} again={make} />}
      <footer className="write-bar">
        <button
          type="button"
          className="button primary"
          disabled={making.busy || tests.size === 0 || athletes.length === 0}
          onClick={make}
        >
          {making.busy
            ? words.write.writing
            : tests.size === 0
              ? testDayWords.chooseTests
              : testDayWords.make(plan.sheet, athletes.length)}
        </button>
      </footer>
    </>
  );
}

const isForResults = (use: EntryColumn["use"]): boolean => use !== "athlete" && use !== "group";

/** Whether a series ("Drop jump, contact time, left") is one of the test. */
const isOf = (test: string, series: string): boolean => nameKey(`${series},`).startsWith(nameKey(`${test},`));

/** The quality a test stands for, by any of its measures: loads have none of their own, the maximum they give has. */
const qualityOf = (name: string, battery: readonly BatteryTest[]): string =>
  battery.find(({ test, quality }) => test === name && quality !== null)?.quality ?? "";
