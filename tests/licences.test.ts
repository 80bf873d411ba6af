import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";

const root = join(__dirname, "..");

/** Open licences, by their SPDX identifiers. */
const open = new Set([
  "0BSD",
  "Apache-2.0",
  "BlueOak-1.0.0",
  "BSD-2-Clause",
  "BSD-3-Clause",
  "BSL-1.0",
  "CC-BY-4.0",
  "CC0-1.0",
  "ISC",
  "MIT",
  "MIT-0",
  "MPL-2.0",
  "Python-2.0",
  "Unlicense",
  "Zlib",
]);

/** Packages whose own words are not an SPDX identifier, each read by a person: what it really says, and where. */
const readByHand: Record<string, { licence: string; where: RegExp; words: RegExp }> = {
  // package.json has no licence field; the package ships the text, as its seventy sister packages declare it.
  "@univerjs/telemetry": { licence: "Apache-2.0", where: /^LICENSE/, words: /Apache License\s+Version 2\.0/ },
};

type Locked = { version?: string; license?: string; optional?: boolean; link?: boolean };

const locked: Record<string, Locked> = JSON.parse(readFileSync(join(root, "package-lock.json"), "utf8")).packages;

/** Path in node_modules and what the lock file says of it; the project itself is the entry without a path. */
const packages = Object.entries(locked).filter(([path]) => path !== "");

test("every package, for use and for development, is under an open licence", () => {
  const closed = packages
    .filter(([path]) => !(nameOf(path) in readByHand))
    .map(([path, entry]) => [path, licenceOf(path, entry)] as const)
    .filter(([, licence]) => licence === undefined || !isOpen(licence))
    .map(([path, licence]) => `${path}: ${licence ?? "says nothing"}`);
  expect(closed).toEqual([]);
});

test.each(Object.entries(readByHand))("%s still ships the licence that was read", (name, { licence, where, words }) => {
  const folder = join(root, "node_modules", name);
  const file = readdirSync(folder).find((it) => where.test(it));
  expect(open.has(licence)).toBe(true);
  expect(readFileSync(join(folder, file ?? ""), "utf8")).toMatch(words);
});

test("the table of licences read by hand names no package that is gone or speaks for itself", () => {
  const idle = Object.keys(readByHand).filter((name) => {
    const entry = packages.find(([path]) => nameOf(path) === name);
    if (entry === undefined) return true;
    const licence = licenceOf(...entry);
    return licence !== undefined && isOpen(licence);
  });
  expect(idle).toEqual([]);
});

test.each([
  ["MIT", true],
  ["(MIT OR GPL-3.0-or-later)", true],
  ["(BSD-3-Clause AND MIT)", true],
  ["GPL-3.0-only", false],
  ["(MIT AND GPL-3.0-only)", false],
  ["(MIT AND (GPL-3.0-only OR GPL-2.0-only))", false],
  ["UNLICENSED", false],
  ["SEE LICENSE IN LICENSE.md", false],
])("reading %s as open: %s", (expression, expected) => {
  expect(isOpen(expression)).toBe(expected);
});

/** An SPDX expression; nested brackets are left to a person. Else any of its alternatives must be open, and all parts of that one. */
function isOpen(expression: string): boolean {
  if (/\([^)]*\(/.test(expression)) return false;
  return expression
    .replace(/[()]/g, "")
    .split(/ OR /i)
    .some((alternative) => alternative.split(/ AND /i).every((licence) => open.has(licence.trim())));
}

/** What a package says of itself, or the lock file where it is not installed on this kind of machine. */
function licenceOf(path: string, entry: Locked): string | undefined {
  const file = join(root, path, "package.json");
  if (!existsSync(file)) return entry.license;
  const { license, licenses } = JSON.parse(readFileSync(file, "utf8"));
  const said = license ?? licenses;
  if (Array.isArray(said)) return said.map((it) => it.type ?? it).join(" OR ");
  return said?.type ?? said;
}

function nameOf(path: string): string {
  return path.slice(path.lastIndexOf("node_modules/") + "node_modules/".length);
}
