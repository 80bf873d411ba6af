/** What was asked cannot be done: says which cell, sheet or word is in the way and what to do, in a coach's words. */
export class BatchRefusal extends Error {
  override readonly name = "BatchRefusal";
  constructor(
    message: string,
    /** Lines below the message: cells with their reasons, or what there is to choose from. */
    readonly details: readonly string[] = [],
  ) {
    super(message);
  }
}

/** The words on the command line cannot be followed; nothing was begun. */
export class OrderRefusal extends BatchRefusal {}
