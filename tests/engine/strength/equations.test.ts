import { type StrengthEquationName, strengthEquation, strengthEquations } from "../../../src/engine/strength/equations";
import { expectRelative } from "../../reference/reference";
import { computePrinted } from "../printedFormula";

describe("the equations for a maximum from repetitions", () => {
  test.each(strengthEquations)("$label: the printed formula is the one computed", ({ formula, maximumPerLoad }) => {
    for (const r of [2, 7, 15]) expectRelative(80 * maximumPerLoad(r), computePrinted(formula, { w: 80, r }), 1e-14);
  });

  test.each(strengthEquations)("$label is found by its name, and says whence it is and how it was read", (equation) => {
    expect(strengthEquation(equation.name)).toBe(equation);
    expect(equation.source).toMatch(/^[A-Z].* \d{4}, .*\(as quoted by secondary pages\)$/);
  });

  test("no two have one label", () => {
    expect(strengthEquations.map(({ label }) => label)).toEqual([
      "Epley",
      "Brzycki",
      "Brzycki, decimal form",
      "Lander",
      "Lombardi",
      "Mayhew et al.",
      "O'Conner et al.",
      "Wathan",
    ]);
  });

  test("a name that is not on the list is a programming error", () => {
    expect(() => strengthEquation("guess" as StrengthEquationName)).toThrow('There is no strength equation "guess".');
  });
});
