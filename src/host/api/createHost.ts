import { rectangleAddress, splitAreas } from "../engine/addresses";
import type { Area } from "../engine/area";
import { Book } from "../engine/book";
import { writeValues } from "../engine/cells";
import type { Engine } from "../engine/createEngine";
import { type AssociatedFunction, FunctionError, type FunctionsMetadata } from "../engine/customFunctions";
import { resolveArea } from "../engine/references";
import { activeSheetId, select } from "../engine/selection";
import { ApiError } from "./errors";
import { Runtime } from "./excel/application";
import { Workbook, type WorkbookTarget } from "./excel/workbook";
import { type ApiSets, createOffice, isUpTo, newestSets } from "./office";
import { ClientObject } from "./proxies/clientObject";
import { ClientResult } from "./proxies/clientResult";
import { EventHandlers } from "./proxies/eventHandlers";
import { RequestContext, type Surroundings, Turns } from "./proxies/requestContext";
import { enumerations } from "./published/enumerations";
import { publishedMembers } from "./published/members";

export type HostOptions = {
  /** Requirement sets the host says it has, to try a feature as absent: `{ ExcelApi: "1.13" }`. Others as published. */
  readonly apiSets?: ApiSets;
  /** Bytes of a request and of a response; Excel on the web has 5 MB, which is the standard here. */
  readonly payloadLimit?: number;
  /** Language of the program's menus and of the workbook, as in BCP 47; "en-US" where none is said. */
  readonly language?: string;
};

/** The globals an add-in finds in Excel, and what a test or a page may do to the workbook beside them. */
export type Host = {
  readonly Office: typeof Office;
  readonly Excel: typeof Excel;
  readonly OfficeExtension: typeof OfficeExtension;
  readonly CustomFunctions: typeof CustomFunctions;
  /** The open workbook. */
  readonly book: Book;
  /** How often `context.sync` went to the workbook. */
  readonly syncs: number;
  /** The charts, drawn by the page: `list`, `dataOf`, `listen`. */
  readonly charts: Book["charts"];
  /** Addresses of formulas that depend on themselves. */
  readonly circularReferences: readonly string[];
  /** Puts the globals on a window. */
  install(target: object): void;
  /** Describes custom functions by their generated metadata. */
  registerFunctions(metadata: FunctionsMetadata, namespace?: string): void;
  /** Resolves when every formula has its value. */
  settle(): Promise<void>;
  /** Selects as a person would; several areas are joined by commas: "'Hop test'!A3:G20" or "A1:A9,C1:C9". */
  select(address: string): void;
  /** Clicks the first cell of the address as a person would, `offset` points from its upper left corner. */
  click(address: string, offset?: { readonly x: number; readonly y: number }): void;
  /** Types into the first cell of the address as a person would, and waits for the formulas. */
  type(address: string, value: string | number | boolean): Promise<void>;
  /** Why a cell shows an error, where its custom function said so. */
  errorMessageAt(address: string): string | null;
  /** Presses a ribbon button whose action the add-in associated. */
  press(actionId: string): Promise<void>;
  /** Closes the workbook and ends its engine. */
  dispose(): void;
};

const webPayloadLimit = 5 * 1024 * 1024;

/** Which members each requirement set brought: "Range.text" -> "1.1". Of later sets than the host's they are absent. */
function offeredBy(sets: ApiSets): (className: string, member: string) => boolean {
  const absent = new Set<string>();
  for (const [className, members] of Object.entries(publishedMembers)) {
    for (const member of members.split(" ")) {
      const [name = "", set = ""] = member.split(/(?:\(\))?@/);
      if (set && !set.includes("/") && !isUpTo(set, sets.ExcelApi)) absent.add(`${className}.${name}`);
    }
  }
  return (className, member) => !absent.has(`${className}.${member}`);
}

