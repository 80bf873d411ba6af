import { useMemo, useState } from "react";
import { groupBy } from "../../analyses/groupBy";
import { today } from "../../analyses/today";
import { workedOn } from "../../programme/blocks";
import { byReason } from "../../programme/byReason";
import { exerciseLibrary } from "../../programme/exerciseLibrary";
import { type NextPriority, nextCycle } from "../../programme/nextCycle";
import { nextCycleReport } from "../../programme/nextCycleReport";
import { priorities } from "../../programme/priorities";
import type { Review } from "../../programme/review";
import { reviewGroupReport, reviewReport, reviewWorkReport } from "../../programme/reviewReport";
import { decided } from "../../store/priorityTable";
import { Choice } from "../parts/Choice";
import { Message } from "../parts/Message";
import { NeedsResults } from "../parts/NeedsResults";
import { Page } from "../parts/Page";
import { WorkAndChange } from "../pictures/WorkAndChange";
import type { Screen } from "../screen";
import type { ProgrammeFacts } from "../useProgramme";
import { type BlockToReview, blockToReview, useReview } from "../useReview";
import { useProfiles, useResults, useWeakerSides } from "../useStandings";
import { words } from "../words";
import { outcomeWords } from "../words/outcome";
import { useWorkbook } from "../workbook";
import { Missing } from "./Missing";
import { ReportCard } from "./ReportCard";

/** What became of a block: who changed beyond noise, who was there for it, and what comes next. */
export default function OutcomeScreen({ go }: { readonly go: (screen: Screen) => void }) {
  return (
    <Page title={words.tasks.outcome.title} text={words.tasks.outcome.question} go={go}>
      <NeedsResults go={go}>{(facts) => <Outcome facts={facts} go={go} />}</NeedsResults>
    </Page>
  );
}

const views = ["squad", "work", "changes", "next"] as const;
type View = (typeof views)[number];

function Outcome({ facts, go }: { readonly facts: ProgrammeFacts; readonly go: (screen: Screen) => void }) {
  const results = useResults(facts);
  const reviewed = useReview(facts, results);
  const block = useMemo(() => blockToReview(facts), [facts]);
  const [view, setView] = useState<View>("squad");
  if (!reviewed || !block || reviewed.changes.length === 0) {
    return (
      <Message tone="plain" title={outcomeWords.nothing}>
        <p>{outcomeWords.nothingText}</p>
        {reviewed && <Missing missing={byReason(reviewed.missing, namesShown)} />}
      </Message>
    );
  }
  return (
    <>
      <section className="card" aria-label={outcomeWords.view}>
        <p className="quiet">
          {block.rows ? outcomeWords.ofBlock(block.begins, block.ends) : outcomeWords.ofDays(block.begins, block.ends)}
        </p>
        <Choice
          label={outcomeWords.view}
          value={view}
          options={views.map((one) => [one, outcomeWords.views[one]] as const)}
          onChange={setView}
        />
      </section>
      {view === "next" ? (
        <Next facts={facts} reviewed={reviewed} block={block} go={go} />
      ) : (
        <Reviewed key={view} view={view} reviewed={reviewed} />
      )}
    </>
  );
}

/** Of athletes who all lack the same. */
const namesShown = 12;

const reports = { squad: reviewGroupReport, work: reviewWorkReport, changes: reviewReport } as const;

function Reviewed({ view, reviewed }: { readonly view: keyof typeof reports; readonly reviewed: Review }) {
  const report = useMemo(
    () => reports[view](reviewed, { source: outcomeWords.source, date: today() }),
    [view, reviewed],
  );
  return (
    <>
      {view === "changes" && <OneAthlete reviewed={reviewed} />}
      <Missing missing={byReason(reviewed.missing, namesShown)} />
      <ReportCard report={report} picture={view === "work" ? <Work reviewed={reviewed} /> : undefined} />
    </>
  );
}

