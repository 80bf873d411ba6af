import { useMemo, useState } from "react";
import { type DiaryReading, diaryFromCells } from "../../programme/diaryFromCells";
import { gridAddress } from "../../reading/address";
import type { Grid } from "../../reading/grid";
import { type DiaryKept, keepDiary } from "../../sheet/keepDiary";
import { memberCalled } from "../../store/background";
import type { StoreRemark } from "../../store/storeTable";
import { CellButton } from "../parts/CellButton";
import { HostTrouble } from "../parts/HostTrouble";
import { Message } from "../parts/Message";
import { type Doing, useDeed } from "../useDeed";
import { useSource } from "../useSource";
import { words } from "../words";
import { diaryWords } from "../words/diary";
import { useWorkbook } from "../workbook";

/** Takes a diary that the coach keeps anyway over into the workbook's own: what is selected, each entry once. */
export function DiaryFromCells({ stands }: { readonly stands: boolean }) {
  const keeping = useDeed<DiaryKept>();
  // Its own sheet, once it is there to be looked at, is no diary to take over.
  const { source, retry } = useSource(keeping.outcome?.sheet ?? null);
  const grid = source.state === "read" && source.selection.kind === "cells" ? source.selection.grid : null;
  const reading = useMemo(() => grid && diaryFromCells(grid), [grid]);
  return (
    <section className="card" aria-labelledby="own-diary-title">
      <h2 id="own-diary-title">{diaryWords.own}</h2>
      {source.state === "failed" && <HostTrouble error={source.error} again={retry} />}
      {grid === null || reading === null ? (
        <p className="quiet">{diaryWords.select}</p>
      ) : (
        <Found grid={grid} reading={reading} keeping={keeping} />
      )}
      {/* What was added is not told any more once the diary has been taken back. */}
      {(stands || keeping.error !== null || !keeping.outcome?.added) && <Kept {...keeping} />}
    </section>
  );
}

function Found(props: { readonly grid: Grid; readonly reading: DiaryReading; readonly keeping: Doing<DiaryKept> }) {
  const { grid, reading, keeping } = props;
  const { entries, remarks, unused, hiddenRows } = reading;
  const { background } = useWorkbook();
  const athletes = useMemo(() => [...new Set(entries.map(({ athlete }) => athlete))], [entries]);
  const strangers = athletes.filter(
    (athlete) => background.squad.length > 0 && memberCalled(background, athlete) === null,
  );
  const days = entries.map(({ date }) => date).sort();
  return (
    <>
      <p>
        <span className="address">{gridAddress(grid)}</span>{" "}
        {entries.length === 0
          ? diaryWords.nothingFound
          : diaryWords.found(entries.length, athletes.length, days[0]!, days.at(-1)!)}
      </p>
      {unused.length > 0 && <p className="quiet">{diaryWords.unused(unused)}</p>}
      {hiddenRows > 0 && <p className="quiet">{diaryWords.hidden(hiddenRows)}</p>}
      {strangers.length > 0 && <p>{diaryWords.strangers(strangers)}</p>}
      {remarks.length > 0 && <Unread remarks={remarks} />}
      {entries.length > 0 && (
        <p>
          <button
            type="button"
            className="button"
            disabled={keeping.busy}
            onClick={() => void keeping.run(() => keepDiary(entries))}
          >
            {keeping.busy ? words.write.writing : diaryWords.keep(entries.length)}
          </button>
        </p>
      )}
    </>
  );
}

const shownAtFirst = 4;

/** The cells that cannot be read as they stand, each to be gone to. */
function Unread({ remarks }: { readonly remarks: readonly StoreRemark[] }) {
  const [all, setAll] = useState(false);
  return (
    <>
      <p>{diaryWords.unread(remarks.length)}</p>
      <ul className="remarks">
        {(all ? remarks : remarks.slice(0, shownAtFirst)).map(({ sheet, cell, why }) => (
          <li key={`${cell}${why}`}>
            <CellButton sheet={sheet} cell={cell} /> <span>{why}</span>
          </li>
        ))}
      </ul>
      {remarks.length > shownAtFirst && (
        <button type="button" className="link" aria-expanded={all} onClick={() => setAll(!all)}>
          {all ? diaryWords.fewer : diaryWords.more(remarks.length - shownAtFirst)}
        </button>
      )}
    </>
  );
}

const differingShown = 5;

function Kept({ outcome, error }: Doing<DiaryKept>) {
  if (error !== null) return <HostTrouble error={error} />;
  if (outcome === null) return null;
  const { added, same, differing, inTheWay } = outcome;
  if (inTheWay) {
    return (
      <Message tone="trouble" title={diaryWords.nothingKept}>
        <p>
          <CellButton sheet={inTheWay.sheet} cell={inTheWay.cell} /> {inTheWay.why}
        </p>
      </Message>
    );
  }
  return (
    <Message tone={differing.length > 0 ? "trouble" : "good"} title={diaryWords.kept(added)}>
      {same > 0 && <p>{diaryWords.same(same)}</p>}
      {differing.length > 0 && (
        <>
          <p>{diaryWords.differing(differing.length)}</p>
          <ul>
            {differing.slice(0, differingShown).map(({ fresh }) => (
              <li key={diaryWords.differs(fresh)}>{diaryWords.differs(fresh)}</li>
            ))}
          </ul>
        </>
      )}
    </Message>
  );
}