/** Opens the API on a running engine: its own of `createEngine`, or the page's with a user interface. */
export function createHost(engine: Engine, options: HostOptions = {}): Host {
  const sets = { ...newestSets, ...options.apiSets };
  const book = new Book(engine);
  const offers = offeredBy(sets);
  const { office, press } = createOffice(sets, book, options.language ?? "en-US");
  const turns = new Turns();
  let syncs = 0;

  function newContext(): RequestContext {
    const surroundings: Surroundings = {
      calculationSuspended: false,
      payloadLimit: options.payloadLimit ?? webPayloadLimit,
      // While a custom function is waited for, others read the workbook as it is; that function may be one of them.
      settle: async () => {
        if (!book.functions.isWaiting) await book.settle();
      },
      synced: () => {
        syncs += 1;
      },
      offers,
      turns,
      whenFunctionsWait: (listener) => book.functions.whenWaiting(listener),
      async acting(run) {
        book.changes.actor = "addin";
        try {
          await run();
        } finally {
          book.changes.actor = "user";
        }
      },
    };
    const context = new RequestContext(surroundings);
    const target: WorkbookTarget = {
      book,
      freshWorkbook: () => newContext().workbook,
      suspendCalculation() {
        surroundings.calculationSuspended = true;
      },
    };
    context.workbook = Workbook.create(context, () => target) as unknown as Excel.Workbook;
    context.application = context.workbook.application;
    context.runtime = Runtime.create(context, () => book) as unknown as Excel.Runtime;
    return context;
  }

  /** `Excel.run` in its forms: a batch; options, an object or several whose context goes on, then a batch. */
  async function run(...given: unknown[]): Promise<unknown> {
    const batch = given.at(-1);
    if (typeof batch !== "function") throw new ApiError("InvalidArgument", "Excel.run takes a function.", "Excel.run");
    const first = given.length > 1 ? given[0] : undefined;
    const earlier = (Array.isArray(first) ? first : [first]).find(
      (object) => object instanceof ClientObject || object instanceof RequestContext,
    );
    const context =
      earlier instanceof RequestContext ? earlier : earlier instanceof ClientObject ? earlier.context : newContext();
    // A batch begins after the code around it has queued what it has, as in the platform's library.
    await Promise.resolve();
    const result = await (batch as (context: RequestContext) => unknown)(context);
    await context.sync();
    return result;
  }

  const excel = {
    ...enumerations,
    run,
    RequestContext: class {
      constructor() {
        // biome-ignore lint/correctness/noConstructorReturn: the published class is a factory of contexts.
        return newContext();
      }
    },
    createWorkbook: () =>
      Promise.reject(new ApiError("NotImplemented", "The embedded host has one workbook.", "Excel.createWorkbook")),
  };

  const officeExtension = {
    Error: ApiError,
    ClientObject,
    ClientResult,
    EventHandlers,
    ErrorCodes: {
      accessDenied: "AccessDenied",
      apiNotFound: "ApiNotFound",
      generalException: "GeneralException",
      activityLimitReached: "ActivityLimitReached",
      invalidObjectPath: "InvalidObjectPath",
      invalidRequestContext: "InvalidRequestContext",
      propertyNotLoaded: "PropertyNotLoaded",
      runMustReturnPromise: "RunMustReturnPromise",
      valueNotLoaded: "ValueNotLoaded",
    },
    config: { extendedErrorLogging: false },
  };

  const customFunctions = {
    associate(idOrMappings: string | Record<string, AssociatedFunction>, implementation?: AssociatedFunction): void {
      const mappings =
        typeof idOrMappings === "string" && implementation ? { [idOrMappings]: implementation } : idOrMappings;
      for (const [id, one] of Object.entries(mappings as Record<string, AssociatedFunction>)) {
        book.functions.associate(id, one);
      }
    },
    Error: FunctionError,
    ErrorCode: {
      invalidValue: "#VALUE!",
      notAvailable: "#N/A",
      divisionByZero: "#DIV/0!",
      invalidNumber: "#NUM!",
      nullReference: "#NULL!",
      invalidName: "#NAME?",
      invalidReference: "#REF!",
    },
  };

  const areasOf = (address: string): Area[] => {
    let sheetId = activeSheetId(book);
    return splitAreas(address).map((part) => {
      const area = resolveArea(book, part, { book, id: sheetId });
      if (!area) throw new Error(`"${part}" is no range of the workbook.`);
      sheetId = area.sheetId;
      return area;
    });
  };

  // The classes are checked member by member against the published typings; that all of it is here is not claimed.
  const globals = {
    Office: office as unknown as typeof Office,
    Excel: excel as unknown as typeof Excel,
    OfficeExtension: officeExtension as unknown as typeof OfficeExtension,
    CustomFunctions: customFunctions as unknown as typeof CustomFunctions,
  };

  return {
    ...globals,
    book,
    charts: book.charts,
    get syncs() {
      return syncs;
    },
    get circularReferences() {
      return book.circular.addresses;
    },
    install: (target) => void Object.assign(target, globals),
    registerFunctions: (metadata, namespace) => book.functions.register(metadata, namespace),
    settle: () => book.settle(),
    select: (address) => select(areasOf(address)),
    click(address, offset = { x: 0, y: 0 }) {
      const cell = { ...areasOf(address)[0]!, rowCount: 1, columnCount: 1 };
      select([cell]);
      book.changes.tell({ kind: "clicked", sheetId: cell.sheetId, address: rectangleAddress(cell), offset });
    },
    async type(address, value) {
      writeValues({ ...areasOf(address)[0]!, rowCount: 1, columnCount: 1 }, [[value]]);
      await book.settle();
    },
    errorMessageAt(address) {
      const { sheetId, row, column } = areasOf(address)[0]!;
      return book.functions.messageAt(sheetId, row, column);
    },
    press,
    dispose: () => book.dispose(),
  };
}
