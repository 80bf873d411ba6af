import { widthOf } from "../../src/sheet/tableLook";

const column = (heading: string, format?: string) => ({
  key: "k",
  heading,
  meaning: "M.",
  ...(format === undefined ? {} : { format }),
});

describe("widthOf(column, values)", () => {
  it("is wide enough for the longest word of the heading beside the filter's button", () => {
    expect(widthOf(column("Athletes", "0"), [1])).toBeGreaterThanOrEqual("Athletes".length * 5.6 + 16);
    expect(widthOf(column("Typical error (cm)", "0.0"), [1])).toBeLessThan(
      widthOf(column("Typicalerror(cm)", "0.0"), [1]),
    );
  });

  it("is wide enough for what is shown, not for the digits behind it", () => {
    expect(widthOf(column("x", "0.0"), [1 / 3])).toBe(widthOf(column("x", "0.0"), [0.3]));
    expect(widthOf(column("x"), ["Torvei Bjørnemose"])).toBeGreaterThan(17 * 5.6);
  });

  it("has an end, whatever a name holds", () => {
    expect(widthOf(column("x"), ["y".repeat(32_767)])).toBeLessThan(300);
  });
});
