import { describe as describeAnswer } from "../../src/analyses/describe";
import { ranking } from "../../src/analyses/ranking/ranking";
import { seriesOf } from "../../src/analyses/seriesOf";
import { unwrap } from "../../src/engine/result";
import { type TestResult, testResult } from "../../src/reading/testResult";
import { type Background, noBackground } from "../../src/store/background";
import { column, expected, labels } from "../reference/reference";
import { eventDirection } from "../reference/standingSets";
import { batteryTest } from "./batteryTest";

const answer = (results: readonly TestResult[], settings: object = {}, background: Background = noBackground) =>
  unwrap(ranking.compute(results, ranking.settings.parse(settings), background));

/** Scores by test and athlete; null is a missing one. */
const squad = (scores: Readonly<Record<string, readonly (number | null)[]>>, roles: readonly string[] = []) =>
  Object.entries(scores).flatMap(([test, values]) =>
    values.flatMap((value, index) =>
      value === null ? [] : [testResult({ athlete: `A${index + 1}`, test, value, group: roles[index] ?? null })],
    ),
  );

describe("ranking over the heptathlon, seven qualities of one event each", () => {
  const athletes = labels("heptathlon", "athlete");
  const events = Object.keys(expected("heptathlon").composite.weights);
  const results = events.flatMap((event) =>
    column("heptathlon", event).map((value, index) =>
      testResult({ athlete: athletes[index]!, test: event, value: value!, group: "Any" }),
    ),
  );
  const battery = events.map((event) =>
    batteryTest({ test: event, quality: `Quality of ${event}`, direction: eventDirection(event) }),
  );

  // Source: R 4.2.2 scale and weighted sums, see tests/reference/SOURCES.md.
  it.each([
    ["composite", "asSetUp"],
    ["composite_equal", "alike"],
  ] as const)("is R's %s", (key, weighting) => {
    const reference = expected("heptathlon")[key];
    const weights = Object.entries<number>(reference.weights).map(([event, weight]) => ({
      quality: `Quality of ${event}`,
      role: "any",
      weight,
    }));
    const { rows } = answer(results, { weighting }, { squad: [], battery, weights });
    for (const { athlete, overall, rank, rankInRole, tested, missing } of rows) {
      expect(overall).toBeCloseTo(reference.composite_T_restandardised[athlete], 8);
      expect(rank).toBe(reference.rank[athlete]);
      expect({ rankInRole, tested: Math.round(tested!), missing }).toEqual({
        rankInRole: rank,
        tested: 100,
        missing: "",
      });
    }
    expect(rows.map(({ rank }) => rank)).toEqual([...rows.map(({ rank }) => rank!)].sort((a, b) => a - b));
  });

  it("gives each quality a column of T scores in the order of the rows, as R has them for the single event", () => {
    const { rows, moreColumns } = answer(results, {}, { squad: [], battery, weights: [] });
    expect(moreColumns!.map(({ heading }) => heading)).toEqual(events.map((event) => `Quality of ${event} (T)`));
    moreColumns!.forEach(({ values }, index) => {
      const reference = expected("heptathlon").standing[events[index]!].T_score;
      rows.forEach(({ athlete }, row) => {
        expect(values[row]).toBeCloseTo(reference[athlete], 8);
      });
    });
  });
});

