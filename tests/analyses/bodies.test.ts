import { bodiesOf } from "../../src/analyses/bodies";
import { testResult } from "../../src/reading/testResult";
import { noBackground } from "../../src/store/background";
import type { SquadMember } from "../../src/store/squad";

const member = (athlete: string, bodyMass: number | null, stature: number | null): SquadMember => ({
  athlete,
  role: null,
  group: null,
  dominantSide: null,
  birthYear: null,
  bodyMass,
  stature,
  notes: null,
});

const mass = (value: number, date: string | null, said = {}) =>
  testResult({ athlete: "A", measure: "bodyMass", value, unit: "kg", date, ...said });

describe("the body of an athlete", () => {
  const background = { ...noBackground, squad: [member("A", 70, 174), member("B", null, null)] };

  it("is that of the squad's table where nothing was measured", () => {
    const body = bodiesOf([], background);
    expect(body("a ", null)).toEqual({ mass: 70, stature: 174 });
    expect(body("B", null)).toEqual({ mass: null, stature: null });
    expect(body("C", null)).toEqual({ mass: null, stature: null });
  });

  it("is that measured on the day, else that of the latest day", () => {
    const body = bodiesOf([mass(68, "2026-08-11"), mass(69, "2026-10-01"), mass(66, null)], background);
    expect(body("A", "2026-08-11")).toEqual({ mass: 68, stature: 174 });
    expect(body("A", "2026-09-01").mass).toBe(69);
    expect(body("A", null).mass).toBe(66);
  });

  it("is read in kilograms and centimetres", () => {
    const body = bodiesOf([mass(150, null, { unit: "lb" })], noBackground);
    expect(body("A", null).mass).toBeCloseTo(68.0388555, 7);
    const tall = testResult({ athlete: "A", measure: "stature", value: 1.72, unit: "m" });
    expect(bodiesOf([tall], noBackground)("A", null).stature).toBeCloseTo(172, 10);
  });
});
