import { installCustomFunctionsErrors } from "./customFunctionsErrors";

installCustomFunctionsErrors();

import {
  beyondNoise,
  changeLimits,
  changeVerdict,
  expectedRetest,
  groupChange,
  twoGroups,
} from "../../src/functions/change";
import { column, expected, expectRelative, labels } from "../reference/reference";
import { across, byLabel, down, expectError, failing } from "./cells";

const day0 = down(column("sleepstudy_day0_2", "day0"));
const day2 = down(column("sleepstudy_day0_2", "day2"));
const athletes = labels("sleepstudy_day0_2", "id");
const { individual, change, effect } = expected("sleepstudy_day0_2").change_day0_day2;

describe("CHANGELIMITS", () => {
  // Source: R 4.2.2, change -/+ 1.96 sqrt(2) TE of each athlete.
  it("agrees with R down the squad", () => {
    changeLimits(day0, day2, individual.TE).forEach(([value, low, high], row) => {
      const athlete = athletes[row]!;
      expect(Math.abs(value - individual.change[athlete])).toBeLessThan(1e-8);
      expect(Math.abs(low - individual.ci95_low[athlete])).toBeLessThan(1e-7);
      expect(Math.abs(high - individual.ci95_high[athlete])).toBeLessThan(1e-7);
    });
  });

  // Source: R 4.2.2 qt(.975, 9) x sqrt(2) x 1.5 = 4.79876001.
  it("widens with few degrees of freedom, and narrows with less confidence", () => {
    const [[value, low]] = changeLimits(across(50), across(54), 1.5, null, 9) as [number[]];
    expectRelative(value! - low!, 4.79876001, 1e-8);
    expect(changeLimits(across(50), across(54), 1.5, 0.8)[0]![1]).toBeGreaterThan(
      changeLimits(across(50), across(54), 1.5)[0]![1],
    );
  });

  it("answers each row for itself; a 0 is a result only when told so", () => {
    const [good, empty, gap, text, zero] = changeLimits(
      down([50, null, 50, "50 kg", 0]),
      down([54, "", "DNS", 54, 3]),
      1.5,
    );
    expect(good![0]).toBe(4);
    expect(empty).toEqual(["", "", ""]);
    expect(gap).toEqual(new Array(3).fill(failing("#N/A", /later score is missing/)));
    expect(text).toEqual(new Array(3).fill(failing("#VALUE!", /50 kg/)));
    expect(zero).toEqual(new Array(3).fill(failing("#N/A", /earlier score is missing/)));
    expect(changeLimits(across(0), across(3), 1.5, null, null, "value")[0]![0]).toBe(3);
  });

  it("needs a typical error", () => {
    expectError(() => changeLimits(day0, day2, null), "#VALUE!", /typical error is missing/);
    expectError(() => changeLimits(day0, day2, 0), "#VALUE!", /typical error must be above zero/);
    expectError(() => changeLimits(day0, day2, 1.5, 1), "#VALUE!", /1 is not/);
    expectError(() => changeLimits(day0, day2.slice(1), 1.5), "#VALUE!", /do not match/);
  });
});

describe("CHANGEVERDICT", () => {
  // Source: the definitions by hand, margin 1.96 sqrt(2) 1.5 = 4.1578: 4 is within; 5 - 4.16 is below 1; 6 - 4.16 is above it.
  it("puts each change into words, by the direction that is better", () => {
    expect(changeVerdict(across(50), down([54, 55, 56, 45, 44]), 1.5, 1)).toEqual([
      ["change within measurement noise"],
      ["improvement likely beyond measurement noise"],
      ["clear improvement"],
      ["decline likely beyond measurement noise"],
      ["clear decline"],
    ]);
    expect(changeVerdict(across(50), across(44), 1.5, 1, "lower")).toEqual([["clear improvement"]]);
    expect(changeVerdict(across(50), across(50.5), 1.5, 1)).toEqual([["unclear - too noisy to say"]]);
  });

  it("answers each row for itself", () => {
    expect(changeVerdict(down([null, 50, 50]), down([null, null, "x5"]), 1.5, 1)).toEqual([
      [""],
      [failing("#N/A", /later result is missing/)],
      [failing("#VALUE!", /x5/)],
    ]);
    expectError(() => changeVerdict(across(50), across(54), 1.5, null), "#VALUE!", /worthwhile change is missing/);
    expectError(() => changeVerdict(across(50), across(54), 1.5, 1, "up"), "#VALUE!", /Use higher or lower/);
  });
});

