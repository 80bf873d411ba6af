/** Whether this spreadsheet program lets an add-in write notes (requirement set ExcelApi 1.18). */
export const notesSupported = (): boolean => Office.context.requirements.isSetSupported("ExcelApi", "1.18");
