import type {
  ICellData,
  IRange,
  ISheetDataValidationRule,
  IStyleData,
  IWorkbookData,
  IWorksheetData,
} from "@univerjs/core";
import { BooleanNumber } from "@univerjs/core";
import type { IDefinedNamesServiceParam } from "@univerjs/engine-formula";
import type { IConditionFormattingRule } from "@univerjs/sheets-conditional-formatting";
import type { IAutoFilter } from "@univerjs/sheets-filter";
import type { ISheetNote } from "@univerjs/sheets-note";
import type { ITableJson } from "@univerjs/sheets-table";
import type { CellMarks } from "../../engine/cellMarks";
import type { PageSetup } from "../../engine/pageSetup";
import type { Password } from "../../engine/passwords";
import type { Lock } from "../../engine/protection";
import type { WorkbookState } from "../../engine/state";
import { pack } from "../package/archive";
import type { CellSurroundings } from "./cells";
import { settingsLeft } from "./chartLosses";
import { type ChartToSave, chartPart, drawingPart, isKeptKind } from "./charts";
import { conditionalFormatsMarkup } from "./conditionalFormats";
import { dataValidationsMarkup } from "./dataValidations";
import { filterMarkup } from "./filters";
import { hyperlinksMarkup } from "./hyperlinks";
import { counted, main, part, relationships, tag } from "./markup";
import { namesMarkup } from "./names";
import { noteBoxesPart, notesPart } from "./notes";
import { PackageWriter } from "./packageWriter";
import { printNames } from "./pageSetup";
import { sheetProtectionMarkup, structureProtectionMarkup } from "./protection";
import { SharedTexts } from "./sharedTexts";
import { sheetMarkup } from "./sheet";
import { writeState } from "./state";
import { StyleSheet } from "./styles";
import { tablePart } from "./tables";

/** A workbook as the engine gives it out, and what the host alone knows of it. */
export type WorkbookToSave = {
  readonly snapshot: Partial<IWorkbookData>;
  readonly activeSheetId: string;
  /** A formula as people write it, of the engine's own form in a cell. */
  readonly shownFormula: (formula: string, place: { sheetId: string; row: number; column: number }) => string;
  /** Where the formula of a cell spilt to, if it did. */
  readonly spillOf: (sheetId: string, row: number, column: number) => IRange | undefined;
  readonly charts: readonly ChartToSave[];
  readonly state: WorkbookState;
  /** How sheets are printed, by their ids; those that are not there as a fresh one. */
  readonly pageSetups: ReadonlyMap<string, PageSetup>;
  /** What a sheet is protected with, null where it is not. */
  readonly lockOf: (sheetId: string) => Lock | null;
  /** What the order and names of the sheets are protected with, null where they are not. */
  readonly structure: Password | null;
};

/** The bytes of the file, and a sentence for each thing that did not fit into it. */
export type SavedXlsx = { readonly bytes: Uint8Array; readonly losses: readonly string[] };

/** Things of the grid that do not fit into the file, and how to say so. */
const lossSentences = {
  colourFilter: (count: number) => `${count === 1 ? "A filter" : `${count} filters`} by colour: not kept in the file.`,
  tableFilter: (count: number) =>
    `${count === 1 ? "A filter inside a table" : `${count} filters inside tables`}: not kept in the file.`,
  gridOnlyRule: (count: number) =>
    `${count === 1 ? "A tick box or list" : `${count} tick boxes or lists`} of several choices: not kept in the file.`,
  mixedText: (count: number) =>
    `${count === 1 ? "A cell" : `${count} cells`} with several looks in one text: saved in one look.`,
  tint: (count: number) =>
    `${count === 1 ? "A cell" : `${count} cells`} with a tint of a colour: saved in the colour itself.`,
  tickBox: (count: number) =>
    `${count === 1 ? "A cell" : `${count} cells`} shown as a tick box: saved as TRUE or FALSE.`,
  otherChart: (count: number) =>
    `${count === 1 ? "A chart" : `${count} charts`} of a kind that is not drawn here: saved as columns.`,
};
type Loss = keyof typeof lossSentences;

