import { reliability } from "../../src/analyses/reliability/reliability";
import { unwrap } from "../../src/engine/result";
import { type TestResult, testResult } from "../../src/reading/testResult";
import { noBackground } from "../../src/store/background";

type Cell = number | null;

/** Rows of athletes as a wide sheet gives them: one column for each repeat. */
const wide = (rows: readonly (readonly Cell[])[]): TestResult[] =>
  rows.flatMap((row, athlete) =>
    row.flatMap((value, column) =>
      value === null ? [] : [testResult({ athlete: `A${athlete}`, test: "Hop", attempt: column + 1, value })],
    ),
  );

const rowsOf = (results: readonly TestResult[], settings: object) =>
  unwrap(reliability.compute(results, reliability.settings.parse(settings), noBackground));

/** Bland & Altman 1986, Lancet 1:307-310: first and second reading of each meter, peak flow of 17 people (l/min). */
const first = [494, 395, 516, 434, 476, 557, 413, 442, 650, 433, 417, 656, 267, 478, 178, 423, 427];
const second = [490, 397, 512, 401, 470, 611, 415, 431, 638, 429, 420, 633, 275, 492, 165, 372, 421];

describe("reliability of a test", () => {
  it("gives the published repeatability: 2.77 typical errors, as the coefficient 43.2 is 2 SD of the differences about 0", () => {
    // Wright meter, Bland & Altman 1986: coefficient of repeatability 43.2 = 2 * sqrt(mean d^2).
    const [row] = rowsOf(wide(first.map((value, person) => [value, second[person]!])), { compare: "sessions" }).rows;
    const differences = first.map((value, person) => second[person]! - value);
    const mean = differences.reduce((sum, d) => sum + d, 0) / 17;
    const deviation = Math.sqrt(differences.reduce((sum, d) => sum + (d - mean) ** 2, 0) / 16);
    expect(row!.error).toBeCloseTo(deviation / Math.SQRT2, 8);
    expect(2 * Math.sqrt(differences.reduce((sum, d) => sum + d * d, 0) / 17)).toBeCloseTo(43.29, 2);
    expect(row!.shift).toBeCloseTo(mean, 10);
    expect(row!.detectable! / row!.error!).toBeCloseTo(2.1199 * Math.SQRT2, 3); // t(0.975; 16) = 2.120, NIST handbook
  });

  it("uses all results when some are missing, and says how many athletes count", () => {
    const rows: Cell[][] = [
      [10, 11, 12],
      [14, null, 15],
      [20, 22, null],
      [17, 16, 18],
      [9, null, null],
    ];
    const [row] = rowsOf(wide(rows), { compare: "trials" }).rows;
    expect(row).toMatchObject({ athletes: 4, repeats: 3 });
    expect(row!.error).toBeGreaterThan(0);
    expect(row!.detectable).toBeNull();
  });

  it("counts an athlete once, of however many days there are trials", () => {
    const results = ["2026-08-11", "2026-08-18"].flatMap((date) =>
      ["A", "B", "C"].flatMap((athlete, index) =>
        [150, 153].map((value, trial) =>
          testResult({ athlete, test: "Hop", date, attempt: trial + 1, value: value + index * 5 + trial * index }),
        ),
      ),
    );
    expect(rowsOf(results, { compare: "trials" }).rows[0]).toMatchObject({ athletes: 3, repeats: 2 });
  });

  it("takes days for sessions, reduced from their trials", () => {
    const results = ["2026-08-11", "2026-08-18"].flatMap((date, day) =>
      [150, 160, 170, 155].flatMap((value, athlete) =>
        [0, 3].map(
          (gain, trial): TestResult =>
            testResult({
              athlete: `A${athlete}`,
              test: "Hop",
              side: "left",
              date,
              attempt: trial + 1,
              value: value + gain + day * (athlete % 2 ? 2 : -1),
            }),
        ),
      ),
    );
    const { rows, summary } = rowsOf(results, { compare: "sessions", reduction: "best" });
    expect(rows[0]).toMatchObject({ test: "Hop, left", athletes: 4, repeats: 2 });
    // Changes of the best trial: -1, +2, -1, +2, hence SD sqrt(3), typical error sqrt(3) / sqrt(2), mean change 0.5.
    expect(rows[0]!.error).toBeCloseTo(Math.sqrt(1.5), 9);
    expect(rows[0]!.shift).toBeCloseTo(0.5, 12);
    expect(summary[0]).toMatch(/^Hop, left varies by \d\.\d % from session to session\.$/);
  });

  it("tells of a shared improvement, the better way round", () => {
    const improving = [1.9, 1.85, 1.95, 1.88, 1.92].map((time, athlete) => [time, time - 0.05 - athlete / 1000]);
    const verdict = (direction: string) => rowsOf(wide(improving), { compare: "trials", direction }).rows[0]!.verdict;
    expect(verdict("lower")).toContain("still improve");
    expect(verdict("higher")).toContain("get worse");
  });

  it("has a row without an answer for a test with too few repeats, beside those that have one", () => {
    const single: TestResult = testResult({ athlete: "A0", test: "Throw", value: 5 });
    const { rows } = rowsOf(
      [
        ...wide([
          [10, 11],
          [12, 14],
          [15, 15],
        ]),
        single,
      ],
      { compare: "trials" },
    );
    expect(rows.map((row) => row.error === null)).toEqual([false, true]);
    expect(rows[1]!.verdict).toMatch(/^No answer: At least 3 athletes/);
  });

  it("scores each test by its own facts, and says units only where they differ", () => {
    const results = (unit: string) =>
      ["2026-08-11", "2026-08-18"].flatMap((date, day) =>
        [1, 2, 3, 4].flatMap((athlete) => [
          testResult({
            athlete: `A${athlete}`,
            test: "Sprint",
            date,
            unit: "s",
            value: 3 + athlete / 10 + (day * athlete) / 50,
          }),
          testResult({ athlete: `A${athlete}`, test: "Sprint", date, unit: "s", attempt: 2, value: 9 }),
          testResult({ athlete: `A${athlete}`, test: "Jump", date, unit, value: 40 + athlete + (day * athlete) / 5 }),
          testResult({ athlete: `A${athlete}`, test: "Jump", date, unit, attempt: 2, value: 1 }),
        ]),
      );
    const { rows } = rowsOf(results("cm"), { compare: "sessions" });
    // The best trial is the lower one of the sprint and the higher one of the jump: the wild second trials play no part.
    expect(rows.map(({ test, unit, mean }) => ({ test, unit, mean: Number(mean!.toFixed(3)) }))).toEqual([
      { test: "Sprint", unit: "s", mean: 3.275 },
      { test: "Jump", unit: "cm", mean: 42.75 },
    ]);
    expect(rowsOf(results("s"), { compare: "sessions" }).rows.map(({ unit }) => unit)).toEqual(["", ""]);
  });

  it("leaves sets with a load out: they are no repeats of one another", () => {
    const set = (measure: "load" | "repetitions", value: number) =>
      testResult({ athlete: "A", test: "Squat", measure, value });
    expect(
      reliability.compute([set("load", 80), set("repetitions", 5)], reliability.settings.parse({}), noBackground).ok,
    ).toBe(false);
  });
});