describe("BEYONDNOISE", () => {
  // Source: R 4.2.2 counts; false alarms 18 x 0.05 / 2 and 1 - 0.95^18.
  it("agrees with R, lower being better", () => {
    const lines = byLabel(beyondNoise([...day0, [300]], [...day2, [null]], individual.MDC95, "lower"));
    expect(lines).toMatchObject({
      Athletes: [18],
      "Improved beyond noise": [individual.improved_beyond_MDC],
      "Declined beyond noise": [individual.worse_beyond_MDC],
      "Within noise": [individual.within_MDC],
    });
    expectRelative(lines["False alarms expected each way"]![0], 0.45, 1e-12);
    expectRelative(lines["Chance of any false alarm"]![0], 1 - 0.95 ** 18, 1e-12);
    const turned = byLabel(beyondNoise(day0, day2, individual.MDC95));
    expect(turned["Improved beyond noise"]).toEqual([individual.worse_beyond_MDC]);
  });

  it("says why it cannot answer", () => {
    expectError(() => beyondNoise(across(null), across(3), 1), "#N/A", /At least 1 athletes/);
    expectError(() => beyondNoise(day0, day2, null), "#VALUE!", /minimal detectable change is missing/);
    expectError(() => beyondNoise(day0, day2.slice(2), 1), "#VALUE!", /18 cells with earlier results and 16/);
  });
});

describe("GROUPCHANGE", () => {
  // Source: R 4.2.2 t.test(paired = TRUE), uniroot over pt(ncp); metafor 3.8-1 for g_pre.
  it("agrees with R", () => {
    const lines = byLabel(groupChange([...day0, [null]], [...day2, [280]]));
    expect(lines.Athletes![0]).toBe(18);
    expectRelative(lines["Mean change"]![0], change.mean, 1e-9);
    expectRelative(lines["Mean change"]![1], change.ci_low, 1e-8);
    expectRelative(lines["Mean change"]![2], change.ci_high, 1e-8);
    expectRelative(lines["Standard deviation of the changes"]![0], change.sd, 1e-9);
    expectRelative(lines.t![0], change.t, 1e-9);
    expectRelative(lines["p (two-sided)"]![0], change.p, 1e-8);
    expectRelative(lines["Hedges g, average spread"]![0], effect.g_av, 1e-8);
    expectRelative(lines["Hedges g, average spread"]![1], effect.g_av_ci_noncentral[0], 1e-6);
    expectRelative(lines["Hedges g, earlier spread"]![0], effect.g_pre, 1e-8);
  });

  it("says why it cannot answer", () => {
    expectError(() => groupChange(down([1, 2, 3, 4]), down([2, 3, 5, 6])), "#N/A", /At least 5 athletes/);
    expectError(() => groupChange(down([1, 2, 3, 4, "5s"]), down([2, 3, 5, 6, 7])), "#VALUE!", /5s/);
    expectError(() => groupChange(day0, day2, 95), "#VALUE!", /95 is not/);
  });
});

describe("TWOGROUPS", () => {
  // Source: R 4.2.2 t.test and uniroot over pt(ncp), heights of singers.
  it("agrees with R, groups of different size", () => {
    const reference = expected("singer_alto1_vs_soprano1");
    const lines = byLabel(
      twoGroups(
        [...down(column("singer_alto1", "height_in")), [null], ["-"]],
        down(column("singer_soprano1", "height_in")),
      ),
    );
    expect(lines).toMatchObject({
      "Athletes in the first group": [35, "", ""],
      "Athletes in the second group": [36, "", ""],
    });
    expectRelative(lines.Difference![0], reference.diff, 1e-9);
    expectRelative(lines.Difference![1], reference.welch.ci[0], 1e-8);
    expectRelative(lines["t (Welch)"]![0], reference.welch.t, 1e-9);
    expectRelative(lines["p (two-sided)"]![0], reference.welch.p, 1e-8);
    expectRelative(lines["Hedges g"]![0], reference.hedges_g, 1e-8);
    expectRelative(lines["Hedges g"]![2], reference.hedges_g_ci_noncentral_t[1], 1e-6);
  });

  it("says why it cannot answer", () => {
    expectError(() => twoGroups(across(1, 2, 0), across(1, 2, 3)), "#N/A", /3 scores in the first group are needed/);
    expect(byLabel(twoGroups(across(1, 2, 0), across(1, 2, 3), null, "value"))["Athletes in the first group"]![0]).toBe(
      3,
    );
    expectError(() => twoGroups(across(1, 2, "3 m"), across(1, 2, 3)), "#VALUE!", /3 m/);
  });
});

describe("EXPECTEDRETEST", () => {
  // Source: the formula by hand; correlation .8, mean 50, score 60.
  it("comes back towards the squad's mean, given or taken from the scores", () => {
    expect(expectedRetest(across(60), 0.8, 50)[0]![0]).toBeCloseTo(58, 12);
    expect(expectedRetest(down([60, null, 40]), 0.8)).toEqual([[58], [""], [42]]);
  });

  it("says why it cannot answer", () => {
    expect(expectedRetest(across(60), 1.2, 50)).toEqual([[failing("#N/A", /from 0 to 1; 1.2 is not/)]]);
    expectError(() => expectedRetest(across(60), null), "#VALUE!", /correlation is missing/);
    expectError(() => expectedRetest(across(null), 0.8), "#N/A", /At least 1 scores/);
    expectError(() => expectedRetest(down([60, "x9"]), 0.8), "#VALUE!", /x9/);
  });
});
