import { ApiError } from "../../src/host/api/errors";
import { RequestContext } from "../../src/host/api/proxies/requestContext";

export type Failure = {
  /** The member whose call failed; null where the action was over before the failure was due. */
  readonly member: string | null;
  readonly error: unknown;
};

/**
 * Runs an action in which the n-th call that reaches the workbook fails once, after those before it in its batch have
 * been carried out, as in the real program. "after" lets the call happen and then loses the answer.
 */
export async function failAt(n: number, when: "instead" | "after", action: () => Promise<unknown>): Promise<Failure> {
  const { enqueue } = RequestContext.prototype;
  let calls = 0;
  let member: string | null = null;
  const spy = jest.spyOn(RequestContext.prototype, "enqueue").mockImplementation(function (
    this: RequestContext,
    location,
    run,
    options,
  ) {
    enqueue.call(
      this,
      location,
      async () => {
        calls += 1;
        const isDue = calls === n;
        if (isDue) member = location;
        if (!isDue || when === "after") await run();
        if (isDue) throw new ApiError("GeneralException", "The test made this call fail.");
      },
      options,
    );
  });
  try {
    await action();
    return { member, error: null };
  } catch (error) {
    return { member, error };
  } finally {
    spy.mockRestore();
  }
}
