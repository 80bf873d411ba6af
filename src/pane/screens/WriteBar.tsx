import { useEffect, useState } from "react";
import type { Report } from "../../analyses/report";
import { findPlace, type Place } from "../../sheet/findPlace";
import { goTo } from "../../sheet/goTo";
import { type Outcome, writeReport } from "../../sheet/writeReport";
import { HostTrouble } from "../parts/HostTrouble";
import { Message } from "../parts/Message";
import { Tick } from "../parts/Tick";
import { words } from "../words";
import { useWorkbook } from "../workbook";
import { MarkCells } from "./MarkCells";

type Deed =
  | { readonly state: "ready" }
  | { readonly state: "writing" }
  | { readonly state: "done"; readonly outcome: Outcome }
  | { readonly state: "failed"; readonly error: unknown };

/** Says where the answer would go, writes it, and tells what came of it. Stays at the foot of the pane. */
export function WriteBar(props: {
  readonly report: Report;
  readonly reportKey: string;
  /** Whether the table is to hold formulas that follow the results; null where it cannot. */
  readonly live: { readonly on: boolean; readonly set: (live: boolean) => void } | null;
  /** Sheet that plain addresses of the results belong to; null where each address names its own. */
  readonly sheet: string | null;
  readonly onWritten: (sheet: string) => void;
}) {
  const { report, reportKey, live, sheet, onWritten } = props;
  const { remember } = useWorkbook();
  const [place, setPlace] = useState<Place | null>(null);
  const [deed, setDeed] = useState<Deed>({ state: "ready" });

  // A new answer makes an old outcome stale; where it would go may have changed too (a sheet deleted, a name taken).
  useEffect(() => {
    let current = true;
    setDeed((before) => (before.state === "writing" ? before : { state: "ready" }));
    findPlace(reportKey, report.sheet).then(
      (found) => current && setPlace(found),
      (error) => current && setDeed({ state: "failed", error }),
    );
    return () => {
      current = false;
    };
  }, [report, reportKey]);

  async function write(fresh: boolean) {
    setDeed({ state: "writing" });
    try {
      const outcome = await writeReport(report, reportKey, fresh);
      if (outcome.kind === "written") {
        onWritten(outcome.sheet);
        setPlace({ sheet: outcome.sheet, renews: true });
        remember(outcome.deed);
      }
      setDeed({ state: "done", outcome });
    } catch (error) {
      setDeed({ state: "failed", error });
    }
  }

  return (
    <footer className="write-bar" data-state={deed.state}>
      {deed.state === "done" && <OutcomeMessage outcome={deed.outcome} writeFresh={() => write(true)} />}
      {deed.state === "failed" && <HostTrouble error={deed.error} again={() => write(false)} />}
      {live && (
        <Tick checked={live.on} onChange={live.set}>
          {words.write.live}
        </Tick>
      )}
      {report.marks.length > 0 && <MarkCells marks={report.marks} sheet={sheet} />}
      <button
        type="button"
        className="button primary"
        disabled={deed.state === "writing" || place === null}
        onClick={() => write(false)}
      >
        {deed.state === "writing" || place === null
          ? words.write.writing
          : place.renews
            ? words.write.renew(place.sheet)
            : words.write.newSheet(place.sheet)}
      </button>
    </footer>
  );
}
function OutcomeMessage({ outcome, writeFresh }: { readonly outcome: Outcome; readonly writeFresh: () => void }) {
  if (outcome.kind === "written") {
    const { sheet, address, updated } = outcome;
    return (
      <Message tone="good" title={updated ? words.write.renewed(sheet, address) : words.write.written(sheet, address)}>
        <p>{words.write.writtenText}</p>
        <button type="button" className="link" onClick={() => void goTo(sheet, address)}>
          {words.write.show}
        </button>
      </Message>
    );
  }
  if (outcome.kind === "unknownState") {
    return (
      <Message tone="trouble" title={words.write.unknownState.title}>
        <p>{words.write.unknownState.text}</p>
      </Message>
    );
  }
  const { conflict } = words.write;
  const why = conflict[outcome.reason];
  return (
    <Message tone="trouble" title={conflict.title(outcome.sheet)}>
      <p>{typeof why === "string" ? why : why(outcome.address ?? "")}</p>
      <button type="button" className="link" onClick={writeFresh}>
        {words.write.elsewhere}
      </button>
    </Message>
  );
}