function Work({ reviewed }: { readonly reviewed: Review }) {
  const { table } = reviewWorkReport(reviewed, { source: "", date: "" });
  const at = (key: string) => table.columns.findIndex((column) => column.key === key);
  const athletes = table.rows.flatMap((row) => {
    const [share, change] = [row[at("share")], row[at("overNoise")]];
    return typeof share === "number" && typeof change === "number" ? [{ name: String(row[0]), share, change }] : [];
  });
  const { work, across, upwards, noise } = outcomeWords;
  return <WorkAndChange title={work} athletes={athletes} across={across} upwards={upwards} band={noise} />;
}

/** What became of one athlete's tests, in words with the chances behind them. */
function OneAthlete({ reviewed }: { readonly reviewed: Review }) {
  const byAthlete = groupBy(reviewed.changes, ({ athlete }) => athlete);
  const athletes = [...byAthlete.keys()];
  const [wished, setAthlete] = useState(athletes[0]!);
  const athlete = byAthlete.has(wished) ? wished : athletes[0]!;
  return (
    <section className="card" aria-label={outcomeWords.athlete}>
      <Choice
        label={outcomeWords.athlete}
        value={athlete}
        options={athletes.map((one) => [one, one] as const)}
        onChange={setAthlete}
      />
      <ul className="remarks">
        {byAthlete.get(athlete)!.map(({ series, before, after, unit, verdict, better, worse }) => (
          <li key={series}>
            <p>
              <strong>{series}</strong> {outcomeWords.change(before, after, unit)}
            </p>
            <p>{`${verdict}.`}</p>
            {better !== null && worse !== null && <p className="quiet">{outcomeWords.chances(better, worse)}</p>}
          </li>
        ))}
      </ul>
    </section>
  );
}

const shownAtFirst = 6;

/** New priorities against what was worked on: what is carried over, and why. */
function Next(props: {
  readonly facts: ProgrammeFacts;
  readonly reviewed: Review;
  readonly block: BlockToReview;
  readonly go: (screen: Screen) => void;
}) {
  const { facts, reviewed, block, go } = props;
  const { background } = useWorkbook();
  const [all, setAll] = useState(false);
  const results = useResults(facts);
  const profiles = useProfiles(results);
  const sides = useWeakerSides(results);
  const next = useMemo(() => {
    const { present, exercises, priorities: rows } = facts.programme;
    const library = present.has("exercises") ? exercises : exerciseLibrary;
    const fresh = priorities(profiles, sides, background, { most: 3 }).priorities;
    return nextCycle(block.rows ? workedOn(block.rows, library) : decided(rows), fresh, reviewed);
  }, [reviewed, block, facts, profiles, sides, background]);
  const report = useMemo(() => nextCycleReport(next, { source: outcomeWords.source, date: today() }), [next]);
  const athletes = [...groupBy(next, ({ athlete }) => athlete)];
  return (
    <>
      <section className="card" aria-label={outcomeWords.views.next}>
        <dl className="priorities">
          {(all ? athletes : athletes.slice(0, shownAtFirst)).map(([athlete, own]) => (
            <div key={athlete}>
              <dt>{athlete}</dt>
              <dd>
                <Fates own={own} />
              </dd>
            </div>
          ))}
        </dl>
        {athletes.length > shownAtFirst && (
          <button type="button" className="link" aria-expanded={all} onClick={() => setAll(!all)}>
            {all ? outcomeWords.fewer : outcomeWords.all(athletes.length)}
          </button>
        )}
        <p>
          <button type="button" className="button" onClick={() => go({ kind: "priorities" })}>
            {outcomeWords.toPriorities}
          </button>
        </p>
      </section>
      <ReportCard report={report} />
    </>
  );
}

const Fates = ({ own }: { readonly own: readonly NextPriority[] }) => (
  <ul>
    {own.map(({ quality, fate, why }) => (
      <li key={quality}>
        <strong>
          {outcomeWords.carried[fate]}: {quality}
        </strong>{" "}
        <span className="quiet">{why}</span>
      </li>
    ))}
  </ul>
);
