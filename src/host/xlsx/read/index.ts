import { type IStyleData, type IWorkbookData, LocaleType } from "@univerjs/core";
import type { ISheetNote } from "@univerjs/sheets-note";
import type { ITableJson } from "@univerjs/sheets-table";
import type { PageSetup } from "../../engine/pageSetup";
import type { Password } from "../../engine/passwords";
import type { Lock } from "../../engine/protection";
import type { WorkbookState } from "../../engine/state";
import { openPackage, type WorkbookPackage } from "../package/workbookPackage";
import { childOf, childrenOf, countOf, textOf, truthOf, type XmlElement } from "../package/xml";
import { XlsxRefusal } from "../refusal";
import { cellReader } from "./cells";
import { type ReadChart, readCharts } from "./charts";
import { readColours } from "./colours";
import { readConditionalFormats } from "./conditionalFormats";
import { readDataValidations } from "./dataValidations";
import { readFilter } from "./filters";
import { placeHyperlinks } from "./hyperlinks";
import { Identities } from "./identities";
import { readNames } from "./names";
import { readNotes } from "./notes";
import { noticesOf } from "./notices";
import { readPageSetup, readPrintNames } from "./pageSetup";
import { readSheetProtection, readStructureProtection } from "./protection";
import { readSheet } from "./sheet";
import { readOwnState, readState } from "./state";
import { readStyles } from "./styles";
import { readTable } from "./tables";

/** A workbook read from a file. */
export type OpenedXlsx = {
  /** The engine's snapshot. */
  readonly workbook: Partial<IWorkbookData>;
  /** What the engine has no place for; see `restoreBook`. */
  readonly charts: readonly ReadChart[];
  /** How sheets are printed, by their ids. */
  readonly pageSetups: Readonly<Record<string, PageSetup>>;
  readonly state: WorkbookState;
  readonly protection: {
    /** By the ids of the sheets. */
    readonly sheets: Readonly<Record<string, Lock>>;
    /** Of the sheets' order and names. */
    readonly structure: Password | undefined;
  };
  /** A sentence for each thing that did not come along. */
  readonly notices: readonly string[];
};

/**
 * Reads an .xlsx file. `name` is the workbook's, without ".xlsx".
 * Throws an `XlsxRefusal` for a file that is none, is damaged, is harmful, or is beyond what a sheet holds.
 */
