import { useState } from "react";
import type { Remark } from "../../reading/readResults";
import { CellButton } from "../parts/CellButton";
import { HostTrouble } from "../parts/HostTrouble";
import { words } from "../words";

const shownAtFirst = 4;

/** Cells that were left out or read with a remark. One line per reason; each cell can be gone to. */
export function Remarks({ sheet, remarks }: { readonly sheet: string; readonly remarks: readonly Remark[] }) {
  const [all, setAll] = useState(false);
  const [error, setError] = useState<unknown>(null);
  if (remarks.length === 0) return null;
  const groups = byReason(remarks);
  const shown = all ? groups : groups.slice(0, shownAtFirst);
  return (
    <section className="card" aria-labelledby="remarks-title">
      <h2 id="remarks-title">{words.remarks.title(remarks.filter((remark) => remark.leftOut).length)}</h2>
      <ul className="remarks">
        {shown.map(({ why, leftOut, cells }) => (
          <li key={why} data-left-out={leftOut}>
            <span className="cells">
              {cells.map((cell) => (
                <CellButton
                  key={cell}
                  sheet={sheet}
                  cell={cell}
                  told={{ shown: () => setError(null), failed: setError }}
                />
              ))}
            </span>
            <span>{why}</span>
          </li>
        ))}
      </ul>
      {groups.length > shownAtFirst && (
        <button type="button" className="link" aria-expanded={all} onClick={() => setAll(!all)}>
          {all ? words.remarks.less : words.remarks.more(groups.length - shownAtFirst)}
        </button>
      )}
      {error !== null && <HostTrouble error={error} />}
    </section>
  );
}

type Group = { readonly why: string; readonly leftOut: boolean; readonly cells: string[] };

/** One group per reason; what needs the coach's hand comes before mere empty cells. */
function byReason(remarks: readonly Remark[]): Group[] {
  const groups = new Map<string, Group & { readonly quiet: boolean }>();
  for (const { why, leftOut, cell, code } of remarks) {
    const group = groups.get(why) ?? { why, leftOut, cells: [], quiet: code === "empty" || code === "converted" };
    groups.set(why, group);
    group.cells.push(cell);
  }
  return [...groups.values()].sort((a, b) => Number(a.quiet) - Number(b.quiet));
}
