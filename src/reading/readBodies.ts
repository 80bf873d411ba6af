import { say } from "../language/say";
import { addressOf } from "./address";
import { type BodyFacts, bodyUnits, isPlausibleBody } from "./bodyFacts";
import { type BodyUse, type ColumnMap, isBodyUse } from "./columns";
import type { Grid } from "./grid";
import { readNumber } from "./readNumber";
import type { Remark, RemarkCode } from "./readResults";
import { convert, type Unit, unitOf } from "./units";

/**
 * Collects body mass and stature of the athletes, row by row. An athlete's last value counts. A cell that cannot be one
 * is told and left aside; no result is missing because of it.
 */
export function bodyReader(grid: Grid, map: ColumnMap, remarks: Remark[]) {
  const facts = new Map<string, BodyFacts>();
  const columns = map.columns.flatMap(({ offset, use, unit }) => (isBodyUse(use) ? [{ offset, use, unit }] : []));

  function readCell(athlete: string, row: number, column: number, use: BodyUse, unit: Unit | null): void {
    const leaveAside = (code: RemarkCode, why: string) =>
      remarks.push({ cell: addressOf(grid, row, column), code, leftOut: false, why });
    const read = readNumber(grid.cells[row]![column]!, unit);
    if (read.kind === "empty") return;
    if (read.kind === "unread") leaveAside(read.code, read.why);
    else if (unit === null) leaveAside("unit", say`${read.value} was not used: the unit is not known.`);
    else if (!isPlausibleBody(use, read.value, unit)) {
      leaveAside("implausible", say`${read.value} ${unit.symbol} cannot be a ${words[use]}; it was not used.`);
    } else {
      if (read.remark) leaveAside("converted", read.remark);
      const value = Number(convert(read.value, unit, unitOf(bodyUnits[use])!)!.toPrecision(12));
      facts.set(athlete, { ...(facts.get(athlete) ?? { athlete, bodyMass: null, stature: null }), [use]: value });
    }
  }

  return {
    readCell,
    readRow(athlete: string, row: number): void {
      for (const { offset, use, unit } of columns) {
        readCell(athlete, row, offset, use, unit === null ? null : unitOf(unit));
      }
    },
    facts: (): BodyFacts[] => [...facts.values()],
  };
}

const words = { bodyMass: say`body mass`, stature: say`stature` } as const satisfies Record<BodyUse, string>;
