import { render } from "@testing-library/react";
import type { ReactElement } from "react";
import { TakeBackBar } from "../../src/pane/parts/TakeBackBar";
import { useWorkbook, WorkbookProvider } from "../../src/pane/workbook";
import type { Deed } from "../../src/sheet/deed";
import { readBackground } from "../../src/sheet/readBackground";
import { type WorkbookWatch, watchWorkbook } from "../../src/sheet/watchWorkbook";
import { type Background, noBackground } from "../../src/store/background";
import type { StoreTableId } from "../../src/store/storeTable";

/** What stands in the workbook beside the selection. Tests mock `readBackground` and `watchWorkbook`. */
export function workbookHolds(background: Partial<Background>, present: readonly StoreTableId[]): void {
  jest.mocked(readBackground).mockResolvedValue({
    background: { ...noBackground, ...background },
    remarks: [],
    present: new Set(present),
  });
}

const watches = new Set<WorkbookWatch>();

/** Lets edits and selections be told by `tellEdit` and `tellSelection`. */
export function watchedByHand(): void {
  watches.clear();
  jest.mocked(watchWorkbook).mockImplementation(async (watch) => {
    watches.add(watch);
    return async () => {
      watches.delete(watch);
    };
  });
}

export const tellEdit = (): void => {
  for (const { onEdit } of watches) onEdit();
};
export const tellSelection = (): void => {
  for (const { onSelect } of watches) onSelect();
};

/** A screen in its workbook, under the bar that takes back, as the pane shows it. */
export const showInWorkbook = (screen: ReactElement) =>
  render(
    <WorkbookProvider>
      <TakeBackBar />
      {screen}
    </WorkbookProvider>,
  );

/** A button that stands for any write of ours: pressed, it has done the deed. */
export function DoneBy({ deed }: { readonly deed: Deed }) {
  const { remember } = useWorkbook();
  return (
    <button type="button" onClick={() => remember(deed)}>
      {`Do: ${deed.what}`}
    </button>
  );
}
