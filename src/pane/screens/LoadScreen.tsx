import { useMemo, useState } from "react";
import { today } from "../../analyses/today";
import { loadReport, seasonLoadReport } from "../../programme/loadReport";
import { loadWeeks } from "../../programme/loadWeeks";
import type { DiaryEntry } from "../../store/diary";
import { Choice } from "../parts/Choice";
import { Message } from "../parts/Message";
import { NeedsResults } from "../parts/NeedsResults";
import { Page } from "../parts/Page";
import type { Screen } from "../screen";
import { words } from "../words";
import { ReportCard } from "./ReportCard";

/** The diary's weeks: of the squad, of everybody, or of one athlete. */
export default function LoadScreen({ go }: { readonly go: (screen: Screen) => void }) {
  return (
    <Page title={words.tasks.load.title} text={words.tasks.load.question} go={go}>
      <NeedsResults go={go}>
        {({ programme }) =>
          programme.diary.length > 0 ? (
            <Load diary={programme.diary} />
          ) : (
            <Message tone="plain" title={words.load.noDiary}>
              <button type="button" className="button" onClick={() => go({ kind: "deliver" })}>
                {words.tasks.deliver.title}
              </button>
            </Message>
          )
        }
      </NeedsResults>
    </Page>
  );
}

const squad = "squad:";
const everybody = "everybody:";

function Load({ diary }: { readonly diary: readonly DiaryEntry[] }) {
  const [whose, setWhose] = useState(squad);
  const weeks = useMemo(() => loadWeeks(diary), [diary]);
  const athletes = [...new Set(diary.map(({ athlete }) => athlete))];
  const report = useMemo(() => {
    const origin = { source: words.load.source, date: today() };
    if (whose === squad) return seasonLoadReport(weeks, origin);
    return loadReport(weeks, { ...origin, athlete: whose === everybody ? null : whose });
  }, [weeks, whose]);
  return (
    <>
      <Choice
        label={words.load.whose}
        value={whose}
        options={[
          [squad, words.load.squad],
          [everybody, words.load.everybody],
          ...athletes.map((athlete) => [athlete, athlete] as const),
        ]}
        onChange={setWhose}
      />
      <ReportCard key={whose} report={report} />
    </>
  );
}
