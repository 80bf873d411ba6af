import { say } from "../language/say";
import { areaAddress } from "../reading/address";
import { type QualityWeight, weightsMatrix, weightsTable } from "../store/qualityWeights";
import { isSameWording, wordingKey } from "../store/sameName";
import { columnOffsets, type StoreRemark } from "../store/storeTable";
import { withoutSheet } from "./areas";
import { restoreCells } from "./beforeImage";
import { cellRuns } from "./cellRuns";
import type { Deed, Restoration } from "./deed";
import { trapHost } from "./hostRefusal";
import { makeMissing } from "./setUp";
import { weightsSheet } from "./storeSheet";
import { findStoreTables, imageOf, readTables, type StandingTable } from "./storeTables";
import { writeCells } from "./tableCells";
import { look } from "./tableLook";
import { writeOrTakeBack } from "./takeBack";

export type WeightsWritten = {
  readonly sheet: string;
  readonly written: number;
  /** Why nothing was written, and where; null where nothing was in the way. */
  readonly inTheWay: StoreRemark | null;
  readonly deed: Deed;
};

/**
 * Writes these weights and no others, each to its quality and role; what has no row or column yet gets one, below the
 * last or right of it. The table is made where there is none. Formulas of the coach's stay. Four round trips.
 */
export async function writeWeights(weights: readonly QualityWeight[]): Promise<WeightsWritten> {
  const written = await trapHost(() =>
    Excel.run(async (context): Promise<WeightsWritten | null> => {
      const workbook = await findStoreTables(context);
      const table = workbook.find(weightsTable);
      if (!table) return null;
      const [standing] = await readTables(context, [table], "before");
      return renew(context, standing!, weights);
    }),
  );
  if (written) return written;
  const { sheets, deed } = await makeMissing([weightsSheet(weights)]);
  return { sheet: sheets[0]!, written: weights.length, inTheWay: null, deed };
}

async function renew(
  context: Excel.RequestContext,
  standing: StandingTable,
  weights: readonly QualityWeight[],
): Promise<WeightsWritten> {
  const { cells, area, table, sheet } = standing;
  const refused = (cell: string, why: string): WeightsWritten => ({
    ...{ sheet: cells.sheet, written: 0, inTheWay: { sheet: cells.sheet, cell, why } },
    deed: { what: say`Wrote nothing.`, steps: [] },
  });
  const nameColumn = columnOffsets(weightsTable, cells.headings).quality;
  if (nameColumn === null) {
    return refused(
      areaAddress(area.row, area.column, 1, 1),
      say`No column is headed “Quality”; no weight can be placed.`,
    );
  }
  const grown = growth(standing, nameColumn, weights);
  if (grown.below > 0 && standing.hasTotals) {
    const cell = areaAddress(area.row + area.rowCount - 1, area.column, 1, 1);
    return refused(cell, say`The row of totals is in the way; switch it off for the table to grow.`);
  }
  const { obstacle, looks } = await readRoom(context, standing, grown);
  if (obstacle)
    return refused(obstacle, say`Cells beside or below the table are in the way; move them for it to grow.`);

  const changed = changedCells(standing, nameColumn, grown, weights);
  const runs = cellRuns(changed);
  const image = imageOf(standing);
  const rowCount = area.rowCount + grown.below;
  const columnCount = area.columnCount + grown.roles.length;
  const isGrown = rowCount > area.rowCount || columnCount > area.columnCount;
  const deed: Deed = {
    what: say`Wrote weights on ${cells.sheet}.`,
    steps: [
      // Smaller first: a heading cannot be emptied while it is one.
      ...(isGrown
        ? [
            {
              ...({ kind: "resizeTable", tableId: table.id, sheetId: sheet.id } as const),
              address: areaAddress(area.row, area.column, area.rowCount, area.columnCount),
              written: areaAddress(area.row, area.column, rowCount, columnCount),
            },
          ]
        : []),
      ...(grown.roles.length > 0
        ? [
            {
              ...({ kind: "restoreLook", sheetId: sheet.id, anchor: image.anchor } as const),
              address: areaAddress(area.row, area.column + area.columnCount, rowCount, grown.roles.length),
              looks: looks as Excel.SettableCellProperties[][],
            },
          ]
        : []),
      ...runs.map(
        (run): Restoration => ({
          ...restoreCells(image, run.row, run.column, run.cells.length, 1),
          written: run.cells.map(({ content }) => [content]),
        }),
      ),
    ],
  };
  const told = { sheet: cells.sheet, written: weights.length, inTheWay: null };
  if (deed.steps.length === 0) return { ...told, written: 0, deed: { what: say`Wrote nothing.`, steps: [] } };
  return writeOrTakeBack(deed, async () => {
    for (const run of runs) {
      const range = sheet.getRangeByIndexes(run.row, run.column, run.cells.length, 1);
      const contents = run.cells.map(({ content }) => content);
      writeCells(range, weightsTable.further!.format, contents);
    }
    if (isGrown) table.resize(sheet.getRangeByIndexes(area.row, area.column, rowCount, columnCount));
    dress(standing, rowCount, grown.roles.length);
    await context.sync();
    return { ...told, deed };
  });
}

