import { readdirSync, readFileSync, statSync } from "node:fs";
import { dirname, extname, join, relative, sep } from "node:path";
import ts from "typescript";

const root = join(__dirname, "..");

/** What git leaves out; the same on a fresh clone as beside a build. */
const leftOut = new Set([".git", ...readFileSync(join(root, ".gitignore"), "utf8").split("\n").map(withoutSlash)]);

const files = filesBelow(root);
const sources = files.filter((file) => file.startsWith("src/") && /\.tsx?$/.test(file) && !file.endsWith(".d.ts"));

/** Which rooms, or single files of them, a room may import; drawn in DEVELOPERS.md, and held to that drawing below. */
const arrows: Record<string, readonly string[]> = {
  language: [],
  engine: ["language/say"],
  reading: ["language/say", "language/tableWords", "engine"],
  analyses: ["language/say", "engine", "reading", "store"],
  functions: ["language/say", "engine", "reading"],
  programme: ["language/say", "engine", "reading", "store", "analyses"],
  store: ["language/say", "language/tableWords", "engine", "reading"],
  sheet: ["language/say", "store", "reading", "analyses/report", "programme/page"],
  pane: [
    "language",
    "sheet",
    "store",
    "programme",
    "analyses",
    "reading",
    "engine",
    "functions/reference",
    "functions/answerOf",
  ],
  host: [],
  batch: ["host", "sheet", "store", "analyses", "reading", "functions", "engine/result"],
};

/** Packages a room may import. The embedded host stands outside: it is our Excel and takes what it needs. */
const libraries: Record<string, RegExp> = {
  engine: /^(@stdlib\/|simple-statistics$|ml-)/,
  analyses: /^zod$/,
  store: /^zod$/,
  programme: /^zod$/,
  pane: /^(react(-dom)?(\/|$)|@radix-ui\/|zod$)/,
  "functions/metadata": /^(typescript|custom-functions-metadata|webpack|node:[a-z]+)$/,
  batch: /^(zod|node:[a-z]+)$/,
  host: /./,
};

/** Globals that tie code to one place, and the rooms that may name them. */
const globals: Record<string, readonly string[]> = {
  Excel: ["sheet"],
  Office: ["sheet", "pane"],
  CustomFunctions: ["functions"],
  React: [],
  document: ["pane"],
  window: ["pane"],
  localStorage: ["pane"],
  // Nothing the add-in reads leaves the workbook, so no room of it can speak to a network.
  fetch: [],
  XMLHttpRequest: [],
  WebSocket: [],
  EventSource: [],
  Worker: [],
  navigator: ["pane"],
};

type Import = { readonly file: string; readonly of: string };

/** "src/engine/trials/x.ts" -> "engine"; the build step inside functions/ is a room of its own. */
const roomOf = (file: string): string =>
  file.startsWith("src/functions/metadata/") ? "functions/metadata" : (file.split("/")[1] ?? "");

const imports = sources.flatMap((file) => importsIn(file, readFileSync(join(root, file), "utf8")));

describe("the rooms", () => {
  test("are the ones on the map", () => {
    const rooms = readdirSync(join(root, "src")).filter((name) => statSync(join(root, "src", name)).isDirectory());
    expect(rooms.filter((room) => !(room in arrows))).toEqual([]);
  });

  test("import only along the arrows", () => {
    const ours = imports.filter(({ of }) => of.startsWith("."));
    const against = ours.filter(({ file, of }) => {
      const target = relative(join(root, "src"), join(root, dirname(file), of))
        .split(sep)
        .join("/");
      const room = roomOf(file);
      const allowed = [room, ...(arrows[room] ?? [])];
      return !allowed.some((place) => target === place || target.startsWith(`${place}/`));
    });
    expect(against.map(told)).toEqual([]);
  });

  test("import only the packages that are theirs", () => {
    const packages = imports.filter(({ of }) => !of.startsWith("."));
    expect(packages.filter(isForeignPackage).map(told)).toEqual([]);
  });

  test("name no global that belongs elsewhere", () => {
    const against = sources
      .filter((file) => roomOf(file) !== "host" && roomOf(file) !== "functions/metadata")
      .flatMap((file) =>
        globalsIn(file, readFileSync(join(root, file), "utf8"))
          .filter((name) => !globals[name]?.includes(roomOf(file)))
          .map((name) => `${file} uses ${name}`),
      );
    expect(against).toEqual([]);
  });

  test("are drawn alike in DEVELOPERS.md", () => {
    const rows = readFileSync(join(root, "DEVELOPERS.md"), "utf8").matchAll(/^\| *([a-z]+) *\| *([^|]*?) *\|$/gm);
    const drawn = Object.fromEntries(
      [...rows]
        .filter(([, room]) => room !== "room" && room !== undefined && room in arrows)
        .map(([, room, places]) => [room, (places ?? "").replaceAll("`", "").split(", ").sort()]),
    );
    const words: Record<string, string> = { language: "nothing of ours", host: "nothing of ours" };
    const held = Object.entries(arrows).map(([room, places]) => [
      room,
      words[room] ? [words[room]] : [...places].sort(),
    ]);
    expect(drawn).toEqual(Object.fromEntries(held));
  });
});

