import { installCustomFunctionsErrors } from "./customFunctionsErrors";

installCustomFunctionsErrors();

import {
  dynamicStrength,
  eccentricUtilisation,
  jumpHeight,
  jumpHeightFromVelocity,
  jumpPower,
  modifiedReactiveStrength,
  reactiveStrength,
  reactiveStrengthFromFlight,
} from "../../src/functions/jumps";
import { expectRelative } from "../reference/reference";
import { across, down, expectError, failing } from "./cells";

describe("jump heights", () => {
  // Source: R 4.2.2 arithmetic, 9.81 x 0.55^2 / 8 = 0.370940625 m and 2.7^2 / (2 x 9.81) = 0.371559633 m.
  it("come in centimetres, from flight time and from take-off velocity", () => {
    expectRelative(jumpHeight(across(0.55))[0]![0], 37.0940625, 1e-12);
    expectRelative(jumpHeightFromVelocity(across(2.7))[0]![0], 37.1559633, 1e-8);
  });

  it("are told for each row: gaps, zeros, marks, milliseconds and text", () => {
    expect(jumpHeight(down([null, 0, "DNS", 520, "0,52"]))).toEqual([
      [""],
      [""],
      [""],
      [failing("#N/A", /from 0 to 2; 520 is not/)],
      [failing("#VALUE!", /0,52/)],
    ]);
    expect(jumpHeightFromVelocity(down([-2.7, ""]))).toEqual([[failing("#N/A", /above zero/)], [""]]);
  });
});

describe("JUMPPOWER", () => {
  // Source: R 4.2.2 arithmetic on the published equations, 40 cm, 75 kg, 178 cm.
  it.each([
    [undefined, 3770.5],
    ["sayersCountermovementJump", 3736.5],
    ["harman peak", 3354],
    ["harmanAverage", 1180],
    ["johnsonBahamondePeak", 3635.1],
  ])("by %s agrees with R", (equation, watts) => {
    expectRelative(jumpPower(across(40), across(75), equation, across(178))[0]![0], watts, 1e-12);
  });

  it("asks for body heights only where the equation has them", () => {
    expect(jumpPower(across(40), across(75), "harmanPeak", across(null))).toEqual([[3354]]);
    expectError(() => jumpPower(across(40), across(75), "johnsonBahamondePeak"), "#VALUE!", /body heights in cm/);
    expect(jumpPower(across(40), across(75), "johnsonBahamondePeak", across(null))).toEqual([
      [failing("#N/A", /body height is missing/)],
    ]);
  });

  it("answers each row for itself", () => {
    expect(jumpPower(down([40, null, 36, 5]), down([75, null, "inj", 30]))).toEqual([
      [3770.5],
      [""],
      [failing("#N/A", /body mass is missing/)],
      [failing("#N/A", /Estimated power must be above zero/)],
    ]);
    expectError(() => jumpPower(across(40), across(75), "sayers"), "#VALUE!", /no power equation. Use/);
  });
});

describe("reactive strength", () => {
  // Source: R 4.2.2 arithmetic: 0.5 s of flight are 0.3065625 m; with 0.2 s of contact 1.5328125 m/s and 2.5.
  it("takes heights in centimetres; its two forms differ", () => {
    expectRelative(reactiveStrength(across(30.65625), across(0.2))[0]![0], 1.5328125, 1e-12);
    expectRelative(reactiveStrengthFromFlight(across(0.5), across(0.2))[0]![0], 2.5, 1e-12);
  });

  // Source: by hand, 0.36 m / 0.8 s.
  it("modified, uses the time to take-off", () => {
    expectRelative(modifiedReactiveStrength(across(36), across(0.8))[0]![0], 0.45, 1e-12);
  });

  it.each([
    ["RSI", reactiveStrength],
    ["RSI.FLIGHT", reactiveStrengthFromFlight],
    ["RSI.MODIFIED", modifiedReactiveStrength],
  ])("%s answers each row for itself", (_, index) => {
    const answers = index(down([0.5, 0, 0.5, 0.5]), down([0.25, 0, null, "0.2 s"]));
    expect(answers[0]![0]).toBeGreaterThan(0);
    expect(answers.slice(1)).toEqual([[""], [failing("#N/A", /is missing/)], [failing("#VALUE!", /0\.2 s/)]]);
  });
});

describe("DYNAMICSTRENGTH and ECCENTRICUTILISATION", () => {
  // Source: by hand, 1800 / 2400 and 36 / 32.
  it("are ratios", () => {
    expect(dynamicStrength(across(1800), across(2400))).toEqual([[0.75]]);
    expect(eccentricUtilisation(across(36), across(32))).toEqual([[1.125]]);
  });

  it.each([
    ["DYNAMICSTRENGTH", dynamicStrength],
    ["ECCENTRICUTILISATION", eccentricUtilisation],
  ])("%s answers each row for itself", (_, ratio) => {
    expect(ratio(down([30, 0, 30, -30]), down([30, "", "ill", 30]))).toEqual([
      [1],
      [""],
      [failing("#N/A", /is missing/)],
      [failing("#N/A", /above zero/)],
    ]);
  });
});
