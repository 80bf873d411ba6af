import { installCustomFunctionsErrors } from "./customFunctionsErrors";

installCustomFunctionsErrors();

import { hopTest } from "../../sample-workbooks/hopTest";
import { asymmetry as analysis } from "../../src/analyses/asymmetry/asymmetry";
import { unwrap } from "../../src/engine/result";
import { asymmetry, strongerSide } from "../../src/functions/asymmetry";
import { noiseLimit } from "../../src/functions/asymmetryNoise";
import { trialCV, trialScore } from "../../src/functions/trials";
import { testResult } from "../../src/reading/testResult";
import { noBackground } from "../../src/store/background";

describe("the functions agree with the table", () => {
  const squad = hopTest();
  const lefts = squad.map(({ left }) => [...left]);
  const rights = squad.map(({ right }) => [...right]);
  const results = squad.flatMap(({ athlete, left, right }) => [
    ...left.map((value) => testResult({ athlete: athlete.name, side: "left" as const, value })),
    ...right.map((value) => testResult({ athlete: athlete.name, side: "right" as const, value })),
  ]);

  it.each(["best", "mean", "median", "meanOfBestTwo"])("for the reduction %s", (reduction) => {
    const { rows } = unwrap(analysis.compute(results, analysis.settings.parse({ reduction }), noBackground));
    const limits = noiseLimit(lefts, rights, reduction);
    squad.forEach(({ athlete }, index) => {
      const row = rows.find((one) => one.athlete === athlete.name)!;
      const [left, right] = [[lefts[index]!], [rights[index]!]];
      expect(trialScore(left, reduction)).toBe(row.left);
      expect(asymmetry(left, right, reduction)).toBe(row.asymmetry);
      expect(strongerSide(left, right, reduction)).toBe(row.stronger);
      expect(trialCV(left, right)).toBe(row.variation);
      expect(limits[index]).toEqual([row.noise]);
    });
  });

  it.each(["steadied", "group", "athlete"])("for noise from %s", (noise) => {
    const { rows } = unwrap(analysis.compute(results, analysis.settings.parse({ noise }), noBackground));
    const limits = noiseLimit(lefts, rights, "best", noise);
    expect(limits.map(([limit]) => limit)).toEqual(
      squad.map(({ athlete }) => rows.find((row) => row.athlete === athlete.name)!.noise),
    );
  });
});

describe("what cannot be answered", () => {
  it("is #N/A with the reason", () => {
    expect(() => asymmetry([["DNS"]], [[150]])).toThrow(
      expect.objectContaining({ code: "#N/A", message: expect.stringContaining("At least 1") }),
    );
  });

  it("spoils only its own row where a function spills", () => {
    const limits = noiseLimit(
      [
        [150, 152],
        [151, 153],
        [149, 155],
        [null, null],
      ],
      [
        [150, 149],
        [152, 151],
        [153, 149],
        [150, 151],
      ],
    );
    expect(
      limits
        .slice(0, 3)
        .flat()
        .every((limit) => typeof limit === "number"),
    ).toBe(true);
    expect(limits[3]![0]).toMatchObject({ code: "#N/A" });
  });

  it("is #VALUE! where left and right have different heights", () => {
    expect(() =>
      noiseLimit(
        [[1, 2]],
        [
          [1, 2],
          [3, 4],
        ],
      ),
    ).toThrow(expect.objectContaining({ code: "#VALUE!" }));
  });
});
