import { useMemo, useState } from "react";
import { groupBy } from "../../analyses/groupBy";
import { askedOf, squadDemands } from "../../programme/demands";
import { priorities } from "../../programme/priorities";
import { ratiosOf } from "../../programme/ratios";
import { trainingGroups } from "../../programme/trainingGroups";
import type { Renewed } from "../../sheet/renewPlanned";
import { type Decided, writeDecisions, writePriorities } from "../../sheet/writePriorities";
import {
  asProposed,
  type Decision,
  isAsProposed,
  type Priority,
  type PriorityRow,
  priorityKey,
} from "../../store/priorityTable";
import { isSameName, nameKey } from "../../store/sameName";
import { Amount } from "../parts/Amount";
import { HostTrouble } from "../parts/HostTrouble";
import { Message } from "../parts/Message";
import { NeedsResults } from "../parts/NeedsResults";
import { Page } from "../parts/Page";
import { SquadDemands } from "../pictures/Demands";
import type { Screen } from "../screen";
import { useDeed } from "../useDeed";
import type { ProgrammeFacts } from "../useProgramme";
import { useProfiles, useSeries, useWeakerSides } from "../useStandings";
import { words } from "../words";
import { demandWords } from "../words/demands";
import { priorityWords } from "../words/priorities";
import { useWorkbook } from "../workbook";
import { LeftOut } from "./LeftOut";
import { Missing } from "./Missing";
import { PrioritiesCompared } from "./PrioritiesCompared";
import { PrioritiesOfAthlete } from "./PrioritiesOfAthlete";
import { RenewedMessage } from "./RenewedMessage";

/** What each athlete should work on first, and why; the coach has the last word. */
export default function PrioritiesScreen({ go }: { readonly go: (screen: Screen) => void }) {
  return (
    <Page title={words.tasks.priorities.title} text={words.tasks.priorities.question} go={go}>
      <NeedsResults go={go}>{(facts) => <Found facts={facts} go={go} />}</NeedsResults>
    </Page>
  );
}

const shownAtFirst = 6;

function Found({ facts, go }: { readonly facts: ProgrammeFacts; readonly go: (screen: Screen) => void }) {
  const { background } = useWorkbook();
  const [most, setMost] = useState(3);
  const [all, setAll] = useState(false);
  const writing = useDeed<Renewed>();
  const deciding = useDeed<Decided>();
  const { results, leftOut } = useSeries(facts);
  const profiles = useProfiles(results);
  const sides = useWeakerSides(results);
  const ratios = useMemo(() => ratiosOf(results, background), [results, background]);
  const found = useMemo(
    () => priorities(profiles, sides, background, { most, ratios }),
    [profiles, sides, background, most, ratios],
  );
  const demands = useMemo(() => squadDemands(profiles, background), [profiles, background]);
  const { groups } = useMemo(() => trainingGroups(profiles), [profiles]);
  const standing = facts.programme.priorities;
  const athletes = rowsByAthlete(found.priorities, standing);
  const outdated = standing.length === 0 ? 0 : outdatedAthletes(found.priorities, standing);
  const together = groups.filter((group) => group.athletes.length > 1);
  const decide = (decisions: readonly Decision[]) => {
    if (decisions.length > 0) void deciding.run(() => writeDecisions(decisions, found.priorities));
  };
  return (
    <>
      <PrioritiesCompared profiles={profiles} />
      <LeftOut leftOut={leftOut} />
      <section className="card" aria-labelledby="demands-title">
        <h2 id="demands-title">{demandWords.picture.squad}</h2>
        <SquadDemands demands={demands} />
      </section>
      <section className="card" aria-labelledby="priorities-title">
        <h2 id="priorities-title">{words.priorities.title(athletes.length)}</h2>
        <p className="quiet">{priorityWords.caution}</p>
        <dl className="priorities">
          {(all ? athletes : athletes.slice(0, shownAtFirst)).map(({ athlete, rows }) => {
            const profile = profiles.find((one) => isSameName(one.athlete, athlete));
            return (
              <PrioritiesOfAthlete
                key={athlete}
                athlete={athlete}
                rows={rows}
                qualities={demands.map(({ quality }) => quality)}
                asked={profile ? askedOf(profile, background) : []}
                ratios={ratios.filter((ratio) => isSameName(ratio.athlete, athlete))}
                busy={deciding.busy || writing.busy}
                onDecide={decide}
              />
            );
          })}
        </dl>
        {athletes.length > shownAtFirst && (
          <button type="button" className="link" aria-expanded={all} onClick={() => setAll(!all)}>
            {all ? words.priorities.fewer : words.priorities.all(athletes.length)}
          </button>
        )}
        {deciding.error !== null && <HostTrouble error={deciding.error} />}
        {deciding.outcome?.inTheWay && (
          <Message tone="trouble" title={priorityWords.notDecided}>
            <p>{deciding.outcome.inTheWay.why}</p>
          </Message>
        )}
        <Amount
          label={words.priorities.most}
          meaning={words.priorities.mostMeaning}
          unit=""
          value={most}
          low={1}
          high={5}
          trouble={words.settings.range(1, 5, "")}
          onChange={(value) => setMost(Math.round(value))}
        />
      </section>
      <Missing missing={found.missing} />
      {together.length > 0 && (
        <section className="card" aria-labelledby="together-title">
          <h2 id="together-title">{words.priorities.together}</h2>
          <ul>
            {together.map(({ lowest, athletes: members }) => (
              <li key={lowest.join()}>
                <strong>{lowest.join(", ")}</strong> <span className="quiet">{members.join(", ")}</span>
              </li>
            ))}
          </ul>
        </section>
      )}
      <p className="quiet">{words.priorities.rule}</p>
      <footer className="write-bar">
        {outdated > 0 && writing.outcome === null && <p>{priorityWords.outdated(outdated)}</p>}
        <RenewedMessage writing={writing} next={{ label: words.tasks.plan.title, go: () => go({ kind: "plan" }) }} />
        <button
          type="button"
          className="button primary"
          disabled={writing.busy || found.priorities.length === 0}
          onClick={() => void writing.run(() => writePriorities(found.priorities))}
        >
          {writing.busy ? words.write.writing : words.priorities.write}
        </button>
      </footer>
    </>
  );
}

type RowsOfAthlete = { readonly athlete: string; readonly rows: readonly PriorityRow[] };

/** What stands in the workbook for each athlete, else what is proposed. */
function rowsByAthlete(found: readonly Priority[], standing: readonly PriorityRow[]): RowsOfAthlete[] {
  const written = groupBy(standing, ({ athlete }) => nameKey(athlete));
  const proposed = groupBy(found, ({ athlete }) => nameKey(athlete));
  return [...new Set([...proposed.keys(), ...written.keys()])].map((key) => {
    const rows = written.get(key) ?? proposed.get(key)!.map(asProposed);
    return { athlete: rows[0]!.athlete, rows };
  });
}

/** For how many athletes the rule says something else than what stands as it was proposed. */
function outdatedAthletes(found: readonly Priority[], standing: readonly PriorityRow[]): number {
  const proposals = new Map(standing.map((row) => [priorityKey(row), row.asProposed]));
  const ours = new Set(standing.filter(isAsProposed).map(priorityKey));
  const outdated = found.filter((priority) => {
    const key = priorityKey(priority);
    return !proposals.has(key) || (ours.has(key) && proposals.get(key) !== asProposed(priority).asProposed);
  });
  return new Set(outdated.map(({ athlete }) => nameKey(athlete))).size;
}
