import { type LoadVelocityRow, loadVelocity } from "../../src/analyses/loadVelocity/loadVelocity";
import { unwrap } from "../../src/engine/result";
import { type TestResult, testResult } from "../../src/reading/testResult";
import { noBackground } from "../../src/store/background";
import { expected, expectRelative } from "../reference/reference";

const answer = (results: readonly TestResult[], settings: object = {}) =>
  unwrap(loadVelocity.compute(results, loadVelocity.settings.parse(settings), noBackground));

const sets = (lifted: readonly (readonly [number, number | null])[], said: Partial<TestResult> = {}): TestResult[] =>
  lifted.flatMap(([load, velocity], index) => {
    const set = { athlete: "A", test: "Squat", attempt: index + 1, ...said };
    return [
      testResult({ ...set, measure: "load", value: load, unit: "kg", cell: `B${index + 2}` }),
      ...(velocity === null
        ? []
        : [testResult({ ...set, measure: "barVelocity", value: velocity, unit: "m/s", cell: `C${index + 2}` })]),
    ];
  });

const line = [
  [40, 1.05],
  [60, 0.83],
  [80, 0.6],
  [100, 0.41],
] as const;
const only = ({ rows }: { readonly rows: readonly LoadVelocityRow[] }): LoadVelocityRow => rows[0]!;

describe("load-velocity profile", () => {
  // Source: R 4.2.2 lm(v ~ load), vcov for the delta method, see tests/reference/SOURCES.md.
  it.each([
    [0.17, "mvt_0.17"],
    [0.3, "mvt_0.30"],
  ])("at %d m/s has R's maximum and limits", (threshold, key) => {
    const reference = expected("load_velocity")[key];
    const row = only(answer(sets(line), { threshold }));
    expectRelative(row.maximum!, reference.e1RM, 1e-9);
    expectRelative(row.low!, reference.ci_delta[0], 1e-9);
    expectRelative(row.high!, reference.ci_delta[1], 1e-9);
    expectRelative(row.fit!, reference.r_squared, 1e-9);
    expect(row.verdict).toBe("A straight line through all loads.");
  });

  it("uses each athlete's latest day of a lift, and says how much that was", () => {
    const early = sets(
      [
        [40, 0.2],
        [60, 0.19],
        [80, 0.18],
      ],
      { date: "2026-08-20" },
    );
    const { rows, used } = answer([...early, ...sets(line, { date: "2026-10-29" })]);
    expect(rows).toHaveLength(1);
    expectRelative(only({ rows }).maximum!, expected("load_velocity")["mvt_0.30"].e1RM, 1e-9);
    expect(used).toEqual({ athletes: 1, count: 4, what: "of 7 sets, those of the latest day" });
  });

  it("says why there is no answer: two loads, a line that rises, half a set", () => {
    const { rows, leftOut } = answer([
      ...sets(
        [
          [40, 1],
          [60, 0.8],
        ],
        { athlete: "Two" },
      ),
      ...sets(
        [
          [40, 0.6],
          [60, 0.7],
          [80, 0.8],
        ],
        { athlete: "Rises" },
      ),
      ...sets([...line, [110, null]], { athlete: "Half" }),
    ]);
    const verdictOf = (athlete: string) => rows.find((row) => row.athlete === athlete)!.verdict;
    expect(rows.map(({ athlete }) => athlete)[0]).toBe("Half");
    expect(verdictOf("Two")).toContain("3 different loads");
    expect(verdictOf("Rises")).toContain("Velocity must fall");
    expect(leftOut).toEqual([{ cell: "B6", why: "A load without a bar velocity: not used." }]);
  });

  it("keeps lifts and sides apart", () => {
    const { rows } = answer([
      ...sets(line),
      ...sets(line, { test: "Bench press" }),
      ...sets(line, { test: "Leg press", side: "left" }),
    ]);
    expect(rows.map(({ row }) => row)).toEqual(["A: Bench press", "A: Leg press, left", "A: Squat"]);
  });
});
