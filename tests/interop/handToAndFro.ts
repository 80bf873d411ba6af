import { execFileSync, spawnSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { basename, join } from "node:path";
import { pathToFileURL } from "node:url";
import { runBatch } from "../../src/batch/runBatch";
import { findLibreOffice, findPython } from "./programs.mjs";

export const libreOffice = findLibreOffice();
export const python = findPython();

const profile = mkdtempSync(join(tmpdir(), "tapeline-libreoffice-"));
process.on("exit", () => rmSync(profile, { recursive: true, force: true }));

/** A program that has not ended by then will not: a busy machine takes minutes for what is a matter of seconds. */
export const longest = 900_000;

/** Has LibreOffice open a file and save it as another kind; gives the path of what it wrote. */
export function convert(path: string, kind: string, folder: string): string {
  const own = `-env:UserInstallation=${pathToFileURL(profile)}`;
  const words = [own, "--headless", "--convert-to", kind, "--outdir", folder, path];
  const { stdout, status } = spawnSync(libreOffice!, words, { encoding: "utf8", timeout: longest });
  if (status !== 0 || !stdout.includes("->"))
    throw new Error(`LibreOffice did not convert ${basename(path)}: ${stdout}`);
  return join(folder, `${basename(path).replace(/\.\w+$/, "")}.${kind.split(":")[0]}`);
}

/** Separated by semicolons, as the cells hold it rather than as they show it, of the n-th sheet (from 1). */
export const asText = (sheet: number) =>
  `csv:Text - txt - csv (StarCalc):59,34,76,1,,0,false,false,false,false,false,${sheet}`;

/** What a Python library with no code of ours reads in an .xlsx file. */
export function readWithPython(path: string): ReadWorkbook {
  const script = join(__dirname, "read_workbook.py");
  return JSON.parse(execFileSync(python!, [script, path], { encoding: "utf8" }));
}

export type ReadWorkbook = {
  readonly names: Record<string, string>;
  readonly sheets: Record<string, ReadSheet>;
};

export type ReadSheet = {
  readonly values: Record<string, string | number | boolean | null>;
  readonly formats: Record<string, string>;
  readonly widths: Record<string, number>;
  readonly tables: Record<string, string>;
  readonly notes: Record<string, string>;
  readonly merged: readonly string[];
  readonly frozen: string | null;
  readonly charts: number;
};

/** Has us open a workbook, ask it for asymmetry, and save a copy. */
export async function analyse(from: string, range: string, to: string): Promise<string> {
  const said: string[] = [];
  const say = (line: string) => void said.push(line);
  const words = ["--workbook", from, "--analysis", "asymmetry", "--range", range, "--out", to];
  const code = await runBatch(words, { say, complain: say });
  if (code !== 0) throw new Error(said.join("\n"));
  return to;
}
