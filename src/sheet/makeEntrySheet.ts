import { say } from "../language/say";
import { columnLetters } from "../reading/address";
import type { EntryPlan, EntryRule } from "../store/entrySheet";
import {
  entrySheetsSetting,
  noEntrySheets,
  parseEntrySheets,
  type RememberedEntrySheet,
  type RememberedEntrySheets,
} from "../store/entrySheets";
import { explain, removeSheets } from "./createStoreTable";
import { freeName } from "./createTable";
import type { CellGrid, Deed, Restoration } from "./deed";
import { trapHost } from "./hostRefusal";
import { setUpPage } from "./pageSetup";
import { writeCells, writeLines } from "./tableCells";
import { look, styleHeader, styleLines } from "./tableLook";
import { rowHeight, wrappedLineCount } from "./wrappedLineCount";

export type EntrySheetMade = {
  readonly sheet: string;
  /** False where the workbook's memory is of a newer version or damaged: the sheet must then be selected to be read. */
  readonly remembered: boolean;
  readonly deed: Deed;
};

/** Title, line of use, and a blank row stand above the headings. */
const headerRow = 3;

/** Writes the sheet of a test day, ready to be printed or typed into. Three round trips. */
export const makeEntrySheet = (plan: EntryPlan): Promise<EntrySheetMade> =>
  trapHost(() =>
    Excel.run(async (context): Promise<EntrySheetMade> => {
      const { settings, tables, worksheets } = context.workbook;
      const setting = settings.getItemOrNullObject(entrySheetsSetting);
      setting.load("value");
      worksheets.load("items/name");
      tables.load("items/name");
      await context.sync();

      const names = worksheets.items.map(({ name }) => name);
      const sheetName = freeName(plan.sheet, " ", names);
      const sheet = worksheets.add(sheetName);
      const height = Math.max(plan.athletes.length, 1);
      const area = sheet.getRangeByIndexes(headerRow, 0, height + 1, plan.columns.length);
      const headings = plan.columns.map(({ heading }) => heading);
      try {
        const headerCells = area.getRow(0);
        headerCells.numberFormat = [headings.map(() => "@")];
        headerCells.values = [headings];
        const table = sheet.tables.add(area, true);
        const tableNames = tables.items.map(({ name }) => name);
        table.name = freeName("Tapeline_Entry", "_", tableNames);
        table.style = "TableStyleLight1";
        table.showBandedRows = false;
        table.showFilterButton = false;
        sheet.load("id");
        table.load("id");
        await context.sync();

        fillEntrySheet(plan, sheet, height);
        setUpPage(sheet, { paper: plan.paper, titleRow: headerRow });
        sheet.activate();
        const stored = setting.isNullObject ? noEntrySheets : parseEntrySheets(setting.value);
        const written = { row: 0, column: 0, formulas: writtenCells(plan) };
        const steps: Restoration[] = [{ kind: "removeSheet", sheetId: sheet.id, written }];
        if (stored !== null) {
          settings.add(entrySheetsSetting, withSheet(stored, sheet.id, { tableId: table.id, ...remembered(plan) }));
          steps.push({
            kind: "restoreEntries",
            key: entrySheetsSetting,
            record: "sheets",
            entries: [{ entry: sheet.id, value: undefined }],
            existed: !setting.isNullObject,
          });
        }
        await context.sync();
        return { sheet: sheetName, remembered: stored !== null, deed: { what: say`Made ${sheetName}.`, steps } };
      } catch (error) {
        await removeSheets(context, [sheetName]);
        throw error;
      }
    }),
  );

const remembered = ({ date, columns }: EntryPlan): Omit<RememberedEntrySheet, "tableId"> => ({
  date,
  columns: columns.map(({ heading, use, test, measure, unit, attempt }) => ({
    ...{ heading, use, test, measure, unit },
    ...(attempt === undefined ? {} : { attempt }),
  })),
});

const withSheet = (
  stored: RememberedEntrySheets,
  sheetId: string,
  sheet: RememberedEntrySheet,
): RememberedEntrySheets => ({ ...stored, sheets: { ...stored.sheets, [sheetId]: sheet } });

/** Lines below the table: how each test is done, and what to mind. They stand clear of rows a coach adds. */
const linesBelow = ({ protocols, cautions }: EntryPlan): readonly { text: string; isHeading: boolean }[] => [
  ...protocols.flatMap(({ test, lines }) => [
    { text: test, isHeading: true },
    ...lines.map((text) => ({ text, isHeading: false })),
  ]),
  ...(cautions.length === 0 ? [] : [{ text: say`Mind`, isHeading: true }]),
  ...cautions.map((text) => ({ text, isHeading: false })),
];