describe("the guards themselves see", () => {
  test.each([
    ["src/engine/trials/planted.ts", 'import { x } from "../../sheet/readSelection";'],
    ["src/engine/trials/planted.ts", 'export { x } from "../../pane/App";'],
    ["src/sheet/planted.ts", 'import type { X } from "../analyses/asymmetry/asymmetry";'],
    ["src/pane/planted.ts", 'const later = () => import("../host/index");'],
    ["src/host/planted.ts", 'import "../engine/moments";'],
  ])("an import in %s against the arrows: %s", (file, text) => {
    expect(importsIn(file, text).filter(isAgainstArrows)).toHaveLength(1);
  });

  test.each([
    ["src/engine/planted.ts", 'import { useState } from "react";'],
    ["src/functions/planted.ts", 'import { z } from "zod";'],
    ["src/sheet/planted.ts", 'import { readFileSync } from "node:fs";'],
  ])("a package that is not for %s: %s", (file, text) => {
    expect(importsIn(file, text).filter(isForeignPackage)).toHaveLength(1);
  });

  test.each([
    ["Excel", "const run = () => Excel.run(async () => undefined);"],
    ["Excel", "export type Cells = Excel.Range;"],
    ["document", "const body = () => document.body;"],
    ["fetch", 'const send = () => fetch("https://example.org");'],
    ["React", "export const tree: React.ReactNode = null;"],
  ])("the global %s in: %s", (name, text) => {
    expect(globalsIn("planted.ts", text)).toEqual([name]);
  });

  test("no global in a name of our own", () => {
    const text = "const mean = ({ window }: { window: number }) => window; const of = { document: 1 }; of.document;";
    expect(globalsIn("planted.ts", text)).toEqual([]);
  });
});

