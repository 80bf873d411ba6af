import type { FunctionHelp } from "./metadata/describeReference";

export type { FunctionHelp, ParameterHelp } from "./metadata/describeReference";

/** A custom function as Excel calls it: ranges as rows of cells. */
export type FunctionCode = (...given: readonly unknown[]) => unknown;

/** Everything a coach can look up, by subject. The build reads it from the comments of the functions. */
export declare const functionReference: readonly FunctionHelp[];

/** The way to the code of each function, by its id. The build fills it in. */
export declare const functionCode: Readonly<Record<string, () => Promise<FunctionCode>>>;
