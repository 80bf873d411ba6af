import { installCustomFunctionsErrors } from "./customFunctionsErrors";

installCustomFunctionsErrors();

import {
  allometricStrength,
  barLoad,
  barPlates,
  dumbbell,
  loadForReps,
  oneRepMax,
  percentForReps,
  relativeStrength,
} from "../../src/functions/strength";
import { expected, expectRelative } from "../reference/reference";
import { across, down, expectError, failing } from "./cells";

describe("ONEREPMAX", () => {
  // Source: R 4.2.2 arithmetic on the published equations, 100 kg lifted 2 to 12 and 15 times.
  it.each([
    [undefined, "Epley"],
    ["Brzycki", "Brzycki"],
    ["brzycki decimal", "Brzycki_decimal"],
    ["lander", "Lander"],
    ["lombardi", "Lombardi"],
    ["mayhew", "Mayhew"],
    ["oConner", "OConner"],
    ["wathan", "Wathan"],
  ])("by %s agrees with R down a column", (equation, key) => {
    const { reps, e1RM } = expected("e1rm_inputs");
    const indices = [1, 4, 9, 12];
    const answers = oneRepMax(across(100), down(indices.map((index) => reps[index])), equation);
    indices.forEach((index, row) => {
      expectRelative(answers[row]![0], e1RM[key][index], 1e-11);
    });
  });

  // Source: the equation of Epley by hand, 80 (1 + 5 / 30) and, with 2 in reserve, 80 (1 + 7 / 30).
  it("counts repetitions in reserve, one column beside the other, an empty one as none", () => {
    const answers = oneRepMax(down([80, 80]), down([5, 5]), undefined, down([2, null]));
    expectRelative(answers[0]![0], 98.66666666666667, 1e-12);
    expectRelative(answers[1]![0], 93.33333333333333, 1e-12);
  });

  it("takes a single as the maximum itself", () => {
    expect(oneRepMax(across(100), across(1))).toEqual([[100]]);
  });

  it("answers each row for itself: gaps, text, too many repetitions", () => {
    expect(oneRepMax(down([90, null, 0, "82,5 kg", 80, 80]), down([1, null, 0, 5, 20, "DNS"]))).toEqual([
      [90],
      [""],
      [""],
      [failing("#VALUE!", /82,5 kg/)],
      [failing("#N/A", /from 1 to 15; 20 is not/)],
      [failing("#N/A", /repetitions is missing/)],
    ]);
  });

  it("refuses an unknown equation and ranges that do not match", () => {
    expectError(() => oneRepMax(across(100), across(5), "best guess"), "#VALUE!", /Use epley, .* or wathan/);
    expectError(() => oneRepMax(down([80, 90]), down([5, 5, 5])), "#VALUE!", /repetitions has 3 rows, load has 2/);
  });
});

describe("LOADFORREPS", () => {
  // Source: R 4.2.2 arithmetic on the inverted equations, maximum 100 kg.
  it("agrees with R, and gives a table for a column of maxima and a row of repetitions", () => {
    const { reps, load_for_reps_from_1RM_100: loads } = expected("e1rm_inputs");
    const table = loadForReps(down([100, 200]), across(reps[2], reps[9]), "brzycki");
    expectRelative(table[0]![0], loads.Brzycki[2], 1e-11);
    expectRelative(table[0]![1], loads.Brzycki[9], 1e-11);
    expectRelative(table[1]![1], 2 * loads.Brzycki[9], 1e-11);
  });

  it("lowers the load for repetitions in reserve", () => {
    expect(loadForReps(across(100), across(3), undefined, across(2))).toEqual(loadForReps(across(100), across(5)));
  });

  it("gives an error for what it cannot answer", () => {
    expect(loadForReps(down([-100, "x", "about 90"]), across(5))).toEqual([
      [failing("#N/A", /above zero/)],
      [""],
      [failing("#VALUE!", /about 90/)],
    ]);
  });
});

describe("PERCENTFORREPS", () => {
  // Source: training-load chart of the NSCA, as quoted by secondary pages.
  it("reads the table, between its rows too", () => {
    expect(percentForReps(across(1, 5, 10, 13.5))).toEqual([[100, 87, 75, 66]]);
    expect(percentForReps(down([16, null]))).toEqual([[failing("#N/A", /from 1 to 15/)], [""]]);
  });
});

describe("BARLOAD and BARPLATES", () => {
  const plates = across(25, 20, 15, 10, 5, 2.5, 1.25);

  // Source: R 4.2.2: 20 + 2.5 * round(26.92) and 20 + 2.5 * floor(26.92) for 87.3.
  it("round down where nothing is said, to nearest when asked", () => {
    expect(barLoad(down([87.3, null, 15]), 20, plates)).toEqual([[85], [""], [failing("#N/A", /below the bar/)]]);
    expect(barLoad(across(87.3), 20, plates, "nearest")).toEqual([[87.5]]);
  });

  // Source: by hand, (85 - 20) / 2 = 32.5 = 25 + 5 + 2.5.
  it("show the plates of one side, and the bare bar as an empty cell", () => {
    expect(barPlates(87.3, 20, across(25, 10, 5, 2.5, 1.25))).toEqual([[25, 5, 2.5]]);
    expect(barPlates(20, 20, plates)).toEqual([[""]]);
  });

  it("keep to the pairs there are; a dash is as many as needed, a 0 none", () => {
    const few = across(0, "-", 0, 0, 0, 0, 1);
    expect(barPlates(103, 20, plates, "down", few)).toEqual([[20, 20, 1.25]]);
    expectError(
      () => barPlates(103, 20, plates, "down", across(1, 2)),
      "#VALUE!",
      /7 cells with plates and 2 with pairs/,
    );
  });

  it("refuse a bar or a target that is no number", () => {
    expectError(() => barLoad(across(80), null, plates), "#VALUE!", /weight of the bar is missing/);
    expectError(() => barPlates("heavy", 20, plates), "#VALUE!", /heavy/);
    expectError(() => barLoad(across(80), 20, plates, "up"), "#VALUE!", /Use down or nearest/);
  });
});

describe("DUMBBELL", () => {
  // Source: by hand.
  it("picks from those owned", () => {
    const owned = across(5, 7.5, 10, 20, null);
    expect(dumbbell(down([8.9, 50, 4]), owned)).toEqual([[7.5], [20], [failing("#N/A", /lightest dumbbell/)]]);
    expect(dumbbell(across(8.9), owned, "nearest")).toEqual([[10]]);
    expect(dumbbell(across(8.9), across(null))).toEqual([[failing("#N/A", /At least 1 dumbbells/)]]);
  });
});

describe("RELATIVESTRENGTH and ALLOMETRICSTRENGTH", () => {
  // Source: R 4.2.2 arithmetic, 150 kg at 80 kg.
  it("agree with R", () => {
    expect(relativeStrength(across(150), across(80))).toEqual([[1.875]]);
    expectRelative(allometricStrength(across(150), across(80))[0]![0], 7.9619779, 1e-8);
    expectRelative(allometricStrength(across(150), across(80), 2 / 3)[0]![0], 8.0791301, 1e-8);
  });

  it("answer each row for itself", () => {
    expect(relativeStrength(down([150, 0, 120]), down([80, 0, null]))).toEqual([
      [1.875],
      [""],
      [failing("#N/A", /body mass is missing/)],
    ]);
    expect(allometricStrength(across(150), across(80), 1.5)).toEqual([[failing("#N/A", /from 0 to 1/)]]);
    expectError(() => allometricStrength(across(150), across(80), "two thirds"), "#VALUE!", /two thirds/);
  });
});
