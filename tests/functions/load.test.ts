import { installCustomFunctionsErrors } from "./customFunctionsErrors";

installCustomFunctionsErrors();

import {
  actionCounts,
  acuteChronic,
  dailyLoads,
  loadAverage,
  loadMean,
  sessionLoad,
  weekLoads,
} from "../../src/functions/load";
import { expected, expectRelative, fullColumn } from "../reference/reference";
import { across, byLabel, down, expectError, failing } from "./cells";

const days = fullColumn("training_load", "load_au");
const reference = expected("training_load");

describe("SESSIONLOAD", () => {
  // Source: by hand, rating x minutes (Foster et al. 2001).
  it("is rating times minutes; a 0 is a value, a dash a session nobody rated", () => {
    expect(sessionLoad(down([6, 4.5, 0, "-", 11, "7?"]), down([70, 80, 30, null, 60, 60]))).toEqual([
      [420],
      [360],
      [0],
      [""],
      [failing("#N/A", /from 0 to 10; 11 is not/)],
      [failing("#VALUE!", /7\?/)],
    ]);
    expect(sessionLoad(across("-"), across(60))).toEqual([[failing("#N/A", /rating is missing/)]]);
  });
});

describe("DAILYLOADS", () => {
  // Source: by hand; 46023 is 1 January 2026 in the 1900 date system.
  const dates = down([46023, 46023, "2026-01-03", 46026, null]);
  const loads = down([300, 120, 0, "-", 0]);

  it("adds up the sessions of a day, with dates as serial numbers or plain text", () => {
    expect(dailyLoads(dates, loads, 46023, "2026-01-04")).toEqual([
      [46023, 420],
      [46024, ""],
      [46025, 0],
      [46026, ""],
    ]);
    expect(dailyLoads(dates, loads, 46023, 46024, "rest")).toEqual([
      [46023, 420],
      [46024, 0],
    ]);
  });

  it("refuses dates with two meanings, lists that do not match and a span that is none", () => {
    expectError(() => dailyLoads(down(["8/11/2026"]), down([300]), 46023, 46024), "#VALUE!", /could be two days/);
    expectError(() => dailyLoads(dates, down([300]), 46023, 46024), "#VALUE!", /5 cells with dates and 1 with loads/);
    expectError(() => dailyLoads(dates, loads, null, 46024), "#VALUE!", /first day is missing/);
    expectError(() => dailyLoads(dates, loads, 46024, 46023), "#N/A", /days of the diary/i);
    expectError(() => dailyLoads(down([46023]), down([-5]), 46023, 46024), "#N/A", /below zero/);
  });
});

describe("LOADEWMA", () => {
  // Source: R 4.2.2, the recursion from the first load on.
  it.each([7, 28])("with a span of %d agrees with R on every day", (span) => {
    loadAverage(down(days), span).forEach(([average], day) => {
      expectRelative(average, reference.acwr[`EWMA${span}`][day], 1e-10);
    });
  });

  // Source: by hand: (2 + 4 + 6) / 3 = 4, then 0.5 x 8 + 0.5 x 4 = 6.
  it("may start with the mean of its span, and stands in the shape of the loads", () => {
    expect(loadAverage(across(2, 4, 6, 8), 3, "mean of span")).toEqual([["", "", 4, 6]]);
    expect(loadAverage(down([2, "-", 4]), 3)).toEqual([[2], [""], [3]]);
  });

  it("refuses a span that is none, text and negative loads", () => {
    expectError(() => loadAverage(down(days), 0), "#VALUE!", /span must be 1, 2, 3 or more; 0 is not/);
    expectError(() => loadAverage(down(days), null), "#VALUE!", /span is missing/);
    expectError(() => loadAverage(down([300, "rest"]), 7), "#VALUE!", /rest/);
    expectError(() => loadAverage(down([300, -1]), 7), "#N/A", /below zero/);
  });
});

