import { registerFunctions } from "../../src/batch/registerFunctions";
import { createEngine, createHost, type Host } from "../../src/host";
import { functionReference } from "./builtReference";

let host: Host;

beforeAll(async () => {
  host = createHost(createEngine());
  host.install(globalThis);
  await registerFunctions(host);
});

afterAll(() => host.dispose());

/** What the example shows in a workbook of its own, spilled cells as rows. */
const shown = (formula: string) =>
  Excel.run(async (context) => {
    const sheet = context.workbook.worksheets.add();
    const cell = sheet.getRange("B2");
    cell.formulas = [[formula]];
    await context.sync();
    const spill = cell.getSpillingToRangeOrNullObject();
    spill.load("values,valueTypes");
    cell.load("values,valueTypes");
    await context.sync();
    const { values, valueTypes } = spill.isNullObject ? cell : spill;
    sheet.delete();
    await context.sync();
    return { values, types: valueTypes.flat() as string[] };
  });

test.each(functionReference.map((help) => [help.id, help] as const))(
  "the example of %s gives values and no error, in a cell of any workbook",
  async (_, { example }) => {
    const { values, types } = await shown(example);
    expect({ values, hasError: types.includes("Error") }).toEqual({ values, hasError: false });
    expect(types.some((type) => type === "Double" || type === "String")).toBe(true);
    expect(values.flat().some((value) => value !== "")).toBe(true);
  },
);
