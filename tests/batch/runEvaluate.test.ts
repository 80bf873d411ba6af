import { readFileSync } from "node:fs";
import { hopTest } from "../../sample-workbooks/hopTest";
import { runEvaluate } from "../../src/batch/runEvaluate";
import { asymmetry } from "../../src/engine/asymmetry/asymmetry";
import { unwrap } from "../../src/engine/result";
import { folderOfOwn, listen, sample, writeWorkbook } from "./folder";

const at = folderOfOwn();

async function evaluate(formula: string, workbook = sample, ...more: string[]) {
  const ear = listen();
  const code = await runEvaluate(["--workbook", workbook, formula, ...more], ear.voice);
  return { code, ...ear, value: ear.said[0] === undefined ? undefined : JSON.parse(ear.said[0]) };
}

const best = (trials: readonly number[]) => Math.max(...trials);

describe("a formula's value", () => {
  it("is the engine's, at full precision, and the file stays as it was", async () => {
    const before = readFileSync(sample);
    const { left, right } = hopTest()[0]!;
    const { code, value } = await evaluate("=TAPELINE.ASYMMETRY('Hop test'!C4:E4,'Hop test'!F4:H4)");
    expect(code).toBe(0);
    expect(value).toBe(unwrap(asymmetry(best(left), best(right), "percentDifference")));
    expect(readFileSync(sample).equals(before)).toBe(true);
  });

  it.each([
    ["=1/3", 1 / 3],
    ["1+1", 2],
    ['="a ""quoted"" word"', 'a "quoted" word'],
    ["=ISNUMBER('Hop test'!C4)", true],
    ["=TAPELINE.STRONGERSIDE({171,174,168},{147,150,144})", "Left"],
    ["=COUNTA('Hop test'!A4:A29)", 26],
  ])("%s is %j", async (formula, value) => {
    expect((await evaluate(formula)).value).toEqual(value);
  });

  it("spills as rows", async () => {
    expect((await evaluate("={1,2;3,4}")).value).toEqual([
      [1, 2],
      [3, 4],
    ]);
    const squad = hopTest().map(({ athlete }) => [athlete.name]);
    expect((await evaluate("='Hop test'!A4:A29")).value).toEqual(squad);
    expect((await evaluate("=TAPELINE.NOISELIMIT('Hop test'!C4:E29,'Hop test'!F4:H29)")).value).toHaveLength(26);
  });

  it("on the sheet the workbook opens on, or the one named, where a reference names none", async () => {
    expect((await evaluate("=A1")).value).toBe("Single-leg hop for distance");
    expect((await evaluate("=COUNTA(A:A)")).value).toBe(3 + hopTest().length);
    expect((await evaluate("=F3", sample, "--sheet", "hop test long")).value).toBe("Distance (cm)");
  });

  it("never from a formula of its own, though it reads whole columns and rows", async () => {
    const path = await writeWorkbook(at("small.xlsx"), "Data", [[1, 2]]);
    expect((await evaluate("=SUM(A:B,1:1)", path)).value).toBe(6);
  });
});

describe("an error", () => {
  it.each([
    ["=1/0", "#DIV/0!", "divided by zero"],
    ["=NOBODYKNOWS(1)", "#NAME?", "not known in this workbook"],
    ["=TAPELINE.NOBODYKNOWS(1)", "#NAME?", "not known in this workbook"],
    ["=TAPELINE.ASYMMETRY('Hop test'!J4:L4,'Hop test'!F4:H4)", "#N/A", ""],
    ["=TAPELINE.ASYMMETRY('Hop test'!A4,'Hop test'!F4:H4)", "#VALUE!", "a number is needed"],
  ])("%s is %s with its reason", async (formula, error, reason) => {
    const { code, value } = await evaluate(formula);
    expect(code).toBe(0);
    expect(value).toEqual({ error, message: expect.stringContaining(reason) });
    expect(value.message).not.toBe("");
  });

  it("stands alone among values that spill", async () => {
    const rows = [
      [150, 152, 151, 160, 161, 163],
      ["", "", "", "", "", ""],
      [150, 158, 151, 160, 161, 163],
    ];
    const path = await writeWorkbook(at("squad.xlsx"), "Hops", rows);
    const { value } = await evaluate("=TAPELINE.NOISELIMIT(A1:C3,D1:F3)", path);
    expect(value).toEqual([
      [expect.any(Number)],
      [{ error: "#N/A", message: expect.any(String) }],
      [expect.any(Number)],
    ]);
  });

  it.each([
    ["no formula at all", ["=SUM("], 1, "does not take this formula: =SUM("],
    ["a sheet that is not there", ["=A1", "--sheet", "Nope"], 1, 'There is no sheet "Nope"'],
    ["two formulas", ["=A1", "=A2"], 2, "one formula"],
    ["a word nobody knows", ["=A1", "--at", "B2"], 2, "--at"],
  ])("%s is no value", async (_, words, expected, reason) => {
    const ear = listen();
    expect(await runEvaluate(["--workbook", sample, ...words], ear.voice)).toBe(expected);
    expect(ear.said).toEqual([]);
    expect(ear.complained.join()).toContain(reason);
  });

  it("nor is a file that is not there", async () => {
    const { code, complained } = await evaluate("=1", at("nowhere.xlsx"));
    expect([code, complained]).toEqual([1, ["There is no such file."]]);
  });
});
