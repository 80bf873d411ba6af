import { Forbidden } from "../../engine/protection";
import { ShiftConflict } from "../../engine/shift";
import { ApiError } from "../errors";

/** What the host around a context does when a batch needs it. */
export type Surroundings = {
  /** Waits until all formulas have their values. */
  settle(): Promise<void>;
  /** Batches reach the workbook one after the other, in the order of their syncs: whose turn it is. */
  readonly turns: Turns;
  /** Calls back when a custom function answers with a promise; answers how to stop. */
  whenFunctionsWait(listener: () => void): () => void;
  /** Runs a call of the API, so that the events it causes are told as the add-in's. */
  acting(run: () => void | Promise<void>): void | Promise<void>;
  /** Whether calculation waits for the end of the batch. */
  calculationSuspended: boolean;
  /** Reports one round trip. Nothing in the queue is none. */
  synced(): void;
  /** Largest request and response in bytes; Excel on the web has 5 MB each. */
  readonly payloadLimit: number;
  /** Whether the member is within the requirement sets this host says it has. */
  offers(className: string, member: string): boolean;
};

type Action = {
  /** "Range.values": where an error in it is said to be. */
  readonly location: string;
  /** Reads see the results of all formulas that the writes before them changed. */
  readonly reads: boolean;
  readonly run: () => void | Promise<void>;
};

/** The queue of a batch: nothing reaches the workbook before `sync`, and then in the order it was called. */
export class RequestContext {
  readonly surroundings: Surroundings;
  /** The API's root object; set by the host. */
  workbook!: Excel.Workbook;
  runtime!: Excel.Runtime;
  application!: Excel.Application;
  readonly debugInfo = { pendingStatements: [] as string[] };
  readonly extendedErrorLogging = false;
  readonly requestHeaders: Record<string, string> = {};
  readonly trackedObjects = { add(_object: unknown) {}, remove(_object: unknown) {} };
  #actions: Action[] = [];
  #requestBytes = 0;
  #responseBytes = 0;

  constructor(surroundings: Surroundings) {
    this.surroundings = surroundings;
  }

  enqueue(location: string, run: () => void | Promise<void>, { reads = false, bytes = 0 } = {}): void {
    this.#actions.push({ location, run, reads });
    this.#requestBytes += bytes;
  }

  /** Counts what a read brings back against the limit of a response. */
  countResponse(bytes: number): void {
    this.#responseBytes += bytes;
    if (this.#responseBytes > this.surroundings.payloadLimit) throw new ApiError("ResponsePayloadSizeLimitExceeded");
  }

  /** Hands a proxy's state to a plain load call: `context.load(object, "name")`. */
  load(object: { load(option?: unknown): unknown }, option?: unknown): void {
    object.load(option);
  }

  async sync<T>(passThrough?: T): Promise<T> {
    const actions = this.#actions;
    const requestBytes = this.#requestBytes;
    this.#actions = [];
    this.#requestBytes = 0;
    this.#responseBytes = 0;
    if (actions.length === 0) {
      await this.surroundings.settle();
      return passThrough as T;
    }
    const { turns } = this.surroundings;
    let failing = 0;
    await turns.begin();
    try {
      if (requestBytes > this.surroundings.payloadLimit) throw new ApiError("RequestPayloadSizeLimitExceeded");
      for (const [index, action] of actions.entries()) {
        failing = index;
        if (action.reads && !this.surroundings.calculationSuspended) await this.#settleInTurn();
        await this.surroundings.acting(action.run);
      }
    } catch (error) {
      const statements = actions.map((action) => `${action.location};`);
      throw asApiError(error).at(actions[failing]?.location ?? "", statements, failing);
    } finally {
      this.surroundings.calculationSuspended = false;
      turns.end();
      await this.surroundings.settle();
      this.surroundings.synced();
    }
    return passThrough as T;
  }

  /** Holds its turn while formulas are counted, unless a custom function waits: it may itself read the workbook. */
  async #settleInTurn(): Promise<void> {
    const { turns, whenFunctionsWait, settle } = this.surroundings;
    let isOut = false;
    const stop = whenFunctionsWait(() => {
      if (!isOut) turns.end();
      isOut = true;
    });
    try {
      await settle();
    } finally {
      stop();
      if (isOut) await turns.begin();
    }
  }
}

/** Lets one batch at a time to the workbook. */
export class Turns {
  #last: Promise<void> = Promise.resolve();
  #finish: () => void = () => {};

  /** Resolves when all that began before have ended. */
  async begin(): Promise<void> {
    const before = this.#last;
    let finish = () => {};
    this.#last = new Promise((resolve) => {
      finish = resolve;
    });
    await before;
    this.#finish = finish;
  }

  end(): void {
    this.#finish();
  }
}

/** What goes wrong inside the host reaches the add-in as Excel's own faults do; the cause stays readable. */
function asApiError(error: unknown): ApiError {
  if (error instanceof ApiError) return error;
  if (error instanceof Forbidden) return new ApiError("AccessDenied", error.message);
  if (error instanceof ShiftConflict) {
    return new ApiError(error.reason === "table" ? "InsertDeleteConflict" : "NonBlankCellOffSheet");
  }
  const detail = error instanceof Error ? error.message : String(error);
  return Object.assign(new ApiError("GeneralException", detail), { cause: error });
}
