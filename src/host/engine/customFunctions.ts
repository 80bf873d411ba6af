import type { Nullable } from "@univerjs/core";
import {
  ArrayValueObject,
  AsyncObject,
  BaseFunction,
  type BaseReferenceObject,
  type BaseValueObject,
  BooleanValueObject,
  type ErrorType,
  ErrorValueObject,
  type FunctionVariantType,
  IFunctionService,
  NullValueObject,
  NumberValueObject,
  StringValueObject,
} from "@univerjs/engine-formula";
import type { Book } from "./book";
import { addressOf } from "./references";

/** The generated description of a custom function (functions.json), as far as the host reads it. */
export type FunctionMetadata = {
  readonly id: string;
  readonly name: string;
  readonly description?: string;
  readonly parameters: readonly {
    readonly name: string;
    readonly description?: string;
    readonly type?: string;
    readonly dimensionality?: string;
    readonly optional?: boolean;
    readonly repeating?: boolean;
  }[];
  readonly options?: {
    readonly requiresAddress?: boolean;
    readonly requiresParameterAddresses?: boolean;
    readonly stream?: boolean;
    readonly cancelable?: boolean;
    readonly volatile?: boolean;
  };
};

export type FunctionsMetadata = {
  readonly functions: readonly FunctionMetadata[];
  readonly allowErrorForDataTypeAny?: boolean;
};

/** An error a function gives on purpose: its value in the cell, and words that explain it. */
export class FunctionError extends Error {
  readonly code: string;
  constructor(code: string, message?: string) {
    super(message ?? "");
    this.name = "CustomFunctions.Error";
    this.code = code;
  }
}

// biome-ignore lint/suspicious/noExplicitAny: custom functions take what their metadata says.
export type AssociatedFunction = (...given: any[]) => unknown;

type Shared = {
  readonly book: Book;
  readonly implementations: ReadonlyMap<string, AssociatedFunction>;
  /** Words of the errors that are shown now: of each cell with a formula, those of the cells it fills. */
  readonly messages: Map<string, ReadonlyMap<string, string>>;
  readonly streams: Streams;
  /** Told when a function answers with a promise. */
  readonly waiting: (promise: Promise<unknown>) => void;
};

const keyOf = (sheetId: string, row: number, column: number): string => `${sheetId} ${row} ${column}`;

/** Errors of a cell as an argument. ASSUMPTION: they arrive as the error values of the data types API. */
const errorArgument = (value: string) => ({
  type: "Error",
  errorType:
    {
      "#DIV/0!": "Div0",
      "#N/A": "NotAvailable",
      "#NAME?": "Name",
      "#NULL!": "Null",
      "#NUM!": "Num",
      "#REF!": "Ref",
      "#SPILL!": "Spill",
      "#CALC!": "Calc",
      "#BUSY!": "Busy",
    }[value] ?? "Value",
  basicType: "Error",
  basicValue: value,
});

class Unfit extends Error {}

/** One cell's value for a parameter of a type. Text that is no number does not fit a number: #VALUE!, uncalled. */
function converted(value: Nullable<BaseValueObject>, type: string | undefined): unknown {
  const isBlank = !value || value.isNull();
  if (!isBlank && value.isError()) return errorArgument((value as ErrorValueObject).getErrorType());
  const content = isBlank ? null : (value.getValue() as string | number | boolean);
  switch (type) {
    case "number": {
      if (content === null || content === "") return content === null ? 0 : unfit();
      const number = typeof content === "boolean" ? Number(content) : Number(String(content).trim() || Number.NaN);
      return Number.isNaN(number) ? unfit() : number;
    }
    case "string":
      return content === null ? "" : typeof content === "boolean" ? String(content).toUpperCase() : String(content);
    case "boolean":
      if (typeof content === "string") return /^(true|false)$/i.test(content) ? /^true$/i.test(content) : unfit();
      return Boolean(content);
    default:
      // ASSUMPTION: an empty cell arrives as null where the type is any. Reports differ: 0 on some platforms.
      return content;
  }
}

const unfit = (): never => {
  throw new Unfit();
};

const firstError = (value: BaseValueObject): ErrorValueObject | null => {
  if (value.isError()) return value as ErrorValueObject;
  if (!value.isArray()) return null;
  for (const row of (value as ArrayValueObject).getArrayValue()) {
    for (const cell of row) if (cell?.isError()) return cell as ErrorValueObject;
  }
  return null;
};