describe("ranking", () => {
  const scores = { Jump: [30, 35, 40, 45, 50], Throw: [9, 8, 7, 6, 5], Sprint: [3.2, 3.1, 3.3, 3.0, 3.4] };
  const battery = [
    batteryTest({ test: "Jump", quality: "Power" }),
    batteryTest({ test: "Throw", quality: "power " }),
    batteryTest({ test: "Sprint", quality: "Speed", direction: "lower" }),
  ];

  it("gathers tests of one quality, so that two of them do not count double", () => {
    const { moreColumns, rows } = answer(squad(scores), {}, { ...noBackground, battery });
    expect(moreColumns!.map(({ heading }) => heading)).toEqual(["Power (T)", "Speed (T)"]);
    // Jump and throw cancel each other out, so the sprint alone decides.
    expect(rows.map(({ athlete }) => athlete)).toEqual(["A4", "A2", "A1", "A3", "A5"]);
  });

  it("gathers them also where the battery has them in both our languages", () => {
    const [jump, , sprint] = battery;
    const mixed = [{ ...jump!, quality: "Strength" }, batteryTest({ test: "Throw", quality: "Kraft" }), sprint!];
    const { moreColumns } = answer(squad(scores), {}, { ...noBackground, battery: mixed });
    expect(moreColumns!.map(({ heading }) => heading)).toEqual(["Strength (T)", "Speed (T)"]);
  });

  it("judges each athlete by the weights of the own role, and says them", () => {
    const roles = ["Wing", "Wing", "Back", "Back", "Back"];
    const weights = [
      { quality: "Jump", role: "Back", weight: 3 },
      { quality: "Sprint", role: "Back", weight: 0 },
      { quality: "Throw", role: "Back", weight: 0 },
      { quality: "Jump", role: "Wing", weight: 0 },
      { quality: "Throw", role: "Wing", weight: 0 },
    ];
    const own = ["Jump", "Throw", "Sprint"].map((test) =>
      batteryTest({ test, quality: test, direction: test === "Sprint" ? "lower" : "higher" }),
    );
    const { rows, method, cautions } = answer(squad(scores, roles), {}, { squad: [], battery: own, weights });
    const byRole = (role: string) =>
      rows.filter(({ group }) => group === role).sort((a, b) => a.rankInRole! - b.rankInRole!);
    expect(byRole("Back").map(({ athlete }) => athlete)).toEqual(["A5", "A4", "A3"]);
    expect(byRole("Wing").map(({ athlete }) => athlete)).toEqual(["A2", "A1"]);
    expect(method).toContain("Back: Jump 3, Throw 0, Sprint 0; Wing: Jump 0, Throw 0, Sprint 1");
    expect(cautions.join(" ")).toContain("compare overall scores within a role");
  });

  it("leaves what was not tested empty and names it; with less than 70 % tested there is no rank", () => {
    const { rows, moreColumns, summary } = answer(
      squad({
        Jump: [30, 35, 40, 45, 50],
        Throw: [9, 8, 7, 6, null],
        Row: [1, 2, 3, 4, 5],
        Sprint: [1, 2, 3, null, null],
      }),
    );
    const at = (athlete: string) => rows.findIndex((row) => row.athlete === athlete);
    expect(rows[at("A4")]).toMatchObject({ tested: 75, missing: "Sprint" });
    expect(rows[at("A4")]!.rank).not.toBeNull();
    expect(rows[at("A5")]).toMatchObject({ tested: 50, missing: "Sprint, Throw", rank: null, overall: null });
    expect(moreColumns!.find(({ heading }) => heading === "Throw (T)")!.values[at("A5")]).toBeNull();
    expect(summary.join(" ")).toContain("1 athlete has no rank");
  });

  it("leaves out and names a test that nobody can be compared in, and one the battery gives no quality", () => {
    const { cautions, moreColumns } = answer(
      squad({ ...scores, Once: [1, 2, null, null, null], Same: [4, 4, 4, 4, 4], Odd: [1, 2, 3, 4, 5] }),
      {},
      {
        ...noBackground,
        battery: [
          ...battery,
          batteryTest({ test: "Once", quality: "Speed" }),
          batteryTest({ test: "Same", quality: "Speed" }),
        ],
      },
    );
    expect(moreColumns).toHaveLength(2);
    expect(cautions.slice(0, 3)).toEqual([
      "Once is not in the ranking: at least 3 scores are needed; there are 2.",
      "Same is not in the ranking: all scores are equal, so there is no spread to compare with. Check for copied data.",
      "Odd is not in the ranking: the battery names no quality for it.",
    ]);
  });

  it("does not rank by loads and repetitions as they stand", () => {
    const set = (athlete: string, load: number): TestResult[] => [
      testResult({ athlete, test: "Squat", measure: "load", value: load }),
      testResult({ athlete, test: "Squat", measure: "repetitions", value: 5 }),
    ];
    const { moreColumns, cautions } = answer([...squad(scores), ...set("A1", 80), ...set("A2", 90), ...set("A3", 95)]);
    expect(moreColumns!.map(({ heading }) => heading)).toEqual(["Jump (T)", "Sprint (T)", "Throw (T)"]);
    expect(cautions.join(" ")).toContain("Squat, load is not in the ranking: it needs a formula");
  });

  it("ranks by the estimated maximum where the battery has a row for it (Epley: load × (1 + repetitions ÷ 30))", () => {
    const set = (athlete: string, load: number, repetitions: number): TestResult[] => [
      testResult({ athlete, test: "Squat", measure: "load", unit: "kg", value: load }),
      testResult({ athlete, test: "Squat", measure: "repetitions", unit: "reps", value: repetitions }),
    ];
    const row = batteryTest({ test: "Squat", measure: "estimatedMaximum", quality: "Strength", unit: "kg" });
    const sets = [...set("A", 80, 3), ...set("B", 60, 6), ...set("C", 75, 10)];
    const background = { ...noBackground, battery: [row] };
    const { results } = seriesOf(ranking, { results: sets, bodies: [] }, background);
    const { rows, moreColumns } = answer(results, {}, background);
    expect(moreColumns!.map(({ heading }) => heading)).toEqual(["Strength (T)"]);
    // 88, 72 and 100 kg.
    expect(rows.map(({ athlete }) => athlete)).toEqual(["C", "A", "B"]);
  });

  it("writes the columns of the qualities after the declared ones, before those that serve the chart", () => {
    const described = unwrap(
      describeAnswer({
        analysis: ranking,
        reading: { results: squad(scores), athletes: [], alike: [], bodies: [], tests: ["Jump"], remarks: [] },
        uses: new Set(["athlete", "result"]),
        test: "",
        settings: {},
        background: {
          ...noBackground,
          battery,
          squad: [{ ...member, athlete: "a1", role: "Wing" }],
        },
        source: "Tests!A1:D6",
        date: "2026-08-11",
      }),
    );
    const { columns, rows } = described.table;
    expect(columns.map(({ heading }) => heading).slice(-4)).toEqual([
      "Not tested",
      "Power (T)",
      "Speed (T)",
      "From the middle",
    ]);
    expect(new Set(rows.map((row) => row.length))).toEqual(new Set([columns.length]));
    // The role comes from the squad, where the sheet has none.
    expect(rows.find(([athlete]) => athlete === "A1")![1]).toBe("Wing");
  });
});

const member = {
  group: null,
  dominantSide: null,
  birthYear: null,
  bodyMass: null,
  stature: null,
  notes: null,
};
