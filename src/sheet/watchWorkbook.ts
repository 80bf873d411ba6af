import { trapHost } from "./hostRefusal";

export type WorkbookWatch = {
  /** The coach selected other cells, or went to another sheet. */
  readonly onSelect: () => void;
  /** Cells or rows of a sheet changed, by the coach, by us or by a co-author. */
  readonly onEdit: () => void;
};

/** Tells of selections and edits from now on; returns the way to stop. */
export const watchWorkbook = ({ onSelect, onEdit }: WorkbookWatch): Promise<() => Promise<void>> =>
  trapHost(() =>
    Excel.run(async (context) => {
      const { worksheets } = context.workbook;
      const select = async () => onSelect();
      const edit = async () => onEdit();
      const registrations = [
        worksheets.onSelectionChanged.add(select),
        worksheets.onActivated.add(select),
        worksheets.onChanged.add(edit),
        worksheets.onRowHiddenChanged.add(edit),
      ];
      await context.sync();
      return () =>
        trapHost(() =>
          Excel.run(context, async (own) => {
            for (const registration of registrations) registration.remove();
            await own.sync();
          }),
        );
    }),
  );
