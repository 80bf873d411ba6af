import { goTo } from "../../sheet/goTo";
import { words } from "../words";

/** A cell by its address; pressed, it is shown. */
export function CellButton(props: {
  readonly sheet: string;
  readonly cell: string;
  /** What the cell is called aloud, where the address alone does not say which it is. */
  readonly called?: string;
  readonly told?: { readonly shown: () => void; readonly failed: (error: unknown) => void };
}) {
  const { sheet, cell, called = cell, told } = props;
  return (
    <button
      type="button"
      className="cell"
      aria-label={words.remarks.goTo(called)}
      onClick={() => void goTo(sheet, cell).then(told?.shown, told?.failed)}
    >
      {cell}
    </button>
  );
}