/** Qualities and roles for which the table has no row or column. */
type Growth = {
  /** Each with its row on the sheet: a blank one of the table, or one below it. */
  readonly qualities: readonly { readonly quality: string; readonly row: number }[];
  /** How many of the rows lie below the table. */
  readonly below: number;
  readonly roles: readonly string[];
};

function growth({ cells, area }: StandingTable, nameColumn: number, weights: readonly QualityWeight[]): Growth {
  const { roles, rows } = weightsMatrix(weights);
  const standing = new Set(cells.body.map((line) => wordingKey(String(line[nameColumn] ?? ""))));
  const missing = rows.map(({ quality }) => quality).filter((quality) => !standing.has(wordingKey(quality)));
  const blank = cells.body.flatMap((line, offset) =>
    line.every((cell) => cell === null) ? cells.firstRow + offset : [],
  );
  return {
    qualities: missing.map((quality, index) => ({
      quality,
      row: blank[index] ?? area.row + area.rowCount + index - blank.length,
    })),
    below: Math.max(missing.length - blank.length, 0),
    roles: roles.filter((role) => !cells.headings.some((heading) => isSameWording(heading, role))),
  };
}

/** What dressing changes about cells. */
const changedLook = { format: { font: { bold: true, color: true }, horizontalAlignment: true } } as const;

type Room = {
  /** Address of what stands where the table is to grow; null where nothing does. */
  readonly obstacle: string | null;
  /** How the cells of the new columns look. */
  readonly looks: readonly (readonly Excel.CellProperties[])[];
};

async function readRoom(
  context: Excel.RequestContext,
  { sheet, area }: StandingTable,
  { below, roles }: Growth,
): Promise<Room> {
  const end = { row: area.row + area.rowCount, column: area.column + area.columnCount };
  const right =
    roles.length > 0 ? sheet.getRangeByIndexes(area.row, end.column, area.rowCount + below, roles.length) : null;
  const beneath = below > 0 ? sheet.getRangeByIndexes(end.row, area.column, below, area.columnCount) : null;
  const places = [right, beneath].flatMap((place) => place?.getUsedRangeOrNullObject(true).load("address") ?? []);
  const looks = right?.getCellProperties(changedLook);
  if (places.length > 0) await context.sync();
  const found = places.find(({ isNullObject }) => !isNullObject);
  return {
    obstacle: found ? withoutSheet(found.address) : null,
    looks: looks?.value ?? [],
  };
}

type ChangedCell = { readonly row: number; readonly column: number; readonly content: string | number };

function changedCells(
  { cells, area, before }: StandingTable,
  nameColumn: number,
  { qualities, roles }: Growth,
  weights: readonly QualityWeight[],
): ChangedCell[] {
  const rowOf = new Map<string, number>();
  cells.body.forEach((line, offset) => {
    const key = wordingKey(String(line[nameColumn] ?? ""));
    if (key !== "" && !rowOf.has(key)) rowOf.set(key, cells.firstRow + offset);
  });
  const names = qualities.map(({ quality, row }): ChangedCell => {
    rowOf.set(wordingKey(quality), row);
    return { row, column: area.column + nameColumn, content: quality };
  });
  const headings = roles.map((role, index) => ({
    ...{ row: area.row, column: area.column + area.columnCount + index, content: role },
  }));
  const columns = [...cells.headings, ...roles].map(wordingKey);
  const numbers = weights.map(({ quality, role, weight }) => ({
    row: rowOf.get(wordingKey(quality))!,
    column: area.column + columns.indexOf(wordingKey(role)),
    content: weight,
  }));
  const isFormula = ({ row, column }: ChangedCell): boolean =>
    String(before.formulas[row - area.row]?.[column - area.column] ?? "").startsWith("=");
  return [...names, ...headings, ...numbers].filter((cell) => !isFormula(cell));
}

/** New columns look like those of a table just made. */
function dress({ sheet, area }: StandingTable, rowCount: number, roleCount: number): void {
  if (roleCount === 0) return;
  const columns = sheet.getRangeByIndexes(area.row, area.column + area.columnCount, rowCount, roleCount);
  columns.format.horizontalAlignment = "Right";
  const headings = columns.getRow(0);
  headings.format.font.bold = true;
  headings.format.font.color = look.accent;
}