export function openXlsx(bytes: Uint8Array, name: string): OpenedXlsx {
  const file = openPackage(bytes);
  const source = file.xml(file.workbookPath)!;
  const colours = readColours(firstLinked(file, file.workbookPath, "theme"));
  const styleSource = firstLinked(file, file.workbookPath, "styles");
  const styles = readStyles(styleSource, colours);
  const strings = firstLinked(file, file.workbookPath, "sharedStrings");
  const texts = childrenOf(strings, "si").map(textOf);
  const paths = new Map(file.linksOf(file.workbookPath).map((link) => [link.id, link.target]));

  const used: Record<string, IStyleData> = {};
  const styleId = (index: number) => {
    const look = styles.cells[index];
    if (!look || Object.keys(look).length === 0) return undefined;
    used[`look-${index}`] = look;
    return `look-${index}`;
  };
  const marksOf = (index: number) => styles.marks[index];

  const sheets: NonNullable<IWorkbookData["sheets"]> = {};
  const tables: Record<string, { tables: ITableJson[] }> = {};
  const notes: Record<string, Record<number, Record<number, ISheetNote>>> = {};
  const formats: Record<string, unknown> = {};
  const rules: Record<string, unknown> = {};
  const filters: Record<string, unknown> = {};
  const charts: ReadChart[] = [];
  const locks: Record<string, Lock> = {};
  const printNames = readPrintNames(source);
  const pageSetups: Record<string, PageSetup> = {};
  const own = readOwnState(file);
  const identities = new Identities(own.identities);
  const ids = new Map<number, string>();
  let formatsLeft = 0;
  let sparklines = 0;

  const listed = childrenOf(childOf(source, "sheets"), "sheet");
  const worksheets = listed
    .map((entry, place) => ({ entry, place, path: paths.get(entry.attributes.id ?? "") ?? "" }))
    .filter(({ path }) => isWorksheet(file, path));
  for (const { entry, place, path } of worksheets) {
    const name = entry.attributes.name ?? `Sheet${place + 1}`;
    const hidden = (entry.attributes.state ?? "visible") !== "visible";
    const parse = (consumers: { row: (row: XmlElement) => void }) => file.xml(path, consumers)!;
    const readCell = cellReader(texts, styleId, marksOf);
    const sheet = readSheet(parse, { name, hidden }, readCell, { styleId, marksOf }, colours);
    placeHyperlinks(sheet.xml, file.linksOf(path), sheet.data);
    const id = identities.of("sheets", sheet.xml.attributes.uid, name);
    ids.set(place, id);
    sheets[id] = { id, ...sheet.data, defaultStyle: styles.plain };
    tables[id] = {
      tables: file
        .linked(path, "table")
        .flatMap((part) => elementOf(file, part))
        .map((table) => readTable(table, identities)),
    };
    notes[id] = Object.assign(
      {},
      ...file
        .linked(path, "comments")
        .flatMap((part) => elementOf(file, part))
        .map(readNotes),
    );
    const { rules: conditional, left } = readConditionalFormats(sheet.xml, styles.conditional, colours);
    formats[id] = conditional;
    formatsLeft += left;
    sparklines += countOf(childOf(sheet.xml, "extLst"), ["sparklineGroup"]);
    rules[id] = readDataValidations(sheet.xml);
    charts.push(...readCharts(file, path, sheet.data, id, colours));
    const lock = readSheetProtection(childOf(sheet.xml, "sheetProtection"));
    if (lock) locks[id] = lock;
    const page = readPageSetup(sheet.xml, printNames.get(place));
    if (page) pageSetups[id] = page;
    const filter = readFilter(sheet.xml, sheet.data);
    if (filter) filters[id] = filter;
  }
  if (worksheets.length === 0) throw new XlsxRefusal("This workbook has no worksheet that can be opened.");

  const workbook: Partial<IWorkbookData> = {
    id: "workbook",
    name,
    locale: LocaleType.EN_US,
    styles: used,
    sheetOrder: [...ids.values()],
    sheets,
    resources: [
      { name: "SHEET_DEFINED_NAME_PLUGIN", data: JSON.stringify(readNames(source, ids)) },
      { name: "SHEET_TABLE_PLUGIN", data: JSON.stringify(tables) },
      { name: "SHEET_NOTE_PLUGIN", data: JSON.stringify(notes) },
      { name: "SHEET_CONDITIONAL_FORMATTING_PLUGIN", data: JSON.stringify(formats) },
      { name: "SHEET_DATA_VALIDATION_PLUGIN", data: JSON.stringify(rules) },
      { name: "SHEET_FILTER_PLUGIN", data: JSON.stringify(filters) },
    ],
  };
  const usesOldDates = truthOf(childOf(source, "workbookPr"), "date1904");
  if (usesOldDates)
    throw new XlsxRefusal(
      "This workbook counts its dates from 1904. Switch that off in your spreadsheet program and save.",
    );
  return {
    workbook,
    charts,
    pageSetups,
    state: readState(file, own),
    protection: { sheets: locks, structure: readStructureProtection(childOf(source, "workbookProtection")) },
    notices: noticesOf(file, {
      formats: formatsLeft,
      charts,
      richTexts: childrenOf(strings, "si").filter(hasSeveralLooks).length,
      gradients: countOf(styleSource, ["gradientFill"]),
      sparklines,
    }),
  };
}

/** Whether a text has letters that look otherwise than the others. */
const hasSeveralLooks = (text: XmlElement) => childrenOf(text, "r").filter((run) => childOf(run, "rPr")).length > 0;

const isWorksheet = (file: WorkbookPackage, path: string) =>
  file.parts[path] !== undefined &&
  file.linksOf(file.workbookPath).some((link) => link.target === path && link.type === "worksheet");

const elementOf = (file: WorkbookPackage, path: string): XmlElement[] => {
  const element = file.xml(path);
  return element ? [element] : [];
};

const firstLinked = (file: WorkbookPackage, path: string, type: string) => {
  const target = file.linked(path, type)[0];
  return target === undefined ? undefined : file.xml(target);
};
