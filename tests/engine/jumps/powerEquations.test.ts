import { type PowerEquationName, powerEquation, powerEquations } from "../../../src/engine/jumps/powerEquations";
import { expectRelative } from "../../reference/reference";
import { computePrinted } from "../printedFormula";

describe("the equations for the power of a jump", () => {
  test.each(powerEquations)("$label: the printed formula is the one computed", ({ formula, watts }) => {
    const printed = formula.replace("h in metres", "h / 100");
    for (const [h, m, s] of [
      [25, 60, 160],
      [50, 90, 190],
    ] as const) {
      expectRelative(watts(h, m, s), computePrinted(printed, { h, m, s }), 1e-13);
    }
  });

  test.each(powerEquations)("$label: stature is asked for where the formula has it", ({ formula, needsStature }) => {
    expect(needsStature).toBe(/\bs\b/.test(formula));
  });

  test.each(powerEquations)("$label is found by its name, and says whence it is and how it was read", (equation) => {
    expect(powerEquation(equation.name)).toBe(equation);
    expect(equation.source).toMatch(/^[A-Z].*(\d{4}|textbook).*\((as quoted by|from memory|abstract read)/);
  });

  test("no two have one label", () => {
    expect(powerEquations.map(({ label }) => label)).toEqual([
      "Sayers et al., squat jump",
      "Sayers et al., countermovement jump",
      "Harman et al., peak",
      "Harman et al., average",
      "Johnson & Bahamonde, peak",
      "Johnson & Bahamonde, average",
      "Canavan & Vescovi, women",
      "Lewis",
    ]);
  });

  // Source: why each is reserved stands beside it in the list.
  test("three are given with a reservation", () => {
    const reserved = powerEquations.filter(({ reservation }) => /^[A-Z].*\.$/.test(reservation ?? ""));
    expect(reserved.map(({ name }) => name)).toEqual(["johnsonBahamondeAverage", "canavanVescovi", "lewis"]);
  });

  test("a name that is not on the list is a programming error", () => {
    expect(() => powerEquation("guess" as PowerEquationName)).toThrow('There is no power equation "guess".');
  });
});
