import { activeCell, selectedAreas } from "../../engine/selection";
import { refuse } from "../errors";
import { type ProxyClass, proxyClass } from "../proxies/proxyClass";
import { Application, type ApplicationTarget } from "./application";
import { BindingCollection } from "./bindings";
import { Chart } from "./charts";
import { CommentCollection } from "./comments";
import { CustomXmlPartCollection } from "./customXml";
import { DocumentProperties } from "./documentProperties";
import { Functions } from "./functions";
import { NamedItemCollection } from "./names";
import { NoteCollection } from "./notes";
import { WorkbookProtection } from "./protection";
import { Range } from "./range";
import { RangeAreas } from "./rangeAreas";
import { SettingCollection } from "./settings";
import { StyleCollection } from "./styles";
import { TableCollection } from "./tableCollections";
import { WorksheetCollection } from "./worksheet";

/** The workbook as one batch sees it. */
export type WorkbookTarget = ApplicationTarget & {
  /** The workbook in a context of its own. */
  freshWorkbook(): Excel.Workbook;
};

const activeChart = ({ book }: WorkbookTarget) => book.charts.active && { book, chart: book.charts.active };

const all = ({ book }: WorkbookTarget) => ({ book, sheetId: null });

export const Workbook: ProxyClass<Excel.Workbook, WorkbookTarget> = proxyClass<Excel.Workbook, WorkbookTarget>(
  "Workbook",
  {
    scalars: {
      autoSave: { get: () => false },
      calculationEngineVersion: { get: () => 191_029 },
      isDirty: { get: () => true },
      name: { get: ({ book }) => book.workbook.getSnapshot().name || "Book1" },
      previouslySaved: { get: () => false },
      readOnly: { get: () => false },
    },
    objects: {
      bindings: { of: () => BindingCollection, at: (target) => target },
      comments: { of: () => CommentCollection, at: all },
      application: { of: () => Application, at: (target) => target },
      customXmlParts: { of: () => CustomXmlPartCollection, at: ({ book }) => ({ book, namespace: null }) },
      functions: { of: () => Functions, at: ({ book }) => book },
      names: { of: () => NamedItemCollection, at: all },
      notes: { of: () => NoteCollection, at: all },
      protection: { of: () => WorkbookProtection, at: ({ book }) => book },
      properties: { of: () => DocumentProperties, at: ({ book }) => book },
      settings: { of: () => SettingCollection, at: (target) => target },
      styles: { of: () => StyleCollection, at: ({ book }) => book },
      tables: { of: () => TableCollection, at: all },
      worksheets: { of: () => WorksheetCollection, at: ({ book }) => book },
    },
    methods: {
      getActiveChart: { of: () => Chart, at: activeChart },
      getActiveChartOrNullObject: { of: () => Chart, at: activeChart },
      getActiveCell: { of: () => Range, at: ({ book }) => activeCell(book) },
      getIsActiveCollabSession: { answer: () => false },
      getSelectedRange: {
        of: () => Range,
        at: ({ book }) => {
          const areas = selectedAreas(book);
          // A selection of several areas is refused (Workbook.getSelectedRange in the reference).
          return areas.length === 1 ? areas[0]! : refuse("InvalidSelection", "Several areas are selected.");
        },
      },
      getSelectedRanges: { of: () => RangeAreas, at: ({ book }) => selectedAreas(book) },
    },
    events: {
      // There is one workbook, and it is active from the start.
      onActivated: () => () => {},
      onSelectionChanged: ({ book, freshWorkbook }, tell) =>
        book.changes.listen((change) => {
          // The event brings the workbook along, for the handler to ask what is selected.
          if (change.kind === "selection") tell({ workbook: freshWorkbook() });
        }),
    },
  },
);
