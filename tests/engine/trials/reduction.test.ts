import { fewestTrials, reductions } from "../../../src/engine/trials/reduction";

test("the mean of the best two needs two trials, all others one", () => {
  expect(Object.fromEntries(reductions.map((reduction) => [reduction, fewestTrials(reduction)]))).toEqual({
    best: 1,
    mean: 1,
    median: 1,
    meanOfBestTwo: 2,
  });
});
