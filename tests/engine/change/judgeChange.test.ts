import { changeVerdicts, judgeChange } from "../../../src/engine/change/judgeChange";

describe("the verdict on a change", () => {
  test.each([
    [6, 4, 1, "clearImprovement"],
    [4.5, 4, 1, "improvementBeyondNoise"],
    [4, 4, 1, "withinNoise"],
    [4, 4, 0.5, "withinNoise"],
    [1, 4, 1, "unclear"],
    [0, 0.8, 1, "withinNoise"],
    [-4.5, 4, 1, "declineBeyondNoise"],
    [-6, 4, 1, "clearDecline"],
    [5, 4, 1, "improvementBeyondNoise"],
    [-5, 4, 1, "declineBeyondNoise"],
    [-4, 4, 1, "withinNoise"],
    [3, 4, 1, "withinNoise"],
    [-3, 4, 1, "withinNoise"],
    [2.9, 4, 1, "unclear"],
    [-2.9, 4, 1, "unclear"],
  ] as const)("improvement %d, margin %d, smallest worthwhile change %d: %s", (improvement, margin, swc, verdict) => {
    expect(judgeChange({ improvement, margin, smallestWorthwhileChange: swc })).toBe(verdict);
  });

  test("every verdict has words of its own", () => {
    expect(new Set(Object.values(changeVerdicts)).size).toBe(6);
    for (const [verdict, words] of Object.entries(changeVerdicts)) {
      const told = /improve/i.test(verdict) ? /improvement/ : /decline/i.test(verdict) ? /decline/ : /change|unclear/;
      expect(words).toMatch(told);
    }
  });

  test("no verdict claims proof", () => {
    for (const words of Object.values(changeVerdicts)) expect(words).not.toMatch(/proved|responder|significant|safe/i);
  });
});
