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
});
