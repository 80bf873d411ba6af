import type { StoreRemark } from "../../store/storeTable";
import { words } from "../words";
import { CellButton } from "./CellButton";

/** Cells of our own tables that could not be read as they stand. */
export function StoreRemarks({ remarks }: { readonly remarks: readonly StoreRemark[] }) {
  return (
    <section className="card" aria-labelledby="store-remarks-title">
      <h2 id="store-remarks-title">{words.setUp.remarks(remarks.length)}</h2>
      <ul className="remarks">
        {remarks.map(({ sheet, cell, why }) => (
          <li key={`${sheet}!${cell}${why}`}>
            <CellButton sheet={sheet} cell={cell} called={`${sheet}, ${cell}`} />
            <span>{why}</span>
          </li>
        ))}
      </ul>
    </section>
  );
}
