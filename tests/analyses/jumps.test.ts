import { jumpNamed } from "../../src/analyses/jumps/jumpNames";
import { type JumpsRow, jumps } from "../../src/analyses/jumps/jumps";
import { unwrap } from "../../src/engine/result";
import { type TestResult, testResult } from "../../src/reading/testResult";
import { noBackground } from "../../src/store/background";
import type { SquadMember } from "../../src/store/squad";

type Said = Partial<TestResult>;

const height = (athlete: string, test: string, value: number, said: Said = {}) =>
  testResult({ athlete, test, measure: "jumpHeight", unit: "cm", value, ...said });

/** A drop jump by its times in milliseconds. */
const drop = (athlete: string, flight: number, contact: number, said: Said = {}) => [
  testResult({ athlete, test: "Drop jump", measure: "flightTime", unit: "ms", value: flight, ...said }),
  testResult({ athlete, test: "Drop jump", measure: "contactTime", unit: "ms", value: contact, ...said }),
];

const answer = (results: readonly TestResult[], settings: object = {}, squad: readonly SquadMember[] = []) =>
  unwrap(jumps.compute(results, jumps.settings.parse(settings), { ...noBackground, squad }));

const member = (athlete: string, bodyMass: number | null, stature: number | null = null): SquadMember => ({
  ...{ athlete, bodyMass, stature, role: null, group: null, dominantSide: null, birthYear: null, notes: null },
});

const rowOf = (rows: readonly JumpsRow[], athlete: string) => rows.find((one) => one.athlete === athlete)!;

describe("the name of a test", () => {
  it.each([
    ["CMJ", "countermovement"],
    ["cmj, hands on hips", "countermovement"],
    ["Counter-Movement-Jump", "countermovement"],
    ["Countermovement jump (cm)", "countermovement"],
    ["SJ 2", "squat"],
    ["Squat Jump", "squat"],
    ["Strecksprung aus der Hocke", "squat"],
    ["Drop-Jump 30 cm", "drop"],
    ["DJ40", "drop"],
    ["DJ 40", "drop"],
    ["Tief-Hoch-Sprung", "drop"],
    ["Back squat", null],
    ["Single-leg hop", null],
    ["CMJ / SJ", null],
    ["", null],
  ])("%s is %s", (test, kind) => {
    expect(jumpNamed(test)).toBe(kind);
  });
});

describe("jumps", () => {
  // Source: R 4.2.2 arithmetic: 0.55 s of flight are 0.370940625 m.
  it("have their height from the time in the air, whatever its unit", () => {
    const flight = (value: number, unit: string) =>
      testResult({ athlete: "A", test: "CMJ", measure: "flightTime", value, unit });
    for (const result of [flight(550, "ms"), flight(0.55, "s")]) {
      expect(answer([result]).rows[0]!.countermovement).toBeCloseTo(37.0940625, 9);
    }
  });

  it("need no measure where the name says the jump: a length is a height, a time is a flight", () => {
    const plain = (value: number, unit: string | null) => testResult({ athlete: "A", test: "CMJ", value, unit });
    expect(answer([plain(37, "cm")]).rows[0]!.countermovement).toBe(37);
    expect(answer([plain(37, null)]).rows[0]!.countermovement).toBe(37);
    expect(answer([plain(0.55, "s")]).rows[0]!.countermovement).toBeCloseTo(37.0940625, 9);
  });

  it("are what the coach says where the name does not, else left out and told", () => {
    const results = [height("A", "Jump", 35, { cell: "B2" }), height("A", "CMJ", 33)];
    const without = answer(results);
    expect(without.rows[0]!.countermovement).toBe(33);
    expect(without.leftOut).toEqual([
      { cell: "B2", why: "“Jump” does not say which jump it is; say in the settings what other jumps are." },
    ]);
    expect(answer(results, { others: "countermovement" }).rows[0]!.countermovement).toBe(35);
  });

  it("leave alone what is no vertical jump: hops, lifts and sprints", () => {
    const others = [
      testResult({ athlete: "A", test: "Hop", value: 180, unit: "cm" }),
      testResult({ athlete: "A", test: "Back squat", measure: "load", value: 80, unit: "kg" }),
    ];
    expect(answer([height("A", "CMJ", 33), ...others]).leftOut).toEqual([]);
    expect(jumps.compute(others, jumps.settings.parse({}), noBackground)).toMatchObject({
      ok: false,
      reasons: [{ code: "noJump" }],
    });
  });

  it("on one leg, without a height, and impossible ones are left out with the reason", () => {
    const { leftOut } = answer([
      height("A", "CMJ", 33),
      height("B", "CMJ", 18, { side: "left", cell: "B3" }),
      testResult({ athlete: "C", test: "DJ", measure: "contactTime", value: 200, unit: "ms", cell: "C4" }),
      height("D", "CMJ", 0, { cell: "B5" }),
      ...drop("E", 500, 0, { cell: "B6" }),
    ]);
    expect(leftOut).toEqual([
      { cell: "B5", why: "0 cm is outside the 5 to 90 cm that a jump height plausibly takes." },
      { cell: "B6", why: "0 s is outside the 0.1 to 0.6 s that a contact time plausibly takes." },
      { cell: "B3", why: "A jump on one leg: ask for the left-right asymmetry of it." },
      { cell: "C4", why: "A contact time without a height or a flight time: nothing follows." },
    ]);
  });

  it("count with the best of the latest day: the highest, and the drop jump with the largest index", () => {
    const { rows } = answer([
      height("A", "CMJ", 40, { date: "2026-08-11" }),
      height("A", "CMJ", 36, { date: "2026-10-06" }),
      height("A", "CMJ", 37, { date: "2026-10-06", attempt: 2 }),
      ...drop("A", 520, 300),
      ...drop("A", 500, 200, { attempt: 2 }),
    ]);
    expect(rows[0]).toMatchObject({ countermovement: 37, contact: 200, reactive: expect.closeTo(1.5328125, 10) });
    expect(rows[0]!.drop).toBeCloseTo(30.65625, 9);
  });

  it("are compared with a squat jump of the same day only", () => {
    const { rows } = answer([
      height("A", "CMJ", 36, { date: "2026-08-11" }),
      height("A", "SJ", 32, { date: "2026-08-11" }),
      height("B", "CMJ", 36, { date: "2026-08-11" }),
      height("B", "SJ", 32, { date: "2026-08-18" }),
      height("C", "CMJ", 28),
      height("C", "SJ", 32),
    ]);
    expect(rowOf(rows, "A")).toMatchObject({ utilisation: 1.125 });
    expect(rowOf(rows, "A").verdict).toContain("The countermovement adds 13 % to the squat jump.");
    expect(rowOf(rows, "B").utilisation).toBeNull();
    expect(rowOf(rows, "B").verdict).toContain("of two days");
    expect(rowOf(rows, "C").verdict).toContain("The squat jump was the higher one");
  });
});