export function saveXlsx(workbook: WorkbookToSave): SavedXlsx {
  const { snapshot } = workbook;
  const resources = readResources(snapshot);
  const order = (snapshot.sheetOrder ?? []).filter((id) => snapshot.sheets?.[id]);
  const styles = new StyleSheet(lookOf(snapshot, snapshot.sheets?.[order[0] ?? ""]?.defaultStyle) ?? {});
  const texts = new SharedTexts();
  const writer = new PackageWriter();
  const losses = new Map<Loss, number>();
  const chartSettings = new Set<string>();
  const lose = (loss: Loss, count: number) => losses.set(loss, (losses.get(loss) ?? 0) + count);
  const atTheTop = (formula: string) => workbook.shownFormula(formula, { sheetId: order[0] ?? "", row: 0, column: 0 });
  let tableCount = 0;

  const sheetTags = order.map((sheetId, index) => {
    const sheet = snapshot.sheets![sheetId] as Partial<IWorksheetData>;
    const path = `xl/worksheets/sheet${index + 1}.xml`;
    const tables = resources.tables[sheetId]?.tables ?? [];
    const notes = Object.values(resources.notes[sheetId] ?? {}).flatMap((row) => Object.values(row));
    const filter = filterMarkup(resources.filters[sheetId]);
    const validations = dataValidationsMarkup(resources.rules[sheetId] ?? []);
    lose("colourFilter", filter.left);
    lose("gridOnlyRule", validations.left);
    lose("tableFilter", tables.filter(isFiltered).length);
    const cells = cellsOf(sheet);
    lose("mixedText", countRichTexts(cells));
    lose("tint", countMarks(cells, ["fillTint", "fontTint", "borderTint", "fillPatternTint"]));
    lose("tickBox", countMarks(cells, ["control"]));

    const tableLinks = tables.map((table) => {
      tableCount += 1;
      const content = tablePart(table, tableCount, atTheTop);
      return writer.link(path, "table", `xl/tables/table${tableCount}.xml`, content, "table");
    });
    if (notes.length > 0) writer.link(path, "comments", `xl/comments${index + 1}.xml`, notesPart(notes), "comments");
    const boxes =
      notes.length > 0 &&
      writer.link(path, "vmlDrawing", `xl/drawings/vmlDrawing${index + 1}.vml`, noteBoxesPart(notes));

    const charts = workbook.charts.filter(({ chart }) => chart.sheetId === sheetId);
    for (const setting of charts.flatMap(({ chart }) => settingsLeft(chart))) chartSettings.add(setting);
    lose("otherChart", charts.filter(({ chart }) => !isKeptKind(chart.type)).length);
    const drawing = charts.length > 0 && writeCharts(writer, path, `drawing${index + 1}`, charts);

    const markup = sheetMarkup(
      sheet,
      surroundings(workbook, sheetId, tables, styles, texts),
      {
        autoFilter: filter.markup,
        filteredRows: filter.filteredRows,
        conditionalFormats: conditionalFormatsMarkup(resources.formats[sheetId] ?? [], styles),
        dataValidations: validations.markup,
        hyperlinks: hyperlinksMarkup(sheet, (address) => writer.linkOutside(path, "hyperlink", address)),
        protection: sheetProtectionMarkup(workbook.lockOf(sheetId)),
        drawing: drawing ? tag("drawing", { "r:id": drawing }) : "",
        legacyDrawing: boxes ? tag("legacyDrawing", { "r:id": boxes }) : "",
        page: workbook.pageSetups.get(sheetId),
        tableParts: counted(
          "tableParts",
          tableLinks.map((id) => tag("tablePart", { "r:id": id })),
        ),
      },
      sheetId === workbook.activeSheetId,
    );
    const id = writer.link("xl/workbook.xml", "worksheet", path, part(markup), "worksheet");
    const hidden = sheet.hidden === BooleanNumber.TRUE ? "hidden" : undefined;
    return tag("sheet", { name: sheet.name, sheetId: index + 1, state: hidden, "r:id": id });
  });

  const namesForPrinting = order.flatMap((sheetId, place) => {
    const setup = workbook.pageSetups.get(sheetId);
    return setup ? printNames(setup, snapshot.sheets?.[sheetId]?.name ?? "", place) : [];
  });
  writer.link("xl/workbook.xml", "styles", "xl/styles.xml", styles.part(), "styles");
  writer.link("xl/workbook.xml", "sharedStrings", "xl/sharedStrings.xml", texts.part(), "sharedStrings");
  const active = Math.max(0, order.indexOf(workbook.activeSheetId));
  const book = tag("workbook", { xmlns: main, "xmlns:r": relationships }, [
    structureProtectionMarkup(workbook.structure),
    tag("bookViews", {}, tag("workbookView", { activeTab: active || undefined })),
    tag("sheets", {}, sheetTags),
    namesMarkup(Object.values(resources.names), order, atTheTop, namesForPrinting),
    // Whoever opens the file calculates it anew: their functions may differ from ours.
    tag("calcPr", { calcId: 191029, fullCalcOnLoad: true }),
  ]);
  writer.link("", "officeDocument", "xl/workbook.xml", part(book), "sheet.main");
  writeState(writer, workbook.state, {
    sheets: Object.fromEntries(order.map((id) => [snapshot.sheets?.[id]?.name ?? "", id])),
    tables: Object.fromEntries(
      order.flatMap((id) => (resources.tables[id]?.tables ?? []).map((table) => [table.name, table.id])),
    ),
  });
  const sentences = [...losses].filter(([, count]) => count > 0).map(([loss, count]) => lossSentences[loss](count));
  if (chartSettings.size > 0) sentences.push(`Of charts, not kept in the file: ${[...chartSettings].join(", ")}.`);
  return { bytes: pack(writer.parts()), losses: sentences };
}

