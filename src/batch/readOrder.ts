import { existsSync, realpathSync, statSync } from "node:fs";
import { basename, join, resolve } from "node:path";
import { parseArgs } from "node:util";
import { analyses } from "../analyses";
import type { Asked } from "./analyseWorkbook";
import { findWorkbooks, isPattern } from "./findWorkbooks";
import { readOptions } from "./options";
import { OrderRefusal } from "./refusal";

/** One workbook to read and the file its copy with the results goes to. */
export type Job = { readonly from: string; readonly to: string };

export type Order = {
  readonly jobs: readonly Job[];
  readonly asked: Asked;
  /** Whether a file that stands where a result goes may be replaced. */
  readonly replace: boolean;
};

/** Reads the words after `npm run batch --`. Throws an `OrderRefusal` for what cannot be followed; "help" is none. */
export function readOrder(words: readonly string[]): Order | "help" {
  const given = parse(words);
  if (given.help) return "help";
  const { workbook: workbooks = [], analysis: wished, range, out } = given;
  const missing = [
    ...(workbooks.length === 0 ? ["--workbook"] : []),
    ...(wished === undefined ? ["--analysis"] : []),
    ...(range === undefined && !given.kept ? ["--range or --kept"] : []),
    ...(out === undefined ? ["--out"] : []),
  ];
  if (missing.length > 0) throw new OrderRefusal(`Missing: ${missing.join(", ")}. --help shows how to write it.`);
  if (range !== undefined && given.kept) {
    throw new OrderRefusal("--range reads cells, --kept the workbook's own table of results: leave one of them out.");
  }
  const analysis = analyses.find(({ id }) => id.toLowerCase() === wished!.toLowerCase());
  if (!analysis) {
    const known = analyses.map(({ id, question }) => `${id}: ${question}`);
    throw new OrderRefusal(`There is no analysis "${wished}". There are:`, known);
  }
  return {
    jobs: jobsOf(workbooks, out!),
    asked: {
      analysis,
      from: range === undefined ? "kept" : { range },
      options: readOptions(given.options, analysis, given.kept ?? false),
      newSheet: given["new-sheet"] ?? false,
    },
    replace: given.replace ?? false,
  };
}

function parse(words: readonly string[]) {
  try {
    return parseArgs({
      args: [...words],
      options: {
        workbook: { type: "string", multiple: true },
        analysis: { type: "string" },
        range: { type: "string" },
        kept: { type: "boolean" },
        options: { type: "string" },
        out: { type: "string" },
        replace: { type: "boolean" },
        "new-sheet": { type: "boolean" },
        help: { type: "boolean", short: "h" },
      },
    }).values;
  } catch (error) {
    throw new OrderRefusal(error instanceof Error ? error.message : String(error), [
      "Put quotes around what holds a blank, a ! or a *. --help shows how to write it.",
    ]);
  }
}

/** One workbook named by itself may go to a file; a pattern or several go to a folder under their own names. */
function jobsOf(workbooks: readonly string[], out: string): Job[] {
  const isSeveral = workbooks.length > 1 || workbooks.some(isPattern);
  const isFile = /\.xlsx$/i.test(out) && !(existsSync(out) && statSync(out).isDirectory());
  if (isSeveral && isFile) throw new OrderRefusal(`--out must be a folder where there are several workbooks: ${out}`);
  const paths = workbooks.flatMap((workbook) => {
    if (!isPattern(workbook)) return [workbook];
    const found = findWorkbooks(workbook, out);
    if (found.length === 0) throw new OrderRefusal(`No workbook matches ${workbook}`);
    return found;
  });
  const jobs = [...new Set(paths)].map((from) => ({ from, to: isFile ? out : join(out, basename(from)) }));
  refuseClashes(jobs);
  return jobs;
}

/** Told before anything is begun: a result that would replace a workbook it came from, or another's result. */
function refuseClashes(jobs: readonly Job[]): void {
  const inputs = new Set(jobs.map(({ from }) => realPath(from)));
  const overwritten = jobs.filter(({ to }) => inputs.has(realPath(to)));
  if (overwritten.length > 0) {
    throw new OrderRefusal(
      "--out would overwrite a workbook that is read. Give another file or folder.",
      overwritten.map(({ to }) => to),
    );
  }
  const lower = (path: string) => resolve(path).toLowerCase();
  const twice = jobs.filter(({ to }, index) => jobs.some((other, at) => at < index && lower(other.to) === lower(to)));
  if (twice.length > 0) {
    throw new OrderRefusal(
      "Two workbooks of one name would go to the same file. Take them in two runs with two folders.",
      twice.map(({ from }) => from),
    );
  }
}

/** The file itself, whatever links lead to it. */
const realPath = (path: string): string => (existsSync(path) ? realpathSync.native(path) : resolve(path));
