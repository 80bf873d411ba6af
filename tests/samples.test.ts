import { readFileSync } from "node:fs";
import { join } from "node:path";
import { Workbook } from "exceljs";
import { mean, sampleStandardDeviation } from "simple-statistics";
import { seniors } from "../sample-workbooks/athletes";
import { plantedDirt } from "../sample-workbooks/dirtyHopTest";
import { type HopResult, hopTest } from "../sample-workbooks/hopTest";
import { plantedAsymmetries } from "../sample-workbooks/plantedTruths";
import { season } from "../sample-workbooks/season";
import { testDays } from "../sample-workbooks/testDays";

const committed = readFileSync(join(__dirname, "../sample-workbooks/fjordvik-handball.xlsx"));

const days = testDays();

describe("the sample workbook", () => {
  it("is what the script makes today, byte for byte (else: npm run samples)", async () => {
    expect(Buffer.from(await season()).equals(committed)).toBe(true);
  });

  it("stays a file that is opened at once: below 400 kB", () => {
    expect(committed.length).toBeLessThan(400_000);
  });

  it("has its sheets, headings and the whole squad", async () => {
    const workbook = await opened();
    expect(workbook.worksheets.map((sheet) => sheet.name)).toEqual([
      "Hop test",
      "Hop test long",
      "Hop test dirty",
      "Read me",
      "Squad",
      ...days.map((day) => day.sheet),
      "Diary",
    ]);
    expect(days.map((day) => day.sheet)).toEqual([
      ...["Field 18 Aug", "Gym 20 Aug", "Field 25 Aug", "Gym 27 Aug", "Field 27 Oct", "Gym 29 Oct"],
    ]);
    const wide = workbook.getWorksheet("Hop test")!;
    expect((wide.getRow(3).values as string[]).slice(1, 4)).toEqual(["Athlete", "Role", "Left 1 (cm)"]);
    expect(wide.rowCount).toBe(3 + seniors.length);
    expect(workbook.getWorksheet("Hop test long")!.rowCount).toBe(3 + seniors.length * 6);
  });

  it("holds the planted mess at the cells it names", async () => {
    const dirty = (await opened()).getWorksheet("Hop test dirty")!;
    expect(dirty.getCell("C5").value).toBe("1.82 m");
    expect(dirty.getCell("E15").value).toBe(1.62);
    expect(dirty.getCell("H11").value).toMatchObject({ result: { error: "#DIV/0!" } });
    expect(dirty.getCell("D8").isMerged).toBe(true);
    expect(dirty.getRow(12).hidden).toBe(true);
    expect(dirty.getCell("A16").value).toBe(dirty.getCell("A14").value);
    expect(dirty.getCell("A18").value).toBe(`${dirty.getCell("A17").value} `);
    const swapped = hopTest().find(({ athlete }) => athlete.name === dirty.getCell("A22").value)!;
    expect(["C22", "D22", "E22"].map((cell) => dirty.getCell(cell).value)).toEqual(swapped.right);
    for (const { cells } of plantedDirt) expect(cells).toMatch(/^[A-H]\d+/);
  });
});

describe("what was planted", () => {
  it.each(plantedAsymmetries)("$athlete: stronger side $strongerSide", ({ athlete, strongerSide }) => {
    const { percent, scatter, limits } = asymmetryOf(hopTest().find((each) => each.athlete.name === athlete)!);
    if (strongerSide === "neither") {
      expect(percent).toBeGreaterThan(10);
      expect(percent).toBeLessThan(scatter);
      expect(limits[0] * limits[1]).toBeLessThan(0);
      return;
    }
    expect(percent).toBeGreaterThan(2 * scatter);
    expect(strongerSide === "right" ? limits[0] : -limits[1]).toBeGreaterThan(0);
  });

  it("makes two large differences, one to each side, and one real but below 10 %", () => {
    const real = plantedAsymmetries.filter((each) => each.strongerSide !== "neither");
    const percents = real.map(
      ({ athlete }) => asymmetryOf(hopTest().find((each) => each.athlete.name === athlete)!).percent,
    );
    expect(percents.filter((percent) => percent > 10)).toHaveLength(2);
    expect(percents.filter((percent) => percent > 4 && percent < 10)).toHaveLength(1);
  });

  it("leaves nobody else with a real difference above 10 %", () => {
    const others = hopTest().filter((each) => !plantedAsymmetries.some((one) => one.athlete === each.athlete.name));
    for (const result of others) {
      const { percent, limits } = asymmetryOf(result);
      expect(percent > 10 && limits[0] * limits[1] > 0).toBe(false);
    }
  });

  it("gives hops that women of a senior club squad can jump (common practice, no source)", () => {
    const trials = hopTest().flatMap(({ left, right }) => [...left, ...right]);
    expect(Math.min(...trials)).toBeGreaterThan(115);
    expect(Math.max(...trials)).toBeLessThan(200);
  });
});

const opened = async () => {
  const workbook = new Workbook();
  await workbook.xlsx.load(committed as unknown as ArrayBuffer);
  return workbook;
};

/**
 * Best against best in percent of the better side; the larger coefficient of variation of the two sides; 95 % limits
 * of the log ratio right to left from the pooled standard deviation (4 degrees of freedom, t = 2.776: any t table).
 */
function asymmetryOf({ left, right }: HopResult) {
  const best = [Math.max(...left), Math.max(...right)];
  const percent = (100 * (Math.max(...best) - Math.min(...best))) / Math.max(...best);
  const scatter = Math.max(
    ...[left, right].map((side) => (100 * sampleStandardDeviation([...side])) / mean([...side])),
  );
  const [logLeft, logRight] = [left, right].map((side) => side.map(Math.log)) as [number[], number[]];
  const difference = mean(logRight) - mean(logLeft);
  const pooled = Math.sqrt((sampleStandardDeviation(logLeft) ** 2 + sampleStandardDeviation(logRight) ** 2) / 2);
  const halfWidth = 2.776 * pooled * Math.sqrt(2 / 3);
  return { percent, scatter, limits: [difference - halfWidth, difference + halfWidth] as [number, number] };
}
