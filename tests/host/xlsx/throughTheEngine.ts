import { Book } from "../../../src/host/engine/book";
import { createEngine } from "../../../src/host/engine/createEngine";
import { settle } from "../../../src/host/engine/settle";
import { openXlsx, restoreBook, type SavedXlsx, saveBook } from "../../../src/host/xlsx";

/** Opens a file, lets the engine calculate it, and saves it again. */
export async function throughTheEngine(bytes: Uint8Array, change?: (book: Book) => void): Promise<SavedXlsx> {
  const opened = openXlsx(bytes, "sample");
  const book = new Book(createEngine({ workbook: opened.workbook }));
  restoreBook(book, opened);
  change?.(book);
  await settle(book);
  const saved = saveBook(book);
  book.dispose();
  return saved;
}
