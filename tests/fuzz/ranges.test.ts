import { dirtyRange } from "./dirtyRange";
import { faultsOfRange } from "./faultsOfRange";
import { randomFrom } from "./random";

/** A sample of what `npm run fuzz` does 100,000 times. */
const seeds = Array.from({ length: 400 }, (_, index) => index + 1);

it("dirty ranges are read and asked without a crash, and no value is dropped silently", () => {
  for (const seed of seeds) {
    const random = randomFrom(seed);
    const grid = dirtyRange(random);
    expect({ seed, faults: faultsOfRange(grid, random) }).toEqual({ seed, faults: [] });
  }
});

it.each([
  ["a number of a trial that nobody can have done", 1060],
  ["a name as long as a cell can be", 224],
])("what was found once is not found again: %s", (_, seed) => {
  const random = randomFrom(seed);
  expect(faultsOfRange(dirtyRange(random), random)).toEqual([]);
});
