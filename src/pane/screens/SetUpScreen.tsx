import { useMemo, useState } from "react";
import { seriesName } from "../../reading/measures";
import { recogniseColumns } from "../../reading/recogniseColumns";
import { goToStoreTable } from "../../sheet/goToStoreTable";
import { type SetUp, setUp } from "../../sheet/setUp";
import { type BatteryTest, batteryTable } from "../../store/battery";
import { resultsTable } from "../../store/keptResults";
import { defaultWeights, weightsTable } from "../../store/qualityWeights";
import { readyBatteries } from "../../store/readyBatteries";
import type { SquadMember } from "../../store/squad";
import { squadTable } from "../../store/squad";
import { squadFromCells } from "../../store/squadFromCells";
import type { StoreTableId } from "../../store/storeTable";
import { HostTrouble } from "../parts/HostTrouble";
import { Page } from "../parts/Page";
import { StoreRemarks } from "../parts/StoreRemarks";
import { Tick } from "../parts/Tick";
import type { Screen } from "../screen";
import { useDeed } from "../useDeed";
import { useSource } from "../useSource";
import { words } from "../words";
import { demandWords } from "../words/demands";
import { removeAthleteWords } from "../words/removeAthlete";
import { setUpWords } from "../words/setUp";
import { useWorkbook } from "../workbook";
import { DemandGaps, demandsOfSport, noSport, SetUpDemands, SportChoice } from "./SetUpDemands";

type BasicTable = "squad" | "battery" | "weights" | "results";

/** The tables that testing rests on, in the order in which a coach fills them. */
const basicTables = [squadTable, batteryTable, weightsTable, resultsTable] as readonly {
  readonly id: StoreTableId & BasicTable;
  readonly name: string;
  readonly sheet: string;
}[];

/** Makes squad, tests, weights and the table of results in the workbook, or shows how they stand. */
export default function SetUpScreen({ go }: { readonly go: (screen: Screen) => void }) {
  const workbook = useWorkbook();
  const { state, error, refresh, present, remarks } = workbook;
  const missing = basicTables.filter(({ id }) => !present.has(id)).map(({ id }) => id);
  return (
    <Page title={words.tasks.setUp.title} text={words.tasks.setUp.question} go={go}>
      {state === "failed" && <HostTrouble error={error} again={refresh} />}
      {state === "reading" && (
        <p className="quiet" role="status">
          {words.setUp.reading}
        </p>
      )}
      {state === "read" && present.size > 0 && <Standing />}
      {remarks.length > 0 && <StoreRemarks remarks={remarks} />}
      {state === "read" && present.has("battery") && present.has("weights") && <SetUpDemands />}
      {state === "read" && missing.length > 0 && <Missing ids={missing} />}
      {state === "read" && missing.length === 0 && (
        <button type="button" className="button primary" onClick={() => go({ kind: "testDay" })}>
          {words.setUp.toTestDay}
        </button>
      )}
      {state === "read" && present.size > 0 && (
        <p>
          <button type="button" className="link" onClick={() => go({ kind: "removeAthlete" })}>
            {removeAthleteWords.title}
          </button>
        </p>
      )}
    </Page>
  );
}

/** The tables that stand, with what is in them; each can be gone to and edited by hand. */
function Standing() {
  const { present, background } = useWorkbook();
  const count: Readonly<Record<BasicTable, string>> = {
    squad: words.setUp.athletes(background.squad.length),
    battery: words.setUp.tests(background.battery.length),
    weights: words.setUp.weights(new Set(background.weights.map(({ role }) => role)).size),
    results: words.setUp.results,
  };
  return (
    <section className="card" aria-labelledby="standing-title">
      <h2 id="standing-title">{words.setUp.standing}</h2>
      <ul className="standing">
        {basicTables
          .filter(({ id }) => present.has(id))
          .map((table) => (
            <li key={table.id}>
              <button type="button" className="link" onClick={() => void goToStoreTable(table)}>
                {table.sheet}
              </button>
              <span>{count[table.id]}</span>
            </li>
          ))}
      </ul>
      <p className="quiet">{words.setUp.editByHand}</p>
    </section>
  );
}

