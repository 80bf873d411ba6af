import { goTo } from "../../sheet/goTo";
import type { StoreRemark } from "../../store/storeTable";
import { words } from "../words";

/** Cells of our own tables that could not be read as they stand. */
export function StoreRemarks({ remarks }: { readonly remarks: readonly StoreRemark[] }) {
  return (
    <section className="card" aria-labelledby="store-remarks-title">
      <h2 id="store-remarks-title">{words.setUp.remarks(remarks.length)}</h2>
      <ul className="remarks">
        {remarks.map(({ sheet, cell, why }) => (
          <li key={`${sheet}!${cell}${why}`}>
            <button
              type="button"
              className="cell"
              aria-label={words.remarks.goTo(`${sheet}, ${cell}`)}
              onClick={() => void goTo(sheet, cell)}
            >
              {cell}
            </button>
            <span>{why}</span>
          </li>
        ))}
      </ul>
    </section>
  );
}