const rowsClear = 2;

function fillEntrySheet(plan: EntryPlan, sheet: Excel.Worksheet, height: number): void {
  const above = sheet.getRangeByIndexes(0, 0, 2, 1);
  writeLines(above, [plan.title, plan.use]);
  styleLines(above);

  const widths = plan.columns.map(columnWidth);
  plan.columns.forEach(({ heading, use, format, rule, test }, index) => {
    const top = sheet.getRangeByIndexes(headerRow, index, 1, 1);
    const body = sheet.getRangeByIndexes(headerRow + 1, index, height, 1);
    const isText = use === "athlete" || use === "group";
    if (isText) {
      writeCells(
        body,
        undefined,
        plan.athletes.length === 0
          ? [null]
          : plan.athletes.map(({ athlete, role }) => (use === "athlete" ? athlete : role)),
      );
    } else body.numberFormat = Array.from({ length: height }, () => [format]);
    body.format.horizontalAlignment = isText ? "Left" : "Right";
    top.format.columnWidth = widths[index]! * pointsPerCharacter;
    const protocol = plan.protocols.find((one) => one.test === test);
    if (protocol) explain(top, heading, protocol.lines.join(" "));
    if (rule) askBeyond(body, rule, `${columnLetters(index)}${headerRow + 2}`);
  });
  const header = sheet.getRangeByIndexes(headerRow, 0, 1, plan.columns.length);
  styleHeader(header);
  const lines = plan.columns.map(({ heading }, index) => wrappedLineCount(heading, widths[index]! - 1));
  header.format.rowHeight = rowHeight(Math.max(...lines)) + 4;
  const body = sheet.getRangeByIndexes(headerRow + 1, 0, height, plan.columns.length);
  body.format.rowHeight = pencilHeight;
  body.format.verticalAlignment = "Center";
  for (const edge of ["InsideHorizontal", "InsideVertical", "EdgeBottom", "EdgeLeft", "EdgeRight"] as const) {
    const border = body.format.borders.getItem(edge);
    border.style = "Continuous";
    border.weight = "Thin";
    border.color = look.rule;
  }

  const below = linesBelow(plan);
  if (below.length > 0) {
    const foot = sheet.getRangeByIndexes(headerRow + 1 + height + rowsClear, 0, below.length, 1);
    writeLines(
      foot,
      below.map(({ text }) => text),
    );
    foot.format.font.color = look.quietInk;
    below.forEach(({ isHeading }, index) => {
      if (isHeading) foot.getCell(index, 0).format.font.bold = true;
    });
  }
  sheet.freezePanes.freezeAt(sheet.getRangeByIndexes(0, 0, headerRow + 1, 1));
  sheet.showGridlines = false;
}

const pointsPerCharacter = 5.6;
/** In characters: a heading of results may wrap between words, and not within one. */
function columnWidth({ use, heading }: EntryPlan["columns"][number]): number {
  if (use === "athlete") return 24;
  if (use === "group") return 12;
  return Math.max(8, ...heading.split(" ").map((word) => word.length)) + 2;
}

/** In points: room for a number by hand. */
const pencilHeight = 22;

/**
 * Asks about a number beyond what is plausible, and lets it stand where the coach says so. A rule for numbers alone
 * would ask about words such as DNS too.
 *
 * @param first address of the range's first cell, for which the rule is written down.
 */
function askBeyond(body: Excel.Range, { lowest, highest, message }: EntryRule, first: string): void {
  const bounds = [
    ...(lowest === null ? [] : [`${first}>=${lowest}`]),
    ...(highest === null ? [] : [`${first}<=${highest}`]),
  ];
  body.dataValidation.rule = { custom: { formula: `=OR(ISTEXT(${first}),AND(${bounds.join(",")}))` } };
  body.dataValidation.errorAlert = {
    showAlert: true,
    style: "Warning",
    title: say`Is this right?`,
    message: message.slice(0, 255),
  };
}

/** All cells of the sheet as we write them. */
function writtenCells(plan: EntryPlan): CellGrid {
  const row = (cells: readonly string[]) => plan.columns.map((_, index) => cells[index] ?? "");
  return [
    ...[row([plan.title]), row([plan.use]), row([])],
    row(plan.columns.map(({ heading }) => heading)),
    ...(plan.athletes.length === 0 ? [row([])] : plan.athletes.map(({ athlete, role }) => row([athlete, role ?? ""]))),
    ...Array.from({ length: rowsClear }, () => row([])),
    ...linesBelow(plan).map(({ text }) => row([text])),
  ];
}
