import { placeOf } from "../../reading/address";
import type { Remark, RemarkCode } from "../../reading/readResults";
import type { TestResult } from "../../reading/testResult";
import type { Finding } from "./finding";

/** What the reading left out because somebody should look at it; absences and empty cells are told elsewhere. */
const codes: readonly RemarkCode[] = [
  ...(["unitSlip", "implausible", "unit", "text", "error", "boolean", "notPositive"] as const),
  ...(["merged", "unknownSide", "date", "duplicate", "nearDuplicate", "measure"] as const),
];

/** Cells that the reading could not use, or names it could not be sure of, each with the athlete of its row. */
export function unreadCells(remarks: readonly Remark[], results: readonly TestResult[]): Finding[] {
  const athletes = new Map(results.map(({ cell, athlete }) => [rowOf(cell), athlete]));
  return remarks
    .filter(({ code }) => codes.includes(code))
    .map(({ cell, code, why }) => ({
      kind: code === "unitSlip" || code === "implausible" ? "unitSlip" : "unread",
      athlete: athletes.get(rowOf(cell)) ?? "",
      test: "",
      why,
      cells: [cell],
    }));
}

/** The row on its sheet, e.g. "'Hop test'!7". */
const rowOf = (cell: string): string => `${cell.slice(0, cell.lastIndexOf("!") + 1)}${placeOf(cell).row}`;