const errorOf = (code: string): ErrorValueObject => ErrorValueObject.create(code as ErrorType);

/** One value of a result as the engine keeps it. */
function boxed(value: unknown): BaseValueObject {
  // ASSUMPTION: null and undefined show as 0, in a spilled array (as reported) and alone alike.
  if (value === null || value === undefined) return NumberValueObject.create(0);
  if (value instanceof FunctionError) return errorOf(value.code);
  if (typeof value === "number") return Number.isFinite(value) ? NumberValueObject.create(value) : errorOf("#NUM!");
  if (typeof value === "boolean") return BooleanValueObject.create(value);
  // Of a data type its basic value is shown.
  if (typeof value === "object" && "basicValue" in value) {
    const { type, basicValue } = value as { type?: unknown; basicValue: unknown };
    return type === "Error" ? errorOf(String(basicValue)) : boxed(basicValue);
  }
  if (typeof value === "object" && "code" in value) return errorOf(String(value.code));
  return StringValueObject.create(String(value));
}

function result(value: unknown): BaseValueObject {
  if (!Array.isArray(value)) return boxed(value);
  const columnCount = Array.isArray(value[0]) ? value[0].length : 0;
  const isGrid = columnCount > 0 && value.every((row) => Array.isArray(row) && row.length === columnCount);
  if (!isGrid) return errorOf("#VALUE!");
  if (value.length === 1 && columnCount === 1) return boxed((value as unknown[][])[0]![0]);
  return ArrayValueObject.create({
    calculateValueList: (value as unknown[][]).map((row) => row.map(boxed)),
    rowCount: value.length,
    columnCount,
    unitId: "",
    sheetId: "",
    row: -1,
    column: -1,
  });
}

/** The words of the errors in a result, by the cells they stand in when it spills from its formula. */
function messagesIn(value: unknown, { sheetId, row, column }: CellPlace): Map<string, string> {
  const grid: unknown[][] = Array.isArray(value) ? value.map((line) => (Array.isArray(line) ? line : [])) : [[value]];
  const told = grid.flatMap((line, r) =>
    line.flatMap((cell, c) =>
      cell instanceof FunctionError && cell.message
        ? [[keyOf(sheetId, row + r, column + c), cell.message] as const]
        : [],
    ),
  );
  return new Map(told);
}

/** A custom function in the engine. The engine's own way of registering one hands blanks over as 0. */
class HostFunction extends BaseFunction {
  readonly #shared: Shared;
  readonly #metadata: FunctionMetadata;
  readonly #takesErrors: boolean;

  constructor(name: string, metadata: FunctionMetadata, takesErrors: boolean, shared: Shared) {
    super(name);
    this.#shared = shared;
    this.#metadata = metadata;
    this.#takesErrors = takesErrors;
    const { parameters, options } = metadata;
    this.minParams = parameters.filter(({ optional, repeating }) => !optional && !repeating).length;
    this.maxParams = parameters.some(({ repeating }) => repeating) ? 255 : parameters.length;
    this.needsReferenceObject = options?.requiresParameterAddresses === true;
  }

  /** Any function may answer with a promise, so that the engine waits for all. */
  override isAsync(): boolean {
    return true;
  }

