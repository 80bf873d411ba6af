import { readFileSync } from "node:fs";
import { basename } from "node:path";
import { createEngine, createHost, type Host } from "../host";
import { openXlsx, restoreBook, type SavedXlsx, saveBook, XlsxRefusal } from "../host/xlsx";
import { BatchRefusal } from "./refusal";
import { registerFunctions } from "./registerFunctions";

/** A workbook on the embedded host, with the add-in's functions in it and Excel's globals put in place. */
export type OpenWorkbook = {
  readonly host: Host;
  /** A sentence for each thing in the file that did not come along. */
  readonly notices: readonly string[];
  save(): SavedXlsx;
  close(): void;
};

/** Opens a file. The add-in knows one workbook at a time: close it before the next one is opened. */
export async function openWorkbook(path: string): Promise<OpenWorkbook> {
  const opened = read(path);
  const engine = createEngine({ workbook: opened.workbook });
  const host = createHost(engine);
  host.install(globalThis);
  restoreBook(host.book, opened);
  await registerFunctions(host);
  await host.settle();
  return {
    host,
    notices: opened.notices,
    save: () => saveBook(host.book),
    close() {
      host.dispose();
      engine.univer.dispose();
    },
  };
}

function read(path: string) {
  try {
    return openXlsx(readFileSync(path), basename(path).replace(/\.xlsx$/i, ""));
  } catch (error) {
    if (error instanceof XlsxRefusal) throw new BatchRefusal(error.message);
    throw new BatchRefusal(whyUnread(error as NodeJS.ErrnoException));
  }
}

function whyUnread({ code, message }: NodeJS.ErrnoException): string {
  if (code === "ENOENT") return "There is no such file.";
  if (code === "EISDIR") return "This is a folder. To take all workbooks in it, add /*.xlsx to its name, in quotes.";
  if (code === "EACCES" || code === "EPERM") return "This file may not be read by you.";
  return `Something in this file was not understood: ${message}`;
}
