import { registerFunctions } from "../../src/batch/registerFunctions";
import { createEngine, createHost } from "../../src/host";
import { milliseconds, ratio, secondsOf, verdict } from "./time";

const goal = 1.5;

/** Custom functions and built-in ones of like work, over the same cells A to F of their row. */
const pairs: readonly (readonly [ours: string, theirs: string])[] = [
  ["=TAPELINE.ASYMMETRY(A#:C#,D#:F#)", "=(MAX(A#:C#)-MAX(D#:F#))/MAX(A#:F#)*100"],
  ["=TAPELINE.TYPICALERROR(A#:B#,D#:E#)", "=STDEV(A#:C#)/SQRT(2)+CORREL(A#:B#,D#:E#)"],
  ["=TAPELINE.ESTIMATEDMAXIMUM(A#,5)", "=A#*(1+5/30)"],
];

/** (c): so many cells of a custom function against as many of a built-in one. */
export async function functionsAgainstBuiltIns(cells: number): Promise<void> {
  console.log(`(c) ${cells} cells of a function of ours, against a built-in of like work, in the same host`);
  for (const [ours, theirs] of pairs) {
    const [own, other] = [await calculating(ours, cells), await calculating(theirs, cells)];
    const name = ours.slice(1, ours.indexOf("("));
    if (own === null || other === null) console.log(`  ${name.padEnd(28)} gives no number`);
    else {
      console.log(
        `  ${name.padEnd(28)}${milliseconds(own)}; built-in ${milliseconds(other)}  ratio${ratio(own, other)} ${verdict(own <= goal * other, `at most ${goal}`)}`,
      );
    }
  }
}

async function calculating(formula: string, cells: number): Promise<number | null> {
  const engine = createEngine();
  const host = createHost(engine);
  host.install(globalThis);
  await registerFunctions(host);
  await Excel.run(async (context) => {
    const sheet = context.workbook.worksheets.getActiveWorksheet();
    sheet.getRangeByIndexes(0, 0, cells, 6).values = Array.from({ length: cells }, (_, row) =>
      Array.from({ length: 6 }, (_, column) => 100 + ((row * 31 + column * 17) % 80)),
    );
    await context.sync();
  });
  const formulas = Array.from({ length: cells }, (_, row) => [formula.replaceAll("#", String(row + 1))]);
  let last: unknown;
  const seconds = await secondsOf(1, () =>
    Excel.run(async (context) => {
      const range = context.workbook.worksheets.getActiveWorksheet().getRangeByIndexes(0, 7, cells, 1);
      range.formulas = formulas;
      await context.sync();
      await host.settle();
      range.load("values");
      await context.sync();
      last = range.values.at(-1)![0];
    }),
  );
  host.dispose();
  engine.univer.dispose();
  return typeof last === "number" ? seconds : null;
}