describe("LOADMEAN", () => {
  // Source: R 4.2.2 mean over each window.
  it("over 7 days agrees with R on every day", () => {
    loadMean(down(days), 7).forEach(([mean], day) => {
      const wanted = reference.acwr.acute7_mean[day];
      if (wanted === null) expect(mean).toBe("");
      else expectRelative(mean, wanted, 1e-10);
    });
  });

  it("allows missing days when told how many must be there", () => {
    expect(loadMean(across(1, "-", 3, 5), 2)).toEqual([["", "", "", 4]]);
    expect(loadMean(across(1, "-", 3, 5), 2, 1)).toEqual([["", 1, 3, 4]]);
    expectError(() => loadMean(across(1, 2), 2.5), "#VALUE!", /number of days must be 1, 2, 3/);
  });
});

describe("WEEKLOADS", () => {
  const [head, ...weeks] = weekLoads(down(days));

  // Source: R 4.2.2 sum, mean, sd; the divisor n by sqrt(6 / 7).
  it("agrees with R for every week, by either divisor", () => {
    expect(head).toHaveLength(7);
    expect(weeks).toHaveLength(6);
    weekLoads(down(days), "n").forEach((line, index) => {
      if (index > 0) expectRelative(line[5], reference.weeks[index - 1].monotony_population, 1e-11);
    });
    weeks.forEach(([number, total, reported, mean, deviation, monotony, strain], index) => {
      const wanted = reference.weeks[index];
      expect([number, total, reported]).toEqual([index + 1, wanted.total, 7]);
      expectRelative(mean, wanted.mean, 1e-11);
      expectRelative(deviation, wanted.sd_n_minus_1, 1e-11);
      expectRelative(monotony, wanted.monotony_n_minus_1, 1e-11);
      expectRelative(strain, wanted.strain_n_minus_1, 1e-11);
    });
  });

  it("reads seven days to a row just as well", () => {
    const rows = [days.slice(0, 7), days.slice(7, 14)];
    expect(weekLoads(rows)).toEqual([head, ...weeks.slice(0, 2)]);
  });

  it("leaves a week with a missing day without monotony, and tells of a begun one", () => {
    const [, first, second] = weekLoads(down([100, 0, "-", 100, 0, 100, 0, 300, 200]));
    expect(first).toEqual([1, 300, 6, "", "", "", ""]);
    expect(second!.slice(1)).toEqual(new Array(6).fill(failing("#N/A", /A week has seven days; 2 were given/)));
    expectError(() => weekLoads(down(days), "n + 1"), "#VALUE!", /Use n - 1 or n/);
  });
});

describe("ACUTECHRONIC", () => {
  // Source: R 4.2.2 on 42 days.
  it.each([
    [undefined, "ACWR_uncoupled"],
    ["coupled", "ACWR_coupled"],
    ["exponential", "ACWR_EWMA"],
  ])("%s agrees with R", (form, key) => {
    for (const day of [27, 35, 41]) {
      expectRelative(acuteChronic(down(days.slice(0, day + 1)), form), reference.acwr[key][day], 1e-10);
    }
  });

  it("needs 28 reported days in a row", () => {
    expectError(() => acuteChronic(down(days.slice(0, 27))), "#N/A", /28 reported days/);
    expectError(() => acuteChronic(down([...days.slice(0, 30), "-"])), "#N/A", /28 reported days/);
    expectError(() => acuteChronic(down(days), "rolling"), "#VALUE!", /Use uncoupled, coupled or exponential/);
  });
});

describe("ACTIONCOUNTS", () => {
  // Source: by hand.
  it("sums counts; a 0 is a count, a dash a day nobody counted", () => {
    expect(byLabel(actionCounts(down([40, 0, 55, 60, 0, 70, 20])))).toEqual({
      Total: [245],
      "Days reported": [7],
      "Largest day": [70],
      "Largest four days in a row": [185],
    });
    const gap = byLabel(actionCounts(across(40, "-", 60)));
    expect(gap["Largest four days in a row"]).toEqual([""]);
    expect(gap.Caution![0]).toMatch(/1 of 3 days/);
  });

  it("refuses counts that are not whole, and none at all", () => {
    expectError(() => actionCounts(across(40.5)), "#N/A", /whole numbers; 40.5 is none/);
    expectError(() => actionCounts(across(null)), "#N/A", /At least 1 reported days/);
    expectError(() => actionCounts(across("40 throws")), "#VALUE!", /40 throws/);
  });
});
