import { useMemo, useState } from "react";
import { today } from "../../analyses/today";
import { readResults } from "../../reading/readResults";
import { type EntrySheetReading, readEntrySheets } from "../../sheet/readEntrySheets";
import { toKept } from "../../store/keptResults";
import { Day } from "../parts/Day";
import { HostTrouble } from "../parts/HostTrouble";
import { Message } from "../parts/Message";
import { Page } from "../parts/Page";
import type { Screen } from "../screen";
import { type SelectedCells, useColumns } from "../useColumns";
import { useReading } from "../useReading";
import { useSource } from "../useSource";
import { words } from "../words";
import { useWorkbook } from "../workbook";
import { AlikeNames } from "./AlikeNames";
import { KeepButton } from "./KeepButton";
import { NotSetUp } from "./NotSetUp";
import { Remarks } from "./Remarks";
import { Understood } from "./Understood";

/** Puts results from entry sheets, or from any cells the coach selects, into the workbook's own table, once each. */
export default function KeepScreen({ go }: { readonly go: (screen: Screen) => void }) {
  const { present } = useWorkbook();
  return (
    <Page title={words.tasks.keep.title} text={words.tasks.keep.question} go={go}>
      {present.has("results") ? (
        <>
          <EntrySheets />
          <FromSelection />
        </>
      ) : (
        <Message tone="plain" title={words.keep.noTable}>
          <p>{words.keep.noTableText}</p>
          <button type="button" className="button" onClick={() => go({ kind: "setUp" })}>
            {words.tasks.setUp.title}
          </button>
        </Message>
      )}
    </Page>
  );
}

/** The entry sheets we have made, each with what has been typed on it. */
function EntrySheets() {
  const { refresh } = useWorkbook();
  const { value: sheets, error } = useReading(readEntrySheets);
  if (error !== null) return <HostTrouble error={error} again={refresh} />;
  if (sheets === null || sheets.length === 0) return null;
  return (
    <section className="card" aria-labelledby="entry-title">
      <h2 id="entry-title">{words.keep.entrySheets}</h2>
      <ul className="entry-sheets">
        {sheets.map((sheet) => (
          <EntrySheet key={sheet.sheet} entry={sheet} />
        ))}
      </ul>
    </section>
  );
}

function EntrySheet({ entry }: { readonly entry: EntrySheetReading }) {
  const reading = useMemo(() => readResults(entry.grid, entry.map), [entry]);
  const { kept, refused } = toKept(reading.results, { sheet: entry.sheet, day: entry.date });
  const leftOut = reading.remarks.filter(({ leftOut, code }) => leftOut && code !== "empty");
  return (
    <li>
      <p>
        <span className="address">{entry.sheet}</span>{" "}
        <span className="quiet">{words.keep.typed(kept.length, leftOut.length)}</span>
      </p>
      {entry.missing.length > 0 && <p>{words.keep.gone(entry.missing)}</p>}
      {leftOut.length > 0 && <Remarks sheet={entry.sheet} remarks={leftOut} />}
      {refused.length > 0 && <p>{refused[0]!.why}</p>}
      {kept.length > 0 && <KeepButton kept={kept} />}
    </li>
  );
}

/** Any cells with results, wide or long, that the coach has anyway. */
function FromSelection() {
  const { source, retry } = useSource(null);
  if (source.state === "failed") return <HostTrouble error={source.error} again={retry} />;
  if (source.state === "reading") return null;
  const { selection } = source;
  if (selection.kind === "empty") return <p className="quiet">{words.keep.select}</p>;
  return <KeepCells key={selection.sheetId} {...selection} />;
}

function KeepCells(cells: SelectedCells & { readonly grownFrom: string | null }) {
  const columns = useColumns(cells);
  const { grid, map, setMap } = columns;
  const reading = useMemo(() => readResults(grid, map), [grid, map]);
  const [day, setDay] = useState(today);
  const needsDay = reading.results.some(({ date }) => date === null) || map.date !== null;
  const { kept, refused } = toKept(reading.results, { sheet: grid.sheet, day: map.date ?? day });
  return (
    <>
      <Understood isClear={reading.results.length > 0} columns={columns} reading={reading} grownFrom={cells.grownFrom}>
        {needsDay && (
          <Day
            label={words.keep.day}
            value={map.date ?? day}
            onChange={(chosen) => {
              setDay(chosen);
              if (map.date !== null) setMap({ ...map, date: chosen });
            }}
          />
        )}
      </Understood>
      <AlikeNames sheet={grid.sheet} reading={reading} map={map} setMap={setMap} />
      <NotSetUp reading={reading} correction={columns} />
      <Remarks sheet={grid.sheet} remarks={reading.remarks} />
      {refused.length > 0 && (
        <Message tone="plain" title={words.keep.refused(refused.length)}>
          {[...new Set(refused.map(({ why }) => why))].map((why) => (
            <p key={why}>{why}</p>
          ))}
        </Message>
      )}
      <footer className="write-bar">
        <KeepButton kept={kept} primary />
      </footer>
    </>
  );
}
