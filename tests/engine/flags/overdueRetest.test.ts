import { overdueRetest } from "../../../src/engine/flags/overdueRetest";

// Source: by hand.
describe("an overdue retest", () => {
  test.each([
    [45000, 45042, 42, null],
    [45000, 45043, 42, "overdueRetest"],
    [null, 45043, 42, "neverTested"],
    [45050, 45043, 42, "resultInFuture"],
    [45043, 45043, 42, null],
  ])("last on %p, today %d, every %d days: %p", (last, today, every, code) => {
    expect(overdueRetest(last, today, every)?.code ?? null).toBe(code);
  });

  test("is told with its age, a test never done and a date ahead with what is known", () => {
    expect(overdueRetest(45000, 45043, 42)).toEqual({
      code: "overdueRetest",
      reason: "The last result is 43 days old; a retest every 42 days was planned.",
      facts: { lastDay: 45000, today: 45043, age: 43, everyDays: 42 },
    });
    expect(overdueRetest(null, 45043, 42)).toEqual({
      code: "neverTested",
      reason: "There is no result of this test yet.",
      facts: { everyDays: 42 },
    });
    expect(overdueRetest(45050, 45043, 42)).toEqual({
      code: "resultInFuture",
      reason: "The last result is dated 7 days ahead of today.",
      facts: { lastDay: 45050, today: 45043 },
    });
  });
});
