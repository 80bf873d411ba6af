import { logarithms } from "../../../src/engine/reliability/logarithms";
import { unwrap } from "../../../src/engine/result";

describe("logarithms of results", () => {
  test("missing results stay missing", () => {
    expect(
      unwrap(
        logarithms([
          [1, null],
          [Math.E, 1],
        ]),
      ),
    ).toEqual([
      [0, null],
      [1, 0],
    ]);
  });

  test("a zero is refused with its value", () => {
    expect(
      logarithms([
        [1, 2],
        [0, null],
      ]),
    ).toMatchObject({ reasons: [{ code: "notPositive", facts: { what: "every result", value: 0 } }] });
  });
});
