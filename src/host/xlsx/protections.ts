/** Names of the API's options of a protected sheet, by the file's (ECMA-376 part 1, 18.3.1.85: "1" forbids). */
export const protectionAttributes = {
  formatCells: "allowFormatCells",
  formatColumns: "allowFormatColumns",
  formatRows: "allowFormatRows",
  insertColumns: "allowInsertColumns",
  insertRows: "allowInsertRows",
  insertHyperlinks: "allowInsertHyperlinks",
  deleteColumns: "allowDeleteColumns",
  deleteRows: "allowDeleteRows",
  sort: "allowSort",
  autoFilter: "allowAutoFilter",
  pivotTables: "allowPivotTables",
  objects: "allowEditObjects",
  scenarios: "allowEditScenarios",
} as const;

/** Those that a protected sheet allows where the file says nothing of them. */
export const allowedUnlessForbidden: readonly string[] = ["objects", "scenarios"];