test("every method of the engine has its test", () => {
  const missing = sources
    .filter((file) => file.startsWith("src/engine/") && exportsFunction(file))
    .map((file) => file.replace(/^src\//, "tests/").replace(/\.ts$/, ".test.ts"))
    .filter((test) => !files.includes(test));
  expect(missing).toEqual([]);
});

test("nothing of a workbook reaches a log: the page of the host tells its own failures, and no room of the add-in speaks", () => {
  const speaks = files
    .filter((file) => /^src\/.*\.(tsx?|mjs|js)$/.test(file))
    .filter((file) => !file.startsWith("src/batch/") && !/^src\/host\/(start|ready|serve)\.mjs$/.test(file))
    .filter((file) => {
      const text = readFileSync(join(root, file), "utf8");
      return /\bconsole\b/.test(file.startsWith("src/host/page/") ? text.replaceAll("console.error(error)", "") : text);
    });
  expect(speaks).toEqual([]);
});

test("text becomes markup nowhere but in the drawing of charts, which escapes it", () => {
  const markup = /dangerouslySetInnerHTML|\.innerHTML\b|insertAdjacentHTML|document\.write|\beval\(|new Function\(/;
  const makers = sources.filter((file) => markup.test(readFileSync(join(root, file), "utf8")));
  expect(makers).toEqual(["src/host/page/charts/chartLayer.ts"]);
});

test("what we load is pinned: every package by its version, and all of them by the lock file", () => {
  const { dependencies, devDependencies } = JSON.parse(readFileSync(join(root, "package.json"), "utf8"));
  const loose = Object.entries({ ...dependencies, ...devDependencies }).filter(
    ([, version]) => !/^\d+\.\d+\.\d+$/.test(String(version)),
  );
  expect(loose).toEqual([]);
  const { packages } = JSON.parse(readFileSync(join(root, "package-lock.json"), "utf8"));
  const unproven = Object.entries<{ integrity?: string; link?: boolean; inBundle?: boolean }>(packages)
    .filter(([path, { integrity, link, inBundle }]) => path !== "" && !integrity && !link && !inBundle)
    .map(([path]) => path);
  expect(unproven).toEqual([]);
});

test("the top level holds what it should and nothing else", () => {
  const expected = [
    "DEVELOPERS.md",
    "LICENSE",
    "README.md",
    "manifest",
    "package-lock.json",
    "package.json",
    "sample-workbooks",
    "src",
    "tests",
    "tsconfig.json",
    "webpack.config.js",
  ];
  const present = new Set(files.map((file) => file.split("/")[0] ?? ""));
  expect([...present].filter((name) => !name.startsWith(".")).sort()).toEqual(expected);
});

test("there is no room for things without a meaning", () => {
  const nameless = /(^|\/)(utils?|common|helpers?|types|misc|lib)(\/|\.tsx?$)/;
  expect(files.filter((file) => nameless.test(file))).toEqual([]);
});

test("no file names the machine it was written on", () => {
  // Put together here, so that this file does not name them either.
  const paths = ["work", "root", "tmp", "home"].map((folder) => `/${folder}/`);
  const hosts = [["registry", "npmjs", "org"].join("."), "../" + "shared"];
  const named = files
    .filter((file) => !/\.(xlsx|png)$/.test(file))
    .flatMap((file) => {
      const text = readFileSync(join(root, file), "utf8");
      const isPath = (word: string) => new RegExp(`(^|[\\s"'\`(=:])${word}`, "m").test(text);
      return [...paths.filter(isPath), ...hosts.filter((word) => text.includes(word))].map((it) => `${file}: ${it}`);
    });
  expect(named).toEqual([]);
});

function importsIn(file: string, text: string): Import[] {
  return ts.preProcessFile(text, true, true).importedFiles.map(({ fileName }) => ({ file, of: fileName }));
}

function isAgainstArrows({ file, of }: Import): boolean {
  const target = relative(join(root, "src"), join(root, dirname(file), of))
    .split(sep)
    .join("/");
  const room = roomOf(file);
  const allowed = [room, ...(arrows[room] ?? [])];
  return !allowed.some((place) => target === place || target.startsWith(`${place}/`));
}

const isForeignPackage = ({ file, of }: Import): boolean => !libraries[roomOf(file)]?.test(of);

/** Constants and shapes need no test of their own; what computes does. */
const exportsFunction = (file: string): boolean =>
  /^export (async )?function |^export const \w+( = |: [^=]*= )(<[^(]*>)?\(/m.test(
    readFileSync(join(root, file), "utf8"),
  );

const told = ({ file, of }: Import): string => `${file} imports ${of}`;

function withoutSlash(line: string): string {
  return line.trim().replace(/\/$/, "");
}

function filesBelow(folder: string): string[] {
  return readdirSync(folder, { withFileTypes: true })
    .filter((entry) => !leftOut.has(entry.name))
    .flatMap((entry) => {
      const path = join(folder, entry.name);
      return entry.isDirectory() ? filesBelow(path) : [relative(root, path).split(sep).join("/")];
    });
}

/** Which of the guarded globals a file names, as a value or in a type, without having declared the name itself. */
function globalsIn(file: string, text: string): string[] {
  const kind = extname(file) === ".tsx" ? ts.ScriptKind.TSX : ts.ScriptKind.TS;
  const source = ts.createSourceFile(file, text, ts.ScriptTarget.Latest, true, kind);
  const named = new Set<string>();
  const declared = new Set<string>();
  const visit = (node: ts.Node): void => {
    if (ts.isIdentifier(node) && node.text in globals && Object.hasOwn(globals, node.text)) {
      const { parent } = node;
      const isMember =
        (ts.isPropertyAccessExpression(parent) && parent.name === node) ||
        (ts.isQualifiedName(parent) && parent.right === node) ||
        (ts.isPropertyAssignment(parent) && parent.name === node) ||
        (ts.isPropertySignature(parent) && parent.name === node) ||
        (ts.isJsxAttribute(parent) && parent.name === node);
      const isDeclaration =
        (ts.isVariableDeclaration(parent) ||
          ts.isBindingElement(parent) ||
          ts.isParameter(parent) ||
          ts.isFunctionDeclaration(parent)) &&
        parent.name === node;
      if (isDeclaration || ts.isImportSpecifier(parent) || ts.isImportClause(parent)) declared.add(node.text);
      else if (!isMember) named.add(node.text);
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return [...named].filter((name) => !declared.has(name));
}
