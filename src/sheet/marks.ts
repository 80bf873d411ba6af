import { say } from "../language/say";
import { areaAddress, placeOf, quotedSheet } from "../reading/address";
import { type Mark, type Marks, markKey, marksSetting, noMarks, parseMarks } from "../store/marks";
import type { Deed, Restoration } from "./deed";
import { HostRefusal, trapHost } from "./hostRefusal";
import { inPortions } from "./longWork";
import { isMarked, markedLook, plainLook, readLook } from "./markLook";
import { notesSupported } from "./notes";
import { writeOrTakeBack } from "./takeBack";

export type Marked = {
  /** How many cells bear a mark of this call. */
  readonly marked: number;
  /** Cells that could not be found, as they were given. */
  readonly missing: readonly string[];
  /** Whether the reasons stand in notes; where the program offers none, only the look tells. */
  readonly notes: boolean;
  readonly deed: Deed;
};

export type Cleared = {
  /** How many cells got back what was there before. */
  readonly cleared: number;
  /** Cells whose note the coach has rewritten since: the note stays. */
  readonly keptNotes: readonly string[];
  /** Cells that bear nothing of our mark any more: it was taken off by hand, or went elsewhere when rows were sorted. */
  readonly lost: readonly string[];
  readonly deed: Deed;
};

/**
 * Marks cells that should be looked at again: a note in words, and a look that does not rest on colour. A coach's note
 * stays above ours; a cell that is marked already gets the new words. Three round trips for up to 2,000 cells.
 *
 * @param marks cells by address, perhaps with their sheet, each with the reason.
 * @param sheet name of the sheet of addresses that name none.
 */
export const markCells = (
  marks: readonly { readonly cell: string; readonly why: string }[],
  sheet: string,
): Promise<Marked> =>
  trapHost(() =>
    Excel.run(async (context): Promise<Marked> => {
      const known = await readKnown(context);
      const { wanted, missing } = findCells(marks, sheet, known.sheets);
      const cells = await readMarkedCells(context, wanted);

      const fresh = cells.map((cell, index): Mark => {
        const { place, note, look } = cell;
        const last = known.stored.marks[markKey(place)];
        const isOurs = last !== undefined && (isMarked(look) || note === noteOf(last));
        const said = notesSupported() ? wanted[index]!.said : null;
        if (!isOurs) return { ...place, said, before: { note, ...look } };
        return { ...place, said, before: { ...last.before, note: coachNote(note, last) } };
      });
      const deed: Deed = {
        what: say`Marked ${cells.length === 1 ? say`1 cell` : say`${cells.length} cells`}`,
        steps: [
          // The last first: cells side by side share an edge.
          ...cells.flatMap((cell, index) => restorations(cell, noteOf(fresh[index]!))).reverse(),
          known.restoreMarks(fresh.map(markKey)),
        ],
      };
      if (fresh.length > 0) {
        await writeOrTakeBack(deed, async () => {
          const all = Object.fromEntries(fresh.map((mark) => [markKey(mark), mark]));
          const next: Marks = { ...known.stored, marks: { ...known.stored.marks, ...all } };
          context.workbook.settings.add(marksSetting, next);
          await inPortions(context, cells, cellsOfMark, (cell, index) => {
            writeNote(cell, noteOf(fresh[index]!));
            cell.range.setCellProperties([[markedLook(fresh[index]!.before)]]);
          });
          await context.sync();
        });
      }
      return { marked: cells.length, missing, notes: notesSupported(), deed };
    }),
  );

/** Gives all marked cells back the notes and looks they had, on all sheets. Three round trips for up to 2,000 cells. */
export const clearMarks = (): Promise<Cleared> =>
  trapHost(() =>
    Excel.run(async (context): Promise<Cleared> => {
      const known = await readKnown(context);
      const all = Object.values(known.stored.marks);
      const wanted = all.flatMap((mark) => {
        const sheet = known.sheets.find(({ id }) => id === mark.sheetId);
        return sheet ? [{ sheet, mark, place: { sheetId: mark.sheetId, address: mark.address } }] : [];
      });
      const found = await readMarkedCells(context, wanted);
      const cells = found.map((cell, index) => {
        const { mark } = wanted[index]!;
        const hasNote = mark.said !== null && cell.note === noteOf(mark);
        return {
          ...cell,
          mark,
          hasNote,
          hasLook: isMarked(cell.look),
          // A note that reads otherwise is the coach's and stays.
          nextNote: hasNote ? mark.before.note : cell.note,
        };
      });
      const deed: Deed = {
        what: say`Cleared the marks`,
        steps: [...cells.flatMap((cell) => restorations(cell, cell.nextNote)), known.restoreMarks(all.map(markKey))],
      };
      if (all.length > 0) {
        await writeOrTakeBack(deed, async () => {
          context.workbook.settings.getItem(marksSetting).delete();
          // The last first: cells side by side share an edge.
          await inPortions(context, [...cells].reverse(), cellsOfMark, (cell) => {
            if (cell.hasNote) writeNote(cell, cell.nextNote);
            if (cell.hasLook) cell.range.setCellProperties([[plainLook(cell.mark.before)]]);
          });
          await context.sync();
        });
      }
      return {
        cleared: cells.filter(({ hasNote, hasLook }) => hasNote || hasLook).length,
        keptNotes: cells
          .filter(({ hasNote, mark, note }) => mark.said !== null && !hasNote && note !== null)
          .map(fullAddress),
        lost: cells.filter(({ hasNote, hasLook, note }) => !hasNote && !hasLook && note === null).map(fullAddress),
        deed,
      };
    }),
  );

