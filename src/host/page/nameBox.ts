import { resolveArea } from "../engine/references";
import { activeSheetId, select } from "../engine/selection";
import type { Book } from "../index";

/**
 * The name box goes to what is typed into it, as in Excel: an address, on another sheet too, a name or a table. What is
 * none of these is left to the grid, which makes a name of it.
 */
export function startNameBox(container: HTMLElement, book: () => Book | undefined, focusGrid: () => void): void {
  container.addEventListener(
    "keydown",
    (event) => {
      const { target, key } = event;
      const open = book();
      const isNameBox = target instanceof HTMLInputElement && target.closest('[data-u-comp="defined-name"]') !== null;
      if (key !== "Enter" || !isNameBox || !open) return;
      const area = resolveArea(open, target.value, { book: open, id: activeSheetId(open) });
      if (!area) return;
      event.preventDefault();
      event.stopPropagation();
      select([area]);
      target.blur();
      focusGrid();
    },
    { capture: true },
  );
}
