/** Work that may take long: told of as it goes on, and stopped where it can be. */
export type LongWork = {
  /** How many of how many are done. */
  readonly onProgress?: (done: number, of: number) => void;
  /** Looked at between two portions; what was done before is taken back, and the signal's reason thrown. */
  readonly signal?: AbortSignal;
};

/**
 * Cells of one round trip: what goes to and fro stays far below the 5 MB that Excel on the web allows, and between two
 * of them the pane is drawn and can be pressed.
 */
export const cellsAtOnce = 20_000;

/** Queues what is to be done to each item, and sends it off in portions; the last of them goes with the caller's next. */
export async function inPortions<Item>(
  context: Excel.RequestContext,
  items: readonly Item[],
  cellsOf: (item: Item) => number,
  queue: (item: Item, index: number) => void,
): Promise<void> {
  let cells = 0;
  for (const [index, item] of items.entries()) {
    if (cells > 0 && cells + cellsOf(item) > cellsAtOnce) {
      await context.sync();
      cells = 0;
    }
    queue(item, index);
    cells += cellsOf(item);
  }
}
