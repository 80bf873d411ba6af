import fc from "fast-check";
import { acuteChronicRatio } from "../../../src/engine/load/acuteChronicRatio";
import { unwrap } from "../../../src/engine/result";
import { expected, expectRelative, fullColumn } from "../../reference/reference";
import { cell, notFinitePaths } from "../measurements";

const days = fullColumn("training_load", "load_au");
const reference = expected("training_load").acwr;

describe("the acute:chronic ratio", () => {
  // Source: R 4.2.2 on 42 days, every day from the 28th on.
  test.each([
    ["coupled", "acute7_mean", "chronic28_mean", "ACWR_coupled"],
    ["uncoupled", "acute7_mean", "chronic_uncoupled21_mean", "ACWR_uncoupled"],
    ["exponential", "EWMA7", "EWMA28", "ACWR_EWMA"],
  ] as const)("%s agrees with R", (form, acuteKey, chronicKey, ratioKey) => {
    for (let day = 27; day < 42; day++) {
      const { acute, chronic, ratio } = unwrap(acuteChronicRatio(days.slice(0, day + 1), { form }));
      expectRelative(acute, reference[acuteKey][day], 1e-10);
      expectRelative(chronic, reference[chronicKey][day], 1e-10);
      expectRelative(ratio, reference[ratioKey][day], 1e-10);
    }
  });

  test("always carries its criticism", () => {
    expect(unwrap(acuteChronicRatio(days, { form: "coupled" })).cautions).toEqual([
      {
        code: "ratioCriticised",
        message: expect.stringContaining("does not predict injury and has no safe zone"),
        facts: {},
      },
    ]);
  });

  test("fewer than 28 days, a missing day among them and negative loads are refused", () => {
    const form = "uncoupled";
    expect(acuteChronicRatio(days.slice(0, 27), { form })).toMatchObject({
      ok: false,
      reasons: [{ code: "tooFew", facts: { what: "reported days in a row", needed: 28, got: 27 } }],
    });
    const gap = days.map((load, index) => (index === 20 ? null : load));
    expect(acuteChronicRatio(gap, { form })).toMatchObject({ ok: false, reasons: [{ code: "tooFew" }] });
    const earlyGap = days.map((load, index) => (index === 3 ? null : load));
    expect(acuteChronicRatio(earlyGap, { form })).toEqual(acuteChronicRatio(days, { form }));
    expect(acuteChronicRatio([...days, -1], { form })).toMatchObject({
      ok: false,
      reasons: [{ code: "negative", facts: { what: "day total", value: -1 } }],
    });
  });

  test("after a break the ratio is refused instead of exploding", () => {
    const back = [...new Array(21).fill(0), ...new Array(7).fill(400)];
    const nearlyNothing = [...new Array(21).fill(99), ...new Array(7).fill(400)];
    const enough = [...new Array(21).fill(100), ...new Array(7).fill(400)];
    for (const form of ["coupled", "uncoupled", "exponential"] as const) {
      for (const [series, before, lastWeek] of [
        [back, 0, 400],
        [nearlyNothing, 99, 400],
        [new Array(28).fill(0), 0, 0],
      ] as const) {
        expect(acuteChronicRatio(series, { form })).toEqual({
          ok: false,
          reasons: [
            {
              code: "notEnoughChronicLoad",
              message:
                "The three weeks before the last one hold too little load to compare with, as after a break; read the loads themselves.",
              facts: { before, lastWeek },
            },
          ],
        });
      }
      expect(acuteChronicRatio(enough, { form }).ok).toBe(true);
    }
  });

  test("a steady load has a ratio of one; the unit does not matter; never NaN", () => {
    const form = fc.constantFrom("coupled" as const, "uncoupled" as const, "exponential" as const);
    fc.assert(
      fc.property(form, fc.integer({ min: 1, max: 900 }), (which, load) => {
        expectRelative(unwrap(acuteChronicRatio(new Array(35).fill(load), { form: which })).ratio, 1, 1e-12);
        const scaled = days.map((day) => day * load);
        const ratio = unwrap(acuteChronicRatio(days, { form: which })).ratio;
        expectRelative(unwrap(acuteChronicRatio(scaled, { form: which })).ratio, ratio, 1e-12);
      }),
    );
    fc.assert(
      fc.property(form, fc.array(cell(-1, 900), { minLength: 25, maxLength: 45 }), (which, series) => {
        expect(notFinitePaths(acuteChronicRatio(series, { form: which }))).toEqual([]);
      }),
    );
  });
});
