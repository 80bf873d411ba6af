import { useState } from "react";
import type { Page as PrintedPage } from "../../programme/page";
import { athleteSession, groupSession } from "../../programme/sessionSheets";
import { setUpProgramme } from "../../sheet/setUpProgramme";
import type { PlanRow } from "../../store/planTable";
import { Choice } from "../parts/Choice";
import { HostTrouble } from "../parts/HostTrouble";
import { Message } from "../parts/Message";
import { NeedsResults } from "../parts/NeedsResults";
import { Page } from "../parts/Page";
import type { Screen } from "../screen";
import { useDeed } from "../useDeed";
import type { ProgrammeFacts } from "../useProgramme";
import { words } from "../words";
import { PagesBar } from "./PagesBar";

/** Session sheets to print, and the diary in which it is kept what was done. */
export default function DeliverScreen({ go }: { readonly go: (screen: Screen) => void }) {
  return (
    <Page title={words.tasks.deliver.title} text={words.tasks.deliver.question} go={go}>
      <NeedsResults go={go}>
        {(facts) => (
          <>
            <Diary facts={facts} />
            {facts.programme.plan.length > 0 ? (
              <Sessions plan={facts.programme.plan} />
            ) : (
              <Message tone="plain" title={words.deliver.noPlan}>
                <button type="button" className="button" onClick={() => go({ kind: "plan" })}>
                  {words.tasks.plan.title}
                </button>
              </Message>
            )}
          </>
        )}
      </NeedsResults>
    </Page>
  );
}

function Diary({ facts }: { readonly facts: ProgrammeFacts }) {
  const making = useDeed<Awaited<ReturnType<typeof setUpProgramme>>>();
  const { present, diary } = facts.programme;
  return (
    <section className="card" aria-labelledby="diary-title">
      <h2 id="diary-title">{words.deliver.diary}</h2>
      {present.has("diary") ? (
        <p>{words.deliver.entries(diary.length)}</p>
      ) : (
        <>
          <p>{words.deliver.noDiary}</p>
          <button
            type="button"
            className="button"
            disabled={making.busy}
            onClick={() => void making.run(() => setUpProgramme({ diary: [] }))}
          >
            {words.deliver.makeDiary}
          </button>
        </>
      )}
      {making.error !== null && <HostTrouble error={making.error} />}
    </section>
  );
}

type Layout = "athletes" | "group";

function Sessions({ plan }: { readonly plan: readonly PlanRow[] }) {
  const keys = [...new Set(plan.map(({ week, session }) => `${week}.${session}`))].sort((a, b) =>
    a.localeCompare(b, "en", { numeric: true }),
  );
  const [wished, setKey] = useState(keys[0]!);
  const [layout, setLayout] = useState<Layout>("athletes");
  const key = keys.includes(wished) ? wished : keys[0]!;
  const [week, session] = key.split(".").map(Number) as [number, number];
  const pages = layout === "athletes" ? athletePages(plan, week, session) : groupPages(plan, week, session);
  return (
    <>
      <section className="card" aria-labelledby="sessions-title">
        <h2 id="sessions-title">{words.deliver.sheets}</h2>
        <Choice
          label={words.deliver.session}
          value={key}
          options={keys.map((one) => [one, words.deliver.sessionOf(one)] as const)}
          onChange={setKey}
        />
        <Choice
          label={words.deliver.layout}
          value={layout}
          options={[
            ["athletes", words.deliver.perAthlete],
            ["group", words.deliver.perGroup],
          ]}
          onChange={setLayout}
        />
      </section>
      <PagesBar label={words.deliver.print(pages.length)} pages={pages} />
    </>
  );
}

function athletePages(plan: readonly PlanRow[], week: number, session: number): PrintedPage[] {
  const athletes = [...new Set(plan.map(({ athlete }) => athlete))];
  return athletes.flatMap((athlete) => {
    const page = athleteSession(
      plan.filter((row) => row.athlete === athlete),
      week,
      session,
    );
    return page ? [page] : [];
  });
}

function groupPages(plan: readonly PlanRow[], week: number, session: number): PrintedPage[] {
  const page = groupSession(plan, words.deliver.group, week, session);
  return page ? [page] : [];
}
