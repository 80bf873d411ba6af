/**
 * The messages of the platform, as its page on error handling lists them
 * (office/dev/add-ins/testing/application-specific-api-error-handling). A detail may follow after the sentence.
 */
const messages = {
  AccessDenied: "You cannot perform the requested operation.",
  ApiNotFound:
    "The API you are trying to use could not be found. It may be available in a newer version of the Office application.",
  EmptyChartSeries: "The attempted operation failed because the chart series is empty.",
  GeneralException: "There was an internal error while processing the request.",
  InsertDeleteConflict: "The insert or delete operation attempted resulted in a conflict.",
  InvalidArgument: "The argument is invalid or missing or has an incorrect format.",
  InvalidObjectPath: "The object path isn't working for what you're trying to do.",
  InvalidOperation: "The operation attempted is invalid on the object.",
  InvalidReference: "This reference is not valid for the current operation.",
  InvalidRequestContext: "Cannot use the object across different request contexts.",
  InvalidSelection: "The current selection is invalid for this operation.",
  ItemAlreadyExists: "The resource being created already exists.",
  ItemNotFound: "The requested resource doesn't exist.",
  MergedRangeConflict:
    "Cannot complete the operation. A table can't overlap with another table, a PivotTable report, query results, merged cells, or an XML Map.",
  NonBlankCellOffSheet:
    "Microsoft Excel can't insert new cells because it would push non-empty cells off the end of the worksheet.",
  NotImplemented: "The requested feature isn't implemented.",
  PropertyNotLoaded:
    'Before reading the property\'s value, call the load method on the containing object and call "context.sync()" on the associated request context.',
  RangeExceedsLimit: "The cell count in the range has exceeded the maximum supported number.",
  RequestPayloadSizeLimitExceeded: "The request payload size has exceeded the limit.",
  ResponsePayloadSizeLimitExceeded: "The response payload size has exceeded the limit.",
  UnsupportedOperation: "The operation being attempted is not supported.",
  ValueNotLoaded: 'Call "context.sync()" on the associated request context before reading the value of the result.',
} as const;

export type ErrorCode = keyof typeof messages;

/** `OfficeExtension.Error`: what the API throws and what `Excel.run` rejects with. */
export class ApiError extends Error {
  readonly code: ErrorCode;
  readonly traceMessages: string[] = [];
  debugInfo: OfficeExtension.DebugInfo;

  constructor(code: ErrorCode, detail?: string, location = "") {
    super(detail ? `${messages[code]} ${detail}` : messages[code]);
    this.name = "RichApi.Error";
    this.code = code;
    this.debugInfo = { code, message: this.message, errorLocation: location };
  }

  /** The same error, with the member whose call failed and the statements around it. */
  at(location: string, statements: readonly string[], failing: number): this {
    this.debugInfo = {
      code: this.code,
      message: this.message,
      errorLocation: this.debugInfo.errorLocation || location,
      statement: statements[failing] ?? "",
      surroundingStatements: statements.slice(Math.max(0, failing - 5), failing + 6),
      fullStatements: [...statements],
    };
    return this;
  }

  toJSON() {
    return { code: this.code, message: this.message, debugInfo: this.debugInfo };
  }
}

export const refuse = (code: ErrorCode, detail?: string): never => {
  throw new ApiError(code, detail);
};

export const notImplemented = (member: string): ApiError =>
  new ApiError("NotImplemented", `The embedded host does not offer ${member}.`, member);
