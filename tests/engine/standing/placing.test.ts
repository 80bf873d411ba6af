import fc from "fast-check";
import { placings } from "../../../src/engine/standing/placing";

describe("placing", () => {
  // Outside check: counting each score against all others.
  test("counts what is below and what is equal", () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 9 }), { maxLength: 40 }), (scores) => {
        expect(placings(scores)).toEqual(
          scores.map((score) => ({
            below: scores.filter((other) => other < score).length,
            equal: scores.filter((other) => other === score).length,
          })),
        );
      }),
    );
  });
});
