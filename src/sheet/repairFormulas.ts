import { say } from "../language/say";
import { quotedSheet } from "../reading/address";
import { type CellRun, cellRuns } from "./cellRuns";
import type { Deed } from "./deed";
import { callsUs, isMarked, unmarked } from "./functionCalls";
import { trapHost } from "./hostRefusal";
import { type FormulaCell, readFormulas } from "./readFormulas";
import { writeOrTakeBack } from "./takeBack";

export type Repaired = {
  /** How many formulas were written anew. */
  readonly count: number;
  /** Where they stand, e.g. "'Hop test'!J4:J29". */
  readonly cells: readonly string[];
  /** Those that still show #NAME?: a function that is not ours, or not of this version, or the add-in has not loaded. */
  readonly still: readonly string[];
  readonly deed: Deed;
};

/**
 * Writes formulas of ours anew that the program does not recognise: those that show #NAME? (entered before the add-in was there)
 * and those whose function it has marked as unknown. Nothing else in them is changed. Five round trips whatever their number.
 */
export const repairFormulas = (): Promise<Repaired> =>
  trapHost(() =>
    Excel.run(async (context): Promise<Repaired> => {
      const { worksheets } = context.workbook;
      worksheets.load("items/id,items/name");
      await context.sync();
      const broken = await readFormulas(
        context,
        worksheets.items,
        (formula, value) => callsUs(formula) && (value === "#NAME?" || isMarked(formula)),
      );
      const runs = broken.flatMap(({ sheet, cells }) => cellRuns(cells).map((run) => ({ sheet, run })));
      const count = runs.reduce((sum, { run }) => sum + run.cells.length, 0);
      const deed: Deed = {
        what: say`Repaired ${count === 1 ? say`1 formula` : say`${count} formulas`}`,
        steps: runs.map(({ sheet, run }) => ({
          kind: "restoreCells" as const,
          sheetId: sheet.id,
          address: run.address,
          formulas: run.cells.map(({ formula }) => [formula]),
          numberFormat: run.cells.map(({ numberFormat }) => [numberFormat]),
          written: mended(run),
        })),
      };
      if (count === 0) return { count, cells: [], still: [], deed };

      const written = runs.map(({ sheet, run }) => ({
        sheet,
        run,
        range: sheet.getRangeByIndexes(run.row, run.column, run.cells.length, 1),
      }));
      await writeOrTakeBack(deed, async () => {
        for (const { run, range } of written) range.formulas = mended(run);
        await context.sync();
      });
      for (const { range } of written) range.load("values");
      await context.sync();
      const addressOf = (sheet: Excel.Worksheet, address: string) => `${quotedSheet(sheet.name)}!${address}`;
      return {
        count,
        cells: runs.map(({ sheet, run }) => addressOf(sheet, run.address)),
        still: written.flatMap(({ sheet, run, range }) =>
          cellRuns(run.cells.filter((_, index) => range.values[index]![0] === "#NAME?")).map(({ address }) =>
            addressOf(sheet, address),
          ),
        ),
        deed,
      };
    }),
  );

const mended = (run: CellRun<FormulaCell>): string[][] => run.cells.map(({ formula }) => [unmarked(formula)]);
