import { BorderStyleTypes } from "@univerjs/core";
import type { IUniverSheetsTableConfig } from "@univerjs/sheets-table";

const accent = { s: BorderStyleTypes.MEDIUM, cl: { rgb: "#0f6b5c" } };
const hairline = { s: BorderStyleTypes.THIN, cl: { rgb: "#d9dfdc" } };

/** How tables look in the grid: a quiet heading over a line, every other row a shade darker, a fine line at the end. */
export const tableLook: IUniverSheetsTableConfig = {
  userThemes: [
    {
      name: "table-quiet",
      style: {
        headerRowStyle: { bg: { rgb: "#e3eeea" }, cl: { rgb: "#0a463d" }, bd: { b: accent } },
        firstRowStyle: { bg: { rgb: "#ffffff" } },
        secondRowStyle: { bg: { rgb: "#f6f8f5" } },
        lastRowStyle: { bd: { b: hairline } },
      },
    },
  ],
  defaultThemeIndex: 0,
};
