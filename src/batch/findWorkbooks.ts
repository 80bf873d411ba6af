import { existsSync, readdirSync } from "node:fs";
import { isAbsolute, join, parse, relative, resolve, sep } from "node:path";

/** Whether a path names several files: "squads/*.xlsx", "**" for any depth, "?" for one character. */
export const isPattern = (path: string): boolean => /[*?]/.test(path) && !existsSync(path);

/**
 * Files that match a pattern, in the order of their names. Files a spreadsheet program keeps beside an open workbook
 * ("~$squad.xlsx"), hidden ones, and those below `except` (where the results of an earlier run may lie) are left out.
 */
export function findWorkbooks(pattern: string, except: string): string[] {
  const absolute = resolve(pattern);
  const { root } = parse(absolute);
  const segments = absolute.slice(root.length).split(sep);
  const found = matches(root, segments).filter((path) => !isBelow(path, except));
  return [...new Set(found)].sort().map((path) => (isAbsolute(pattern) ? path : relative(".", path)));
}

function matches(folder: string, [first = "", ...rest]: readonly string[]): string[] {
  if (!/[*?]/.test(first)) {
    const path = join(folder, first);
    if (rest.length > 0) return matches(path, rest);
    return existsSync(path) ? [path] : [];
  }
  const entries = readEntries(folder);
  const folders = entries.filter((entry) => entry.isDirectory() && entry.name !== "node_modules");
  if (first === "**") {
    const here = rest.length > 0 ? matches(folder, rest) : matches(folder, ["*"]);
    return [...here, ...folders.flatMap(({ name }) => matches(join(folder, name), ["**", ...rest]))];
  }
  const form = formOf(first);
  if (rest.length > 0) {
    return folders.filter(({ name }) => form.test(name)).flatMap(({ name }) => matches(join(folder, name), rest));
  }
  return entries.filter((entry) => entry.isFile() && form.test(entry.name)).map(({ name }) => join(folder, name));
}

function readEntries(folder: string) {
  if (!existsSync(folder)) return [];
  return readdirSync(folder, { withFileTypes: true }).filter(({ name }) => !/^(\.|~\$)/.test(name));
}

const formOf = (segment: string): RegExp =>
  new RegExp(
    `^${segment
      .replace(/[.+^${}()|[\]\\]/g, "\\$&")
      .replaceAll("*", ".*")
      .replaceAll("?", ".")}$`,
    "i",
  );

function isBelow(path: string, folder: string): boolean {
  const way = relative(resolve(folder), path);
  return !way.startsWith("..") && !isAbsolute(way);
}
