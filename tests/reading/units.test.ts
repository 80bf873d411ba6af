import fc from "fast-check";
import { convert, splitHeading, unitOf, units } from "../../src/reading/units";

describe("splitHeading(heading)", () => {
  it.each([
    ["Left 1 (cm)", "Left 1", "cm"],
    ["Left 1 [cm]", "Left 1", "cm"],
    ["Left 1, cm", "Left 1", "cm"],
    ["Left in cm", "Left", "cm"],
    ["Load (KG)", "Load", "kg"],
    ["10 m (s)", "10 m", "s"],
    ["Hop (m)", "Hop", "m"],
  ])("finds the unit in “%s”", (heading, name, symbol) => {
    const split = splitHeading(heading);
    expect(split.name).toBe(name);
    expect(split.unit?.symbol).toBe(symbol);
  });

  it.each(["Athlete", "Left 1", "Hop m", "R", "Role (position)", ""])("finds none in “%s”", (heading) => {
    expect(splitHeading(heading)).toEqual({ name: heading, unit: null });
  });
});

describe("convert(value, from, to)", () => {
  it.each([
    [1.82, "m", "cm", 182],
    [1, "in", "cm", 2.54],
    // The pound is 0.45359237 kg exactly (international yard and pound agreement, 1959).
    [1, "lb", "kg", 0.45359237],
    [36, "km/h", "m/s", 10],
    [250, "ms", "s", 0.25],
  ])("%d %s is, in %s, %d", (value, from, to, expected) => {
    expect(convert(value, unitOf(from)!, unitOf(to)!)).toBeCloseTo(expected, 12);
  });

  it("refuses to cross quantities, and goes there and back within one", () => {
    expect(convert(1, unitOf("cm")!, unitOf("kg")!)).toBeNull();
    fc.assert(
      fc.property(
        fc.constantFrom(...units),
        fc.constantFrom(...units),
        fc.double({ min: 0.1, max: 1e4, noNaN: true }),
        (from, to, value) => {
          const there = convert(value, from, to);
          if (from.quantity !== to.quantity) expect(there).toBeNull();
          else expect(convert(there!, to, from)! / value).toBeCloseTo(1, 12);
        },
      ),
    );
  });

  it("no spelling stands for two units", () => {
    const spellings = units.flatMap((unit) => unit.spellings);
    expect(new Set(spellings).size).toBe(spellings.length);
  });
});
