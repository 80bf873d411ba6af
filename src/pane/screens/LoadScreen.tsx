import { useMemo, useState } from "react";
import { today } from "../../analyses/today";
import {
  type LoadMeasure,
  loadReport,
  measured,
  risenTimes,
  seasonLoadReport,
  squadWeeks,
  timesUsual,
  usualBefore,
} from "../../programme/loadReport";
import { exposures, type LoadWeek, loadWeeks } from "../../programme/loadWeeks";
import { exposuresOf } from "../../programme/roleExposures";
import { memberCalled } from "../../store/background";
import type { DiaryEntry } from "../../store/diary";
import { Choice } from "../parts/Choice";
import { Message } from "../parts/Message";
import { Page } from "../parts/Page";
import { ReadsProgramme } from "../parts/ReadsProgramme";
import { LoadOverTime, type PicturedWeek } from "../pictures/LoadOverTime";
import type { Screen } from "../screen";
import { words } from "../words";
import { loadWords } from "../words/load";
import { useWorkbook } from "../workbook";
import { ReportCard } from "./ReportCard";

/** The diary's weeks: of the squad, of everybody, or of one athlete. */
export default function LoadScreen({ go }: { readonly go: (screen: Screen) => void }) {
  return (
    <Page title={words.tasks.load.title} text={words.tasks.load.question} go={go}>
      <ReadsProgramme>
        {({ programme }) =>
          programme.diary.length > 0 ? (
            <Load diary={programme.diary} />
          ) : (
            <Message tone="plain" title={loadWords.noDiary}>
              <button type="button" className="button" onClick={() => go({ kind: "deliver" })}>
                {words.tasks.deliver.title}
              </button>
            </Message>
          )
        }
      </ReadsProgramme>
    </Page>
  );
}

const squad = "squad:";
const everybody = "everybody:";

function Load({ diary }: { readonly diary: readonly DiaryEntry[] }) {
  const { background } = useWorkbook();
  const [wished, setWhose] = useState(squad);
  const [followed, setMeasure] = useState<LoadMeasure>("load");
  const weeks = useMemo(() => loadWeeks(diary), [diary]);
  const athletes = [...new Set(diary.map(({ athlete }) => athlete))];
  const whose = wished === squad || wished === everybody || athletes.includes(wished) ? wished : squad;
  const athlete = whose === squad || whose === everybody ? null : whose;
  const own = athlete === null ? weeks : weeks.filter((week) => week.athlete === athlete);
  const counted = exposures.filter((kind) => own.some(({ counts }) => counts[kind] !== null));
  const measure = followed === "load" || counted.includes(followed) ? followed : "load";
  const report = useMemo(() => {
    const origin = { source: loadWords.source, date: today(), measure };
    return whose === squad ? seasonLoadReport(weeks, origin) : loadReport(weeks, { ...origin, athlete });
  }, [weeks, whose, athlete, measure]);
  const role = athlete === null ? null : (memberCalled(background, athlete)?.role ?? null);
  const uncounted = exposuresOf(role).filter((kind) => !counted.includes(kind));
  const pictured = whose === squad ? weeksOfSquad(weeks, measure) : weeksOfAthlete(own, measure);
  return (
    <>
      <section className="card" aria-label={loadWords.whose}>
        <Choice
          label={loadWords.whose}
          value={whose}
          options={[
            [squad, loadWords.squad],
            [everybody, loadWords.everybody],
            ...athletes.map((one) => [one, one] as const),
          ]}
          onChange={setWhose}
        />
        {whose !== everybody && counted.length > 0 && (
          <Choice
            label={loadWords.measure}
            value={measure}
            options={(["load", ...counted] as const).map((one) => [one, loadWords.measures[one]] as const)}
            onChange={setMeasure}
          />
        )}
        {uncounted.length > 0 && <p className="quiet">{loadWords.notCounted(uncounted, role!)}</p>}
      </section>
      <ReportCard
        key={whose}
        report={report}
        picture={
          whose !== everybody && (
            <LoadOverTime
              title={loadWords.picture(measure, athlete ?? loadWords.squad)}
              weeks={pictured}
              legend={{
                bar: athlete === null ? loadWords.bar.squad : loadWords.bar.athlete,
                standsOut: loadWords.risen,
                usual: loadWords.usual,
                range: loadWords.range,
              }}
            />
          )
        }
      />
    </>
  );
}

const weeksOfSquad = (weeks: readonly LoadWeek[], measure: LoadMeasure): PicturedWeek[] =>
  squadWeeks(weeks, measure).map(({ monday, mean, lowest, highest }) => ({
    ...{ key: monday, name: loadWords.week(monday), value: mean, usual: null, standsOut: false },
    range: lowest === null || highest === null ? null : [lowest, highest],
    told: loadWords.told(loadWords.week(monday), mean),
  }));

const weeksOfAthlete = (own: readonly LoadWeek[], measure: LoadMeasure): PicturedWeek[] =>
  own.map((week, index) => ({
    ...{ key: week.monday, name: loadWords.week(week.monday), value: measured(week, measure), range: null },
    usual: usualBefore(own, index, measure),
    standsOut: (timesUsual(own, index, measure) ?? 0) >= risenTimes,
    told: loadWords.told(loadWords.week(week.monday), measured(week, measure)),
  }));
