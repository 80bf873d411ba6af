import { useMemo, useState } from "react";
import { today } from "../../analyses/today";
import { blockForm, blockSettings } from "../../programme/blockForm";
import { byReason } from "../../programme/byReason";
import { exerciseLibrary } from "../../programme/exerciseLibrary";
import { progressionRule } from "../../programme/phases";
import { planBlock } from "../../programme/planBlock";
import { plannedSquad } from "../../programme/plannedSquad";
import { dayNumber, isoDay, mondayOf } from "../../reading/days";
import type { Renewed } from "../../sheet/renewPlanned";
import { setUpProgramme } from "../../sheet/setUpProgramme";
import { writePlan } from "../../sheet/writePlan";
import { decided } from "../../store/priorityTable";
import { Day } from "../parts/Day";
import { HostTrouble } from "../parts/HostTrouble";
import { Message } from "../parts/Message";
import { NeedsResults } from "../parts/NeedsResults";
import { Page } from "../parts/Page";
import { SchemaForm } from "../parts/SchemaForm";
import type { Screen } from "../screen";
import { useDeed } from "../useDeed";
import type { ProgrammeFacts } from "../useProgramme";
import { useResults, useWeakerSides } from "../useStandings";
import { words } from "../words";
import { useWorkbook } from "../workbook";
import { Missing } from "./Missing";
import { RenewedMessage } from "./RenewedMessage";

/** Plans a block from the priorities in the workbook, with the exercises there. */
export default function PlanScreen({ go }: { readonly go: (screen: Screen) => void }) {
  return (
    <Page title={words.tasks.plan.title} text={words.tasks.plan.question} go={go}>
      <NeedsResults go={go}>
        {(facts) =>
          facts.programme.priorities.length === 0 ? (
            <Message tone="plain" title={words.plan.noPriorities}>
              <p>{words.plan.noPrioritiesText}</p>
              <button type="button" className="button" onClick={() => go({ kind: "priorities" })}>
                {words.tasks.priorities.title}
              </button>
            </Message>
          ) : (
            <PlanForm facts={facts} go={go} />
          )
        }
      </NeedsResults>
    </Page>
  );
}

/** Of athletes who all lack the same. */
const namesShown = 12;

const nextMonday = (): string => isoDay(dayNumber(mondayOf(today())) + 7);

function PlanForm({ facts, go }: { readonly facts: ProgrammeFacts; readonly go: (screen: Screen) => void }) {
  const { background } = useWorkbook();
  const [begins, setBegins] = useState(nextMonday);
  const [form, setForm] = useState(() => blockForm.parse({}));
  const writing = useDeed<Renewed>();
  const library = useDeed<Awaited<ReturnType<typeof setUpProgramme>>>();
  const { programme } = facts;
  const results = useResults(facts);
  const sides = useWeakerSides(results);
  const exercises = programme.present.has("exercises") ? programme.exercises : exerciseLibrary;
  const block = useMemo(() => {
    const squad = plannedSquad(decided(programme.priorities), { results, sides }, background, begins);
    return planBlock(squad, exercises, blockSettings(form, begins));
  }, [programme.priorities, results, sides, background, begins, exercises, form]);
  const athletes = new Set(block.rows.map(({ athlete }) => athlete)).size;
  return (
    <>
      <SchemaForm
        title={words.plan.title}
        schema={blockForm}
        settings={form}
        onChange={(name, value) => setForm((before) => ({ ...before, [name]: value }))}
      />
      <section className="card" aria-labelledby="begins-title">
        <h2 id="begins-title">{words.plan.when}</h2>
        <Day label={words.plan.begins} value={begins} onChange={setBegins} />
      </section>
      <section className="card" aria-labelledby="exercises-title">
        <h2 id="exercises-title">{words.plan.exercises(exercises.length)}</h2>
        {programme.present.has("exercises") ? (
          <p className="quiet">{words.plan.ownExercises}</p>
        ) : (
          <>
            <p className="quiet">{words.plan.readyExercises}</p>
            <button
              type="button"
              className="button"
              disabled={library.busy}
              onClick={() => void library.run(() => setUpProgramme({ exercises: exerciseLibrary }))}
            >
              {words.plan.makeExercises}
            </button>
            {library.error !== null && <HostTrouble error={library.error} />}
          </>
        )}
      </section>
      <Missing missing={byReason(block.missing, namesShown)} />
      <p className="quiet">{progressionRule}</p>
      <p className="quiet">{words.plan.caution}</p>
      <footer className="write-bar">
        <RenewedMessage
          writing={writing}
          next={{ label: words.tasks.deliver.title, go: () => go({ kind: "deliver" }) }}
        />
        <button
          type="button"
          className="button primary"
          disabled={writing.busy || block.rows.length === 0}
          onClick={() => void writing.run(() => writePlan(block.rows, { today: today() }))}
        >
          {writing.busy ? words.write.writing : words.plan.write(block.rows.length, athletes)}
        </button>
      </footer>
    </>
  );
}
