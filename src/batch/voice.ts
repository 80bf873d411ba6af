/** Where the runner speaks: results and progress on one stream, what went wrong on the other. */
export type Voice = { readonly say: (line: string) => void; readonly complain: (line: string) => void };

/** "1 workbook", "3 workbooks". */
export const many = (count: number, noun: string): string => `${count} ${noun}${count === 1 ? "" : "s"}`;