function Missing({ ids }: { readonly ids: readonly BasicTable[] }) {
  const { background } = useWorkbook();
  const [chosen, choose] = useState<ReadonlySet<string>>(new Set(readyBatteries.map(({ id }) => id)));
  const [sport, chooseSport] = useState<string>(noSport);
  const making = useDeed<SetUp>();
  const found = useSquadInSelection();
  const wantsSquad = ids.includes("squad");
  const wantsBattery = ids.includes("battery");

  const wantsWeights = ids.includes("weights");
  const squad = wantsSquad ? found.squad : background.squad;
  const battery = wantsBattery ? testsOf(chosen) : background.battery;
  const demands = demandsOfSport(sport, { ...background, squad, battery });

  const make = () => {
    const roles = [...new Set(squad.flatMap(({ role }) => (role === null ? [] : [role])))];
    const weights = demands?.weights ?? defaultWeights(roles, qualitiesOf(battery));
    void making.run(() =>
      setUp({
        ...(wantsSquad ? { squad } : {}),
        ...(wantsBattery ? { battery } : {}),
        ...(wantsWeights ? { weights } : {}),
      }),
    );
  };

  return (
    <>
      {wantsSquad && (
        <section className="card" aria-labelledby="squad-title">
          <h2 id="squad-title">{words.setUp.squad}</h2>
          {found.squad.length > 0 ? (
            <>
              <p>{words.setUp.found(found.squad.length, found.address)}</p>
              <p className="quiet">{listed(found.squad)}</p>
            </>
          ) : (
            <p>{words.setUp.selectNames}</p>
          )}
        </section>
      )}
      {wantsBattery && (
        <section className="card" aria-labelledby="battery-title">
          <h2 id="battery-title">{words.setUp.battery}</h2>
          <p className="quiet">{words.setUp.batteryText}</p>
          {readyBatteries.map(({ id, name, about }) => (
            <Tick
              key={id}
              checked={chosen.has(id)}
              onChange={(on) =>
                choose((before) => new Set(on ? [...before, id] : [...before].filter((one) => one !== id)))
              }
            >
              {name} <span className="quiet">{about}</span>
            </Tick>
          ))}
          <p className="quiet">{setUpWords.caution}</p>
        </section>
      )}
      {wantsWeights && (
        <section className="card" aria-labelledby="sport-title">
          <h2 id="sport-title">{demandWords.title}</h2>
          <SportChoice sport={sport} onChange={chooseSport} />
          {demands && <DemandGaps demands={demands} />}
        </section>
      )}
      {making.error !== null && <HostTrouble error={making.error} again={make} />}
      <footer className="write-bar">
        <button type="button" className="button primary" disabled={making.busy} onClick={make}>
          {making.busy ? words.write.writing : words.setUp.make(ids.length)}
        </button>
      </footer>
    </>
  );
}

/** The tests of some ready-made batteries; what stands in two of them comes once. */
function testsOf(chosen: ReadonlySet<string>): BatteryTest[] {
  const tests = readyBatteries.filter(({ id }) => chosen.has(id)).flatMap((battery) => battery.tests);
  return [...new Map(tests.map((test) => [seriesName(test.test, test.measure), test])).values()];
}

const qualitiesOf = (battery: readonly BatteryTest[]): string[] => [
  ...new Set(battery.flatMap(({ quality }) => (quality === null ? [] : [quality]))),
];

/** The athletes named in the cells that are selected now, if there are any. */
function useSquadInSelection(): { readonly squad: readonly SquadMember[]; readonly address: string } {
  const { source } = useSource(null);
  const grid = source.state === "read" && source.selection.kind === "cells" ? source.selection.grid : null;
  return useMemo(() => {
    if (!grid) return { squad: [], address: "" };
    return { squad: squadFromCells(grid, recogniseColumns(grid)), address: grid.sheet };
  }, [grid]);
}

const namedAtMost = 3;

function listed(squad: readonly SquadMember[]): string {
  const named = squad.slice(0, namedAtMost).map(({ athlete, role }) => (role ? `${athlete} (${role})` : athlete));
  return words.setUp.listed(named, squad.length - named.length);
}