function surroundings(
  { snapshot, shownFormula, spillOf }: WorkbookToSave,
  sheetId: string,
  tables: readonly ITableJson[],
  styles: StyleSheet,
  texts: SharedTexts,
): CellSurroundings {
  const tableOf = (row: number, column: number) =>
    tables.find(
      ({ range }) =>
        row >= range.startRow && row <= range.endRow && column >= range.startColumn && column <= range.endColumn,
    );
  return {
    styles,
    texts,
    look: (style) => lookOf(snapshot, style),
    shownFormula: (formula, row, column) => shownFormula(formula, { sheetId, row, column }),
    spillOf: (row, column) => spillOf(sheetId, row, column),
    tableAt: (row, column) => tableOf(row, column)?.name,
    headingAt: (row, column) => {
      const table = tableOf(row, column);
      if (!table || row !== table.range.startRow || table.options.showHeader === false) return undefined;
      return table.columns[column - table.range.startColumn]?.displayName;
    },
  };
}

/** Adds a sheet's drawing with its charts; gives the link that leads to it. */
function writeCharts(writer: PackageWriter, sheet: string, name: string, charts: readonly ChartToSave[]): string {
  const path = `xl/drawings/${name}.xml`;
  const links = charts.map((chart, index) => {
    const kind = "application/vnd.openxmlformats-officedocument.drawingml.chart+xml";
    return writer.link(path, "chart", `xl/charts/chart-${name}-${index + 1}.xml`, chartPart(chart), kind);
  });
  const content = drawingPart(
    charts.map(({ chart }) => chart),
    links,
  );
  return writer.link(sheet, "drawing", path, content, "application/vnd.openxmlformats-officedocument.drawing+xml");
}

const lookOf = (snapshot: Partial<IWorkbookData>, style: ICellData["s"]): IStyleData | undefined =>
  (typeof style === "string" ? snapshot.styles?.[style] : style) ?? undefined;

type Resources = {
  readonly names: Record<string, IDefinedNamesServiceParam>;
  readonly tables: Record<string, { tables: ITableJson[] }>;
  readonly notes: Record<string, Record<string, Record<string, ISheetNote>>>;
  readonly formats: Record<string, IConditionFormattingRule[]>;
  readonly rules: Record<string, ISheetDataValidationRule[]>;
  readonly filters: Record<string, IAutoFilter>;
};

function readResources({ resources = [] }: Partial<IWorkbookData>): Resources {
  const read = (name: string) => JSON.parse(resources.find((each) => each.name === name)?.data || "{}");
  return {
    names: read("SHEET_DEFINED_NAME_PLUGIN"),
    tables: read("SHEET_TABLE_PLUGIN"),
    notes: read("SHEET_NOTE_PLUGIN"),
    formats: read("SHEET_CONDITIONAL_FORMATTING_PLUGIN"),
    rules: read("SHEET_DATA_VALIDATION_PLUGIN"),
    filters: read("SHEET_FILTER_PLUGIN"),
  };
}

const isFiltered = ({ filters }: ITableJson) => (filters?.tableColumnFilterList ?? []).some(Boolean);

const countMarks = (cells: readonly ICellData[], marks: readonly (keyof CellMarks)[]): number =>
  cells.filter(({ custom }) => marks.some((mark) => custom?.[mark])).length;

const cellsOf = (sheet: Partial<IWorksheetData>): ICellData[] =>
  Object.values((sheet.cellData ?? {}) as Record<string, Record<string, ICellData | null>>).flatMap((row) =>
    Object.values(row).filter((cell) => cell !== null),
  );

/** Texts whose runs differ; one run over the whole text is just a look. */
const countRichTexts = (cells: readonly ICellData[]): number =>
  cells.filter((cell) => (cell.p?.body?.textRuns?.length ?? 0) > 1).length;
