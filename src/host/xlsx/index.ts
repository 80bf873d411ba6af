export { type OpenedXlsx, openXlsx } from "./read";
export { XlsxRefusal } from "./refusal";
export { restoreBook } from "./restoreBook";
export { saveBook } from "./saveBook";
export { type SavedXlsx, saveXlsx, type WorkbookToSave } from "./write";
