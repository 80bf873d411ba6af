import { FormulaDataModel, IFormulaDependencyGenerator, IFormulaRuntimeService } from "@univerjs/engine-formula";
import { TriggerCalculationController } from "@univerjs/sheets-formula";
import { createEngine, createHost } from "../../../src/host";

/** The host uses a few private parts of the pinned engine. A new version may move them: here it shows first. */
test.each([
  [
    "settle.ts",
    TriggerCalculationController,
    [
      "_waitingCommandQueue",
      "_executingDirtyData",
      "_executionInProgressParams",
      "_generateDirty",
      "_mergeDirty",
      "_startProgress",
    ],
  ],
  ["formulaSearch.ts", FormulaDataModel, ["_getSheetFormulaIdMap", "updateFormulaData"]],
  ["book.ts", IFormulaDependencyGenerator, ["_disposeByUnitId"]],
  ["circular.ts", IFormulaRuntimeService, ["enableCycleDependency"]],
])("what %s relies on is there", (_file, service, members) => {
  const { univer } = createEngine();
  const found = univer.__getInjector().get(service as typeof FormulaDataModel) as unknown as object;
  for (const member of members) expect(member in found).toBe(true);
  univer.dispose();
});

const fastest = async (times: number, work: () => unknown): Promise<number> => {
  let best = Number.POSITIVE_INFINITY;
  for (let round = 0; round < times; round += 1) {
    const start = performance.now();
    await work();
    best = Math.min(best, performance.now() - start);
  }
  return best;
};

test("reading 50,000 cells in one sync takes at most 1.5 times what the engine's own reading takes", async () => {
  const host = createHost(createEngine());
  const rows = Array.from({ length: 2_000 }, (_, r) => Array.from({ length: 25 }, (_, c) => r * c + 0.5));
  await host.Excel.run(async (context) => {
    context.workbook.worksheets.getActiveWorksheet().getRange("A1:Y2000").values = rows;
  });
  const own = host.book.api.getActiveWorkbook()!.getActiveSheet().getRange("A1:Y2000");
  const raw = await fastest(9, () => own.getRawValues());
  const direct = await fastest(9, () => own.getValues());
  const through = await fastest(9, () =>
    host.Excel.run(async (context) => {
      const range = context.workbook.worksheets.getActiveWorksheet().getRange("A1:Y2000").load("values");
      await context.sync();
      expect(range.values.length).toBe(2_000);
    }),
  );
  console.log(`50,000 cells: engine ${direct.toFixed(1)} ms (raw ${raw.toFixed(1)} ms), API ${through.toFixed(1)} ms`);
  expect(through).toBeLessThan(direct * 1.5);
  host.dispose();
});

test("a thousand single cells written in one batch do not search the sheet a thousand times", async () => {
  const host = createHost(createEngine());
  const start = performance.now();
  await host.Excel.run(async (context) => {
    const sheet = context.workbook.worksheets.getActiveWorksheet();
    for (let row = 0; row < 1_000; row += 1) sheet.getCell(row, 0).values = [[row]];
  });
  console.log(`1,000 single cells: ${(performance.now() - start).toFixed(0)} ms`);
  expect(performance.now() - start).toBeLessThan(10_000);
  host.dispose();
});
