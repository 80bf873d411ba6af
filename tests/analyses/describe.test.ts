import { z } from "zod";
import { defineAnalysis } from "../../src/analyses/analysis";
import { describe as describeAnswer } from "../../src/analyses/describe";
import { measured, text, textWhereSaid } from "../../src/analyses/fields";
import { ok, unwrap } from "../../src/engine/result";
import { type TestResult, testResult } from "../../src/reading/testResult";
import { type Background, memberCalled, noBackground } from "../../src/store/background";
import type { SquadMember } from "../../src/store/squad";

const member = (said: Pick<SquadMember, "athlete"> & Partial<SquadMember>): SquadMember => ({
  role: null,
  group: null,
  dominantSide: null,
  birthYear: null,
  bodyMass: null,
  stature: null,
  notes: null,
  ...said,
});

/** Hands back what it was handed: role, body and value of each result. */
const mirror = defineAnalysis({
  id: "mirror",
  title: "Mirror",
  sheet: "Mirror",
  question: "What was handed over?",
  part: "test",
  select: "",
  tests: "all",
  takes: "measured",
  needs: [["athlete", "result"]],
  settings: z.object({}),
  gives: z.object({
    athlete: text("Athlete", "Name."),
    role: text("Role", "Role."),
    remark: textWhereSaid("Remark", "Said where there is one."),
    mass: measured("Mass", "Body mass."),
  }),
  rowKey: "athlete",
  compute: (results, _settings, background, occasion) =>
    ok({
      rows: results.map(({ athlete, group, value }) => ({
        athlete,
        role: group ?? "",
        remark: value < 0 ? `Below zero on ${occasion?.today}` : "",
        mass: memberCalled(background, athlete)?.bodyMass ?? null,
      })),
      summary: [],
      cautions: [],
      method: "",
      leftOut: [],
    }),
  chart: { kind: "bar", title: "", categories: "athlete", series: [], valueAxisTitle: "" },
  cautions: [],
  method: { formula: "", source: "" },
  example: { results: [], settings: {}, gives: [] },
});

const report = (results: readonly TestResult[], background: Background, bodies: readonly object[] = []) =>
  unwrap(
    describeAnswer({
      analysis: mirror,
      reading: { results, athletes: [], alike: [], bodies: bodies as [], tests: [""], remarks: [] },
      uses: new Set(["athlete", "result"]),
      test: "",
      settings: {},
      background,
      source: "Sheet!A1:B2",
      date: "2026-08-11",
    }),
  ).table;

describe("what an analysis is handed", () => {
  const squad = [member({ athlete: "Ada", role: "Wing", bodyMass: 60 }), member({ athlete: "Bea", role: "Back" })];

  it("has the role of the sheet, else the squad's", () => {
    const results = [
      testResult({ athlete: "ada ", value: 1 }),
      testResult({ athlete: "Bea", value: 1, group: "Pivot" }),
      testResult({ athlete: "Cia", value: 1 }),
    ];
    const roles = report(results, { ...noBackground, squad }).rows.map(([, role]) => role);
    expect(roles).toEqual(["Wing", "Pivot", ""]);
  });

  it("has the body mass that stands on the sheet, else the squad's", () => {
    const results = ["Ada", "Bea", "Cia"].map((athlete) => testResult({ athlete, value: 1 }));
    const bodies = [
      { athlete: "Bea", bodyMass: 71, stature: null },
      { athlete: "Cia", bodyMass: 65, stature: 170 },
      { athlete: "Ada", bodyMass: null, stature: 168 },
    ];
    const masses = report(results, { ...noBackground, squad }, bodies).rows.map((row) => row.at(-1));
    expect(masses).toEqual([60, 71, 65]);
  });

  it("gets the day, and its optional columns are written only where a row has something to say", () => {
    const headings = (value: number) => report([testResult({ athlete: "A", value })], noBackground);
    expect(headings(1).columns.map(({ heading }) => heading)).toEqual(["Athlete", "Role", "Mass"]);
    expect(headings(-1).columns.map(({ heading }) => heading)).toEqual(["Athlete", "Role", "Remark", "Mass"]);
    expect(headings(-1).rows).toEqual([["A", "", "Below zero on 2026-08-11", null]]);
  });
});
