import type { ReportTable } from "../analyses/report";
import { type BatteryTest, batteryTable } from "../store/battery";
import { type KeptResult, resultsTable } from "../store/keptResults";
import { type QualityWeight, weightsMatrix, weightsTable } from "../store/qualityWeights";
import { type SquadMember, squadTable } from "../store/squad";
import { columnsOf, type StoreTable, type StoreTableId } from "../store/storeTable";

/** A table of ours as it is to be created: its sheet, its cells, and what may be entered. */
export type StoreSheet = {
  readonly id: StoreTableId;
  readonly sheet: string;
  readonly title: string;
  readonly use: string;
  readonly table: ReportTable;
  /** In characters, column by column. */
  readonly widths: readonly number[];
  readonly choices: readonly (Choices | null)[];
};

/** `only`: other words are refused; else the list is an offer. */
export type Choices = { readonly words: readonly string[]; readonly only: boolean };

type Cells = number | string | null;

/** A table of ours with these rows, as its declaration says. */
export function storeSheet<Row>(table: StoreTable<Row>, rows: readonly Row[]): StoreSheet {
  const columns = columnsOf(table);
  return {
    ...{ id: table.id, sheet: table.sheet, title: table.title, use: table.use },
    table: {
      name: table.name,
      rowKey: columns[0]![0],
      columns: columns.map(([key, { heading, meaning, format }]) => ({
        ...{ key, heading, meaning },
        ...formatOf(format),
      })),
      rows: rows.map((row) => columns.map(([field, { write }]): Cells => write(row[field]))),
    },
    widths: columns.map(([, { width }]) => width),
    choices: columns.map(([, { choices }]) => (choices ? { words: choices, only: true } : null)),
  };
}

/** A column of a report without a format is one of words. */
const formatOf = (format: string): { readonly format?: string } => (format === "@" ? {} : { format });

/** The roles that the squad names are offered for the next athlete. */
export function squadSheet(squad: readonly SquadMember[]): StoreSheet {
  const sheet = storeSheet(squadTable, squad);
  const roles = [...new Set(squad.flatMap(({ role }) => role ?? []))].filter((role) => !role.includes(","));
  const roleColumn = columnsOf(squadTable).findIndex(([field]) => field === "role");
  return {
    ...sheet,
    choices: sheet.choices.with(roleColumn, roles.length === 0 ? null : { words: roles, only: false }),
  };
}

export const batterySheet = (battery: readonly BatteryTest[]): StoreSheet => storeSheet(batteryTable, battery);

export const resultsSheet = (results: readonly KeptResult[]): StoreSheet => storeSheet(resultsTable, results);

/** A column per role beside the qualities. */
export function weightsSheet(weights: readonly QualityWeight[]): StoreSheet {
  const { roles, rows } = weightsMatrix(weights);
  const sheet = storeSheet(weightsTable, rows);
  const { meaning, format, width } = weightsTable.further!;
  return {
    ...sheet,
    table: {
      ...sheet.table,
      columns: [
        ...sheet.table.columns,
        ...roles.map((role) => ({ key: role, heading: role, meaning, ...formatOf(format) })),
      ],
      rows: sheet.table.rows.map((row, index) => [...row, ...rows[index]!.weights]),
    },
    widths: [...sheet.widths, ...roles.map(() => width)],
    choices: [...sheet.choices, ...roles.map(() => null)],
  };
}
