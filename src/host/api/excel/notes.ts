import { RemoveNoteMutation, SheetsNoteModel, SheetUpdateNoteCommand, UpdateNoteMutation } from "@univerjs/sheets-note";
import type { Area } from "../../engine/area";
import type { Book } from "../../engine/book";
import { sheetsOf } from "../../engine/sheets";
import { refuse } from "../errors";
import { type ProxyClass, proxyClass } from "../proxies/proxyClass";
import { cellGiven, text, wholeNumber } from "./arguments";
import { Range } from "./range";

type NotesOf = { readonly book: Book; readonly sheetId: string | null };
type NoteTarget = { readonly book: Book; readonly sheetId: string; readonly noteId: string };

/** Whose notes these are: the engine keeps no author. */
const author = "Coach";

const modelOf = (book: Book): SheetsNoteModel => book.injector.get(SheetsNoteModel);

const noteOf = ({ book, sheetId, noteId }: NoteTarget) =>
  modelOf(book).getNote(book.id, sheetId, { noteId }) ?? refuse("ItemNotFound", "The note is gone.");

const listed = ({ book, sheetId }: NotesOf): NoteTarget[] =>
  sheetsOf(book)
    .filter((sheet) => sheetId === null || sheet.id === sheetId)
    .flatMap((sheet) =>
      [...(modelOf(book).getSheetNotes(book.id, sheet.id)?.values() ?? [])]
        .sort((a, b) => a.row - b.row || a.col - b.col)
        .map((note) => ({ book, sheetId: sheet.id, noteId: note.id })),
    );

const cellFor = (notes: NotesOf, given: unknown): Area => cellGiven(notes, given, "A note");

function noteAt(notes: NotesOf, given: unknown): NoteTarget | null {
  const cell = cellFor(notes, given);
  const note = modelOf(notes.book).getNote(notes.book.id, cell.sheetId, { row: cell.row, col: cell.column });
  return note ? { book: notes.book, sheetId: cell.sheetId, noteId: note.id } : null;
}

type Stored = { id: string; row: number; col: number; width: number; height: number; note: string; show?: boolean };

function store(target: Omit<NoteTarget, "noteId">, note: Stored): void {
  target.book.run(SheetUpdateNoteCommand.id, {
    unitId: target.book.id,
    // Under any other name the command takes the active sheet.
    subUnitId: target.sheetId,
    row: note.row,
    col: note.col,
    note,
  });
}

const pointsPerPixel = 0.75;

export const Note: ProxyClass<Excel.Note, NoteTarget> = proxyClass<Excel.Note, NoteTarget>("Note", {
  scalars: {
    authorName: { get: () => author },
    content: {
      get: (target) => noteOf(target).note,
      set: (target, content) => store(target, { ...noteOf(target), note: text(content, "A note") }),
    },
    height: {
      get: (target) => noteOf(target).height * pointsPerPixel,
      set: (target, points) => store(target, { ...noteOf(target), height: points / pointsPerPixel }),
    },
    visible: {
      get: (target) => noteOf(target).show ?? false,
      set: (target, show) => store(target, { ...noteOf(target), show }),
    },
    width: {
      get: (target) => noteOf(target).width * pointsPerPixel,
      set: (target, points) => store(target, { ...noteOf(target), width: points / pointsPerPixel }),
    },
  },
  methods: {
    delete(target) {
      const { book, sheetId, noteId } = target;
      const { row, col, ...note } = noteOf(target);
      book.undoable(
        sheetId,
        [{ id: RemoveNoteMutation.id, params: { sheetId, noteId } }],
        [{ id: UpdateNoteMutation.id, params: { sheetId, row, col, note: { row, col, ...note } } }],
      );
    },
    getLocation: {
      of: () => Range,
      at: (target) => {
        const { row, col } = noteOf(target);
        return { book: target.book, sheetId: target.sheetId, row, column: col, rowCount: 1, columnCount: 1 };
      },
    },
  },
});

export const NoteCollection: ProxyClass<Excel.NoteCollection, NotesOf> = proxyClass<Excel.NoteCollection, NotesOf>(
  "NoteCollection",
  {
    items: { of: () => Note, list: listed },
    methods: {
      add: {
        of: () => Note,
        at: (notes, given, content) => {
          const cell = cellFor(notes, given);
          if (noteAt(notes, cell)) refuse("InvalidArgument", "The cell has a note.");
          const id = `note-${cell.row}-${cell.column}-${listed({ ...notes, sheetId: cell.sheetId }).length}`;
          store(
            { book: notes.book, sheetId: cell.sheetId },
            { id, row: cell.row, col: cell.column, width: 160, height: 72, note: text(content, "A note") },
          );
          return noteAt(notes, cell);
        },
      },
      getCount: { answer: (notes) => listed(notes).length },
      getItem: { of: () => Note, at: noteAt },
      getItemAt: { of: () => Note, at: (notes, index) => listed(notes)[wholeNumber(index, "The index", 0)] ?? null },
      getItemOrNullObject: { of: () => Note, at: noteAt },
    },
  },
);