const fullAddress = ({ sheet, place }: WantedCell): string => `${quotedSheet(sheet.name)}!${place.address}`;

/** Begins every note of ours, so that a coach knows whose it is. */
const prefix = say`Check: `;

/** Letters of a reason: a note is read beside its cell. */
const reasonLength = 1000;

/** The whole note of a marked cell: the coach's, then ours. */
function noteOf({ said, before }: Mark): string | null {
  if (said === null) return before.note;
  return before.note === null ? said : `${before.note}\n\n${said}`;
}

/** What of the note of a marked cell is the coach's. */
function coachNote(note: string | null, last: Mark): string | null {
  if (note === null || note === noteOf(last)) return last.before.note;
  const rest = last.said === null ? note : note.replace(last.said, () => "").trim();
  return rest === "" ? null : rest;
}

type Known = {
  readonly sheets: readonly Excel.Worksheet[];
  readonly stored: Marks;
  /** The step that puts back what was remembered of these marks. */
  readonly restoreMarks: (keys: readonly string[]) => Restoration;
};

async function readKnown(context: Excel.RequestContext): Promise<Known> {
  const { worksheets, settings } = context.workbook;
  worksheets.load("items/id,items/name");
  const setting = settings.getItemOrNullObject(marksSetting);
  setting.load("value");
  await context.sync();
  const stored = setting.isNullObject ? noMarks : parseMarks(setting.value);
  if (stored === null) {
    throw new HostRefusal("UnknownState", say`The marks in this workbook were made by a newer version of the add-in.`);
  }
  return {
    sheets: worksheets.items,
    stored,
    restoreMarks: (keys) => ({
      kind: "restoreEntries",
      key: marksSetting,
      record: "marks",
      entries: keys.map((entry) => ({ entry, value: stored.marks[entry] })),
      existed: !setting.isNullObject,
      base: noMarks,
    }),
  };
}

type CellPlace = Pick<Mark, "sheetId" | "address">;
type WantedCell = { readonly sheet: Excel.Worksheet; readonly place: CellPlace };

/** The cells there are, each once with all that is to be said of it, and those there are not. */
function findCells(
  marks: readonly { readonly cell: string; readonly why: string }[],
  sheetName: string,
  sheets: readonly Excel.Worksheet[],
): { readonly wanted: readonly (WantedCell & { readonly said: string })[]; readonly missing: readonly string[] } {
  const wanted = new Map<string, WantedCell & { readonly said: string }>();
  const missing: string[] = [];
  for (const { cell, why } of marks) {
    const { sheet: named, address } = cellAt(cell);
    const name = (named ?? sheetName).toLowerCase();
    const sheet = sheets.find((one) => one.name.toLowerCase() === name);
    if (!sheet || address === null) {
      missing.push(cell);
      continue;
    }
    const place = { sheetId: sheet.id, address };
    const said = `${prefix}${why.length <= reasonLength ? why : `${why.slice(0, reasonLength - 1)}…`}`;
    const before = wanted.get(markKey(place));
    wanted.set(markKey(place), { sheet, place, said: before ? `${before.said}\n${said}` : said });
  }
  return { wanted: [...wanted.values()], missing };
}

/** Sheet and cell of an address such as "B3" or "'Hop test'!$B$3"; no address where it is not one cell. */
function cellAt(given: string): { readonly sheet: string | null; readonly address: string | null } {
  const parts = /^(?:(.+)!)?(\$?[A-Za-z]{1,3}\$?\d{1,7})$/s.exec(given.trim());
  if (!parts) return { sheet: null, address: null };
  const [, sheet, cell = ""] = parts;
  const { row, column } = placeOf(cell);
  const isOnSheet = row >= 0 && row < 1_048_576 && column < 16_384;
  return {
    sheet: sheet === undefined ? null : sheet.replace(/^'(.*)'$/s, "$1").replaceAll("''", "'"),
    address: isOnSheet ? areaAddress(row, column, 1, 1) : null,
  };
}

type ReadCell = WantedCell & {
  readonly range: Excel.Range;
  readonly note: string | null;
  readonly look: Omit<Mark["before"], "note">;
};

/** A mark is a note, four edges and two looks: as much to send as so many plain cells. */
const cellsOfMark = () => 10;

async function readMarkedCells(context: Excel.RequestContext, wanted: readonly WantedCell[]): Promise<ReadCell[]> {
  const read: (() => ReadCell)[] = [];
  await inPortions(context, wanted, cellsOfMark, ({ sheet, place }) => {
    const range = sheet.getRange(place.address);
    const look = readLook(range);
    const note = notesSupported() ? sheet.notes.getItemOrNullObject(place.address) : null;
    note?.load("content");
    read.push(() => ({
      sheet,
      place,
      range,
      // The program may have its own way of ending lines.
      note: !note || note.isNullObject ? null : note.content.replace(/\r\n?/g, "\n"),
      look: look(),
    }));
  });
  await context.sync();
  return read.map((cell) => cell());
}

function writeNote({ sheet, place, note: standing }: ReadCell, note: string | null): void {
  if (!notesSupported() || note === standing) return;
  if (standing === null && note !== null) sheet.notes.add(place.address, note);
  else if (note === null) sheet.notes.getItem(place.address).delete();
  else sheet.notes.getItem(place.address).content = note;
}

/** What puts back a cell as it was read. */
const restorations = ({ place, note, look }: ReadCell, written: string | null): Restoration[] => [
  { kind: "restoreLook", ...place, looks: [[plainLook(look)]] },
  { kind: "restoreNote", ...place, note, written },
];
