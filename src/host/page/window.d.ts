import type { Host } from "../index";

declare global {
  interface Window {
    /** The host of the workbook that is open in the page; tests reach the workbook through it. */
    tapelineHost?: Host;
  }
}
