export { type OpenedXlsx, openXlsx } from "./read";
export { XlsxRefusal } from "./refusal";
