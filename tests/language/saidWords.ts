import { readdirSync, readFileSync } from "node:fs";
import { dirname, join, relative, resolve } from "node:path";
import ts from "typescript";

/** Every place in the sources where something is said, and what a file loads before anything of it runs. */

const src = join(__dirname, "../../src");
const rooms = ["engine", "reading", "store", "analyses", "programme", "functions", "sheet", "pane"];

export type Said = {
  readonly file: string;
  readonly line: number;
  /** As the catalogues list it. */
  readonly sentence: string;
  /** Said once, when its file is loaded, rather than each time a function is called. */
  readonly onLoading: boolean;
};

export const sources: readonly string[] = rooms.flatMap((room) =>
  readdirSync(join(src, room), { recursive: true, encoding: "utf8" })
    .filter((name) => /\.tsx?$/.test(name) && !name.endsWith(".d.ts"))
    .map((name) => join(src, room, name)),
);

export const parsed = (path: string): ts.SourceFile =>
  ts.createSourceFile(path, readFileSync(path, "utf8"), ts.ScriptTarget.Latest, true);

export function saidIn(path: string): Said[] {
  const file = parsed(path);
  const found: Said[] = [];
  visit(file, true);
  return found;

  function visit(node: ts.Node, onLoading: boolean): void {
    if (ts.isTaggedTemplateExpression(node) && node.tag.getText() === "say") {
      found.push({
        file: relative(src, path),
        line: file.getLineAndCharacterOfPosition(node.getStart()).line + 1,
        sentence: sentence(node.template),
        onLoading,
      });
    }
    const later = ts.isFunctionLike(node);
    ts.forEachChild(node, (child) => visit(child, onLoading && !later));
  }
}

function sentence(template: ts.TemplateLiteral): string {
  if (ts.isNoSubstitutionTemplateLiteral(template)) return template.text;
  return template.templateSpans.reduce(
    (text, span, place) => `${text}{${place}}${span.literal.text}`,
    template.head.text,
  );
}

/** The files that are loaded with `entry`, itself included: its imports and theirs, but those fetched when wanted. */
export function loadedWith(entry: string): Set<string> {
  const loaded = new Set<string>();
  const open = [join(src, entry)];
  for (let path = open.pop(); path !== undefined; path = open.pop()) {
    if (loaded.has(path)) continue;
    loaded.add(path);
    for (const statement of parsed(path).statements) {
      const isValue =
        (ts.isImportDeclaration(statement) && !statement.importClause?.isTypeOnly) ||
        (ts.isExportDeclaration(statement) && !statement.isTypeOnly);
      const from = isValue && statement.moduleSpecifier;
      if (from && ts.isStringLiteral(from) && from.text.startsWith(".")) open.push(...found(path, from.text));
    }
  }
  return loaded;
}

function found(from: string, specifier: string): string[] {
  const base = resolve(dirname(from), specifier);
  return [`${base}.ts`, `${base}.tsx`, join(base, "index.ts")].filter((path) => ts.sys.fileExists(path)).slice(0, 1);
}