describe("peak power", () => {
  // Source: R 4.2.2 arithmetic on the published equations, 40 cm, 75 kg, 178 cm.
  it.each([
    ["sayersSquatJump", 3770.5],
    ["sayersCountermovementJump", 3736.5],
    ["harmanPeak", 3354],
    ["johnsonBahamondePeak", 3635.1],
    ["canavanVescovi", 3125.9],
  ])("by %s is %d W", (equation, watts) => {
    const [row] = answer([height("A", "CMJ", 40)], { equation }, [member("A", 75, 178)]).rows;
    expect(row!.power).toBeCloseTo(watts, 8);
    expect(row!.relativePower).toBeCloseTo(watts / 75, 10);
  });

  it("offers no equation of average power", () => {
    expect(jumps.settings.safeParse({ equation: "lewis" }).success).toBe(false);
  });

  it("is blank with the reason where body mass or stature is missing, and beware outside the heights it is for", () => {
    const results = [height("A", "CMJ", 40), height("B", "CMJ", 40), height("C", "SJ", 70)];
    const { rows, cautions } = answer(results, { equation: "johnsonBahamondePeak" }, [
      member("B", 75),
      member("C", 75, 178),
    ]);
    expect(rowOf(rows, "A")).toMatchObject({ power: null, verdict: "Body mass is missing. No power." });
    expect(rowOf(rows, "B").verdict).toContain("needs the athlete's stature in centimetres. No power.");
    expect(rowOf(rows, "C").power).toBeGreaterThan(0);
    expect(rowOf(rows, "C").verdict).toContain("15 to 65 cm; 70 cm is outside");
    expect(cautions).toContain("2 athletes without a power: see the verdict.");
  });
});

describe("the words", () => {
  it("tell how height and contact make up the index, in squads large enough and outer thirds only", () => {
    const squad = [
      ...drop("A", 560, 180),
      ...drop("B", 550, 320),
      ...drop("C", 500, 230),
      ...drop("D", 490, 240),
      ...drop("E", 430, 190),
      ...drop("F", 420, 310),
    ];
    const { rows } = answer(squad);
    expect(rowOf(rows, "A").verdict).toBe("Drop jump among the squad's highest and shortest on the ground.");
    expect(rowOf(rows, "B").verdict).toBe("Drop jump among the squad's highest, but long on the ground.");
    expect(rowOf(rows, "C").verdict).toBe("");
    expect(rowOf(rows, "E").verdict).toBe("Drop jump short on the ground, but among the squad's lowest.");
    expect(rowOf(rows, "F").verdict).toBe("Drop jump among the squad's lowest and longest on the ground.");
    expect(rowOf(answer(squad.slice(0, 10)).rows, "A").verdict).toBe("");
  });

  it("name the best and the middle, and warn of mixed ways of measuring", () => {
    const { summary, cautions, rows } = answer([
      height("A", "CMJ", 40),
      height("B", "CMJ", 30),
      testResult({ athlete: "C", test: "CMJ", measure: "flightTime", value: 500, unit: "ms" }),
      ...drop("A", 500, 200),
    ]);
    expect(summary).toEqual([
      "Best countermovement jump: A, 40.0 cm; the middle of 3 athletes is 30.7 cm.",
      "Reactive strength index: A, 1.53 m/s.",
    ]);
    expect(rows.map(({ athlete, heightRank, reactiveRank }) => [athlete, heightRank, reactiveRank])).toEqual([
      ["A", 1, 1],
      ["C", 2, null],
      ["B", 3, null],
    ]);
    expect(cautions[0]).toMatch(/^Some heights were measured, others computed/);
  });
});
