import { IRenderManagerService, SHEET_VIEWPORT_KEY } from "@univerjs/engine-render";
import { SheetSkeletonManagerService } from "@univerjs/sheets-ui";
import type { Book } from "../../engine/book";

/** Where a stretch of the sheet is seen: its corner on the page, its scale, and the part of the page it may cover. */
export type Placement = {
  readonly left: number;
  readonly top: number;
  readonly scale: number;
  readonly window: Window;
};
export type Window = { readonly left: number; readonly top: number; readonly right: number; readonly bottom: number };

/** Room that the grid's scroll bars take. */
const scrollBar = 12;

/**
 * Where a place of the active sheet (in pixels from its first cell, unscaled) is seen within `container`. What lies in
 * frozen rows or columns does not scroll; what scrolls disappears behind them.
 */
export function placementOf(book: Book, container: HTMLElement, left: number, top: number): Placement | null {
  const render = book.injector.get(IRenderManagerService).getRenderById(book.id);
  const skeleton = render?.with(SheetSkeletonManagerService).getCurrentSkeleton();
  const main = render?.scene.getViewport(SHEET_VIEWPORT_KEY.VIEW_MAIN);
  if (!render || !skeleton || !main) return null;
  const canvas = render.engine.getCanvasElement().getBoundingClientRect();
  const frame = container.getBoundingClientRect();
  const [fromLeft, fromTop] = [canvas.left - frame.left, canvas.top - frame.top];
  const scale = render.scene.getAncestorScale().scaleX;
  const [x, y] = [left + skeleton.rowHeaderWidth, top + skeleton.columnHeaderHeight];
  const [isFrozenX, isFrozenY] = [x < main.left / scale, y < main.top / scale];
  return {
    left: fromLeft + (isFrozenX ? x : x - main.viewportScrollX) * scale,
    top: fromTop + (isFrozenY ? y : y - main.viewportScrollY) * scale,
    scale,
    window: {
      left: fromLeft + (isFrozenX ? skeleton.rowHeaderWidth * scale : main.left),
      top: fromTop + (isFrozenY ? skeleton.columnHeaderHeight * scale : main.top),
      right: fromLeft + canvas.width - scrollBar,
      bottom: fromTop + canvas.height - scrollBar,
    },
  };
}
