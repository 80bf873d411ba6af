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
    // Recognised by shape: the error class lives in the program's own script, perhaps in another frame.
    if (error instanceof Error && "code" in error && typeof error.code === "string" && "debugInfo" in error) {
      throw new HostRefusal(error.code, error.message);
    }
    throw error;
  }
}