  override calculate(...given: FunctionVariantType[]): FunctionVariantType {
    const place = { sheetId: this.subUnitId ?? "", row: this.row, column: this.column };
    const key = keyOf(place.sheetId, place.row, place.column);
    const { messages, implementations, streams } = this.#shared;
    messages.delete(key);
    const fail = (thrown: unknown): BaseValueObject => {
      // Whatever a function throws stays in its own cell.
      const isOnPurpose = thrown instanceof FunctionError;
      const message = thrown instanceof Unfit ? "" : thrown instanceof Error ? thrown.message : String(thrown);
      if (message) messages.set(key, new Map([[key, message]]));
      return errorOf(isOnPurpose ? thrown.code : "#VALUE!");
    };
    const answer = (value: unknown): BaseValueObject => {
      const told = messagesIn(value, place);
      if (told.size > 0) messages.set(key, told);
      return result(value);
    };
    try {
      const implementation = implementations.get(this.#metadata.id.toUpperCase());
      // A function described but not associated shows #N/A (custom-functions-troubleshooting).
      if (!implementation) return errorOf("#N/A");
      const addresses: string[] = [];
      const values = given.map((value) => {
        if (!value.isReferenceObject()) {
          addresses.push("");
          return value as BaseValueObject;
        }
        const reference = value as BaseReferenceObject;
        addresses.push(this.#addressOf(reference));
        return reference.toArrayValueObject();
      });
      const refused = this.#refusedError(values);
      if (refused) return refused;
      const invocation = {
        functionName: this.name,
        isInValuePreview: false,
        ...(this.#metadata.options?.requiresAddress
          ? { address: addressOf({ book: this.#shared.book, ...place, rowCount: 1, columnCount: 1 }) }
          : {}),
        ...(this.#metadata.options?.requiresParameterAddresses ? { parameterAddresses: addresses } : {}),
      };
      const passed = this.#arguments(values);
      if (this.#metadata.options?.stream) {
        return answer(streams.valueAt(place, String(this.name), passed, invocation, implementation));
      }
      const value = implementation(...passed, invocation);
      if (isPromise(value)) this.#shared.waiting(value);
      return isPromise(value)
        ? (new AsyncObject(value.then(answer, fail)) as unknown as FunctionVariantType)
        : answer(value);
    } catch (thrown) {
      return fail(thrown);
    }
  }

  #addressOf(reference: BaseReferenceObject): string {
    const { startRow, startColumn, endRow, endColumn } = reference.getRangePosition();
    return addressOf({
      book: this.#shared.book,
      sheetId: reference.getSheetId(),
      row: startRow,
      column: startColumn,
      rowCount: endRow - startRow + 1,
      columnCount: endColumn - startColumn + 1,
    });
  }

  /** An error in an argument is the result, and the function is not called, unless it takes errors as any. */
  #refusedError(values: readonly BaseValueObject[]): ErrorValueObject | null {
    for (const [index, value] of values.entries()) {
      const type = this.#parameterAt(index)?.type ?? "any";
      const error = this.#takesErrors && type === "any" ? null : firstError(value);
      if (error) return error;
    }
    return null;
  }

  #parameterAt(index: number) {
    const { parameters } = this.#metadata;
    const last = parameters.at(-1);
    return parameters[index] ?? (last?.repeating ? last : undefined);
  }

  #arguments(values: readonly BaseValueObject[]): unknown[] {
    const { parameters } = this.#metadata;
    const one = (value: BaseValueObject, index: number): unknown => {
      const parameter = this.#parameterAt(index);
      if (parameter?.dimensionality === "matrix") {
        const rows = value.isArray() ? (value as ArrayValueObject).getArrayValue() : [[value]];
        return rows.map((row) => row.map((cell) => converted(cell, parameter.type)));
      }
      if (!value.isArray()) return converted(value, parameter?.type);
      const array = value as ArrayValueObject;
      // ASSUMPTION: a range for a single value gives #VALUE! where it has several cells.
      if (array.getRowCount() * array.getColumnCount() > 1) throw new Unfit();
      return converted(array.get(0, 0), parameter?.type);
    };
    const isOmitted = (value: BaseValueObject | undefined) => value === undefined || value instanceof NullValueObject;
    return parameters.map((parameter, index) => {
      if (parameter.repeating) return values.slice(index).map((value, later) => one(value, index + later));
      const value = values[index];
      // Excel passes null for an optional argument left out (custom-functions-parameter-options).
      return parameter.optional && isOmitted(value) ? null : one(value ?? NullValueObject.create(), index);
    });
  }
}

const isPromise = (value: unknown): value is Promise<unknown> =>
  typeof value === "object" && value !== null && typeof (value as { then?: unknown }).then === "function";

type CellPlace = { readonly sheetId: string; readonly row: number; readonly column: number };
type Stream = { readonly asked: string; value: unknown; onCanceled?: () => void };

/** Functions that go on giving values to their cell. */
class Streams {
  readonly #running = new Map<string, Stream>();
  readonly #recalculate: () => void;

  constructor(recalculate: () => void) {
    this.#recalculate = recalculate;
  }

  valueAt(
    { sheetId, row, column }: CellPlace,
    name: string,
    passed: unknown[],
    invocation: object,
    implementation: AssociatedFunction,
  ): unknown {
    const key = keyOf(sheetId, row, column);
    const asked = JSON.stringify([name, passed]);
    const running = this.#running.get(key);
    if (running?.asked === asked) return running.value;
    running?.onCanceled?.();
    const stream: Stream = { asked, value: new FunctionError("#BUSY!") };
    this.#running.set(key, stream);
    let started = false;
    implementation(
      ...passed,
      Object.assign(invocation, {
        setResult: (value: unknown) => {
          stream.value = value;
          if (started && this.#running.get(key) === stream) this.#recalculate();
        },
        set onCanceled(stop: () => void) {
          stream.onCanceled = stop;
        },
      }),
    );
    started = true;
    return stream.value;
  }

  stop(): void {
    for (const { onCanceled } of this.#running.values()) onCanceled?.();
    this.#running.clear();
  }
}

/** The custom functions of the workbook: described by metadata, done by the functions associated with their ids. */
export class CustomFunctions {
  readonly #book: Book;
  readonly #implementations = new Map<string, AssociatedFunction>();
  readonly #messages = new Map<string, ReadonlyMap<string, string>>();
  readonly #described = new Map<string, FunctionMetadata["parameters"]>();
  readonly #streams: Streams;
  readonly #waiting = new Set<() => void>();
  readonly #waitingFor = new Set<Promise<unknown>>();
  #isRegistered = false;

  constructor(book: Book) {
    this.#book = book;
    this.#streams = new Streams(() => book.recalculate());
  }

  /** Describes functions. In a formula they are called by `namespace`, a dot and their name. */
  register(metadata: FunctionsMetadata, namespace = ""): void {
    const shared = {
      book: this.#book,
      implementations: this.#implementations,
      messages: this.#messages,
      streams: this.#streams,
      waiting: (promise: Promise<unknown>) => {
        this.#waitingFor.add(promise);
        const done = () => this.#waitingFor.delete(promise);
        promise.then(done, done);
        for (const listener of [...this.#waiting]) listener();
      },
    };
    const functions = metadata.functions.map((one) => {
      const name = `${namespace ? `${namespace}.` : ""}${one.name}`.toUpperCase();
      this.#described.set(name, one.parameters);
      return new HostFunction(name, one, metadata.allowErrorForDataTypeAny === true, shared);
    });
    this.#book.injector.get(IFunctionService).registerExecutors(...functions);
    this.#isRegistered = true;
    this.#book.recalculate();
  }

  associate(id: string, implementation: AssociatedFunction): void {
    this.#implementations.set(id.toUpperCase(), implementation);
    if (this.#isRegistered) this.#book.recalculate();
  }

  /** Whether a function's promise is waited for: its formula has no value yet. */
  get isWaiting(): boolean {
    return this.#waitingFor.size > 0;
  }

  /** Calls back when a function answers with a promise; answers how to stop. */
  whenWaiting(listener: () => void): () => void {
    this.#waiting.add(listener);
    return () => this.#waiting.delete(listener);
  }

  /** Why the cell shows an error, where its function said so. */
  messageAt(sheetId: string, row: number, column: number): string | null {
    const key = keyOf(sheetId, row, column);
    for (const [anchor, cells] of this.#messages) {
      const message = cells.get(key);
      if (message !== undefined && this.#holdsFormula(anchor)) return message;
    }
    return null;
  }

  /**
   * Why a call of one of the add-in's functions has the wrong number of arguments, in Excel's own sense: an argument
   * counts when its place is there, even empty. Null where the number is right, or the function is none of them.
   */
  argumentFault(name: string, given: number): string | null {
    const parameters = this.#described.get(name.trim().replace(/^@/, "").toUpperCase());
    if (!parameters) return null;
    const needed = parameters.filter(({ optional, repeating }) => !optional && !repeating);
    if (given < needed.length) {
      const missing = needed.slice(given).map((parameter) => parameter.name);
      return `You've entered too few arguments for ${name.trim()}: ${missing.join(", ")} ${missing.length > 1 ? "are" : "is"} missing.`;
    }
    const isOpen = parameters.some(({ repeating }) => repeating);
    return !isOpen && given > parameters.length
      ? `You've entered too many arguments for ${name.trim()}: it takes ${parameters.length}.`
      : null;
  }

  #holdsFormula(key: string): boolean {
    const [sheetId = "", row, column] = key.split(" ");
    const cells = this.#book.workbook.getSheetBySheetId(sheetId)?.getCellMatrix();
    return Boolean(cells?.getValue(Number(row), Number(column))?.f);
  }

  dispose(): void {
    this.#streams.stop();
  }
}
