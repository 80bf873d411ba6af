/** The part of Excel's CustomFunctions that our functions use, for tests without a workbook. */
export function installCustomFunctionsErrors(): void {
  class CustomFunctionsError extends Error {
    constructor(
      readonly code: string,
      message?: string,
    ) {
      super(message);
    }
  }
  const ErrorCode = { invalidValue: "#VALUE!", notAvailable: "#N/A" };
  Object.assign(globalThis, { CustomFunctions: { Error: CustomFunctionsError, ErrorCode } });
}
