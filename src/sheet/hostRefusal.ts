/** The spreadsheet program said no: its code (such as "InvalidOperation") and its own words. */
export class HostRefusal extends Error {
  override readonly name = "HostRefusal";
  constructor(
    readonly code: string,
    message: string,
  ) {
    super(message);
  }
}

/** Runs something that talks to the spreadsheet program; its errors leave as `HostRefusal`, ours as they are. */
export async function trapHost<T>(action: () => Promise<T>): Promise<T> {
  try {
    return await action();
  } catch (error) {
    if (isOfHost(error)) throw new HostRefusal(error.code, error.message);
    throw error;
  }
}

/** Recognised by shape alone: the program's errors may come out of another frame, where even `Error` is another. */
const isOfHost = (error: unknown): error is { readonly code: string; readonly message: string } =>
  typeof error === "object" &&
  error !== null &&
  "code" in error &&
  typeof error.code === "string" &&
  "message" in error &&
  typeof error.message === "string" &&
  "debugInfo" in error;
