import { readFileSync, writeFileSync } from "node:fs";
import { join, sep } from "node:path";
import ts from "typescript";
import { offeredMembers } from "../../../src/host";

const root = join(__dirname, "../../..");

/** What every object of the API has by itself. */
const ofEveryObject = ["context", "isNullObject", "load", "set", "toJSON", "track", "untrack"];

/** All members of classes of the `Excel` namespace that the add-in's code names, found by the compiler's own eyes. */
function usedMembers(): Map<string, string> {
  const config = ts.readConfigFile(join(root, "tsconfig.json"), ts.sys.readFile).config;
  const { options } = ts.parseJsonConfigFileContent(config, ts.sys, root);
  const rooms = ["sheet", "pane", "functions"].map((room) => join(root, "src", room) + sep);
  const files = ts.sys
    .readDirectory(join(root, "src"), [".ts", ".tsx"])
    .filter((file) => rooms.some((room) => file.startsWith(room.split(sep).join("/"))));
  const program = ts.createProgram(files, { ...options, noEmit: true });
  const checker = program.getTypeChecker();
  const used = new Map<string, string>();
  for (const file of files) {
    const source = program.getSourceFile(file)!;
    const visit = (node: ts.Node): void => {
      if (ts.isPropertyAccessExpression(node)) {
        const declaration = checker.getSymbolAtLocation(node.name)?.declarations?.[0];
        const owner = declaration?.parent;
        if (owner && ts.isClassDeclaration(owner) && owner.name && isOfExcel(owner)) {
          used.set(`${owner.name.text}.${node.name.text}`, file.slice(root.length + 1));
        }
      }
      ts.forEachChild(node, visit);
    };
    visit(source);
  }
  return used;
}

const isOfExcel = (owner: ts.Node): boolean => {
  const module = owner.parent?.parent;
  return module !== undefined && ts.isModuleDeclaration(module) && module.name.text === "Excel";
};

test("every member the add-in names is offered", () => {
  const offered = offeredMembers();
  const used = [...usedMembers()].filter(([member]) => !member.startsWith("RequestContext."));
  expect(used.length).toBeGreaterThan(20);
  const missing = used.filter(([member]) => {
    const [className = "", name = ""] = member.split(".");
    return !ofEveryObject.includes(name) && !offered.get(className)?.includes(name);
  });
  expect(missing).toEqual([]);
}, 60_000);

/** A row without the padding that the formatter gives its columns; the row of dashes is the same at any width. */
const unpadded = (row: string): string =>
  row.replace(/ *\| */g, "|").replace(/-+/g, (dashes) => (dashes.length < 3 ? dashes : "---"));

/** Worksheet functions are named as in formulas; a list of them all would say no more. */
const worksheetFunctions = (members: readonly string[]): string =>
  `${members.length} worksheet functions, from ${members[0]} to ${members.at(-1)}`;

test("the table in DEVELOPERS.md is that of the code (WRITE_TABLES=1 writes it anew, `npm run fix` pads it)", () => {
  const path = join(root, "DEVELOPERS.md");
  const text = readFileSync(path, "utf8");
  const [begin, end] = ["<!-- offered members: begin -->", "<!-- offered members: end -->"];
  const table = [
    "| class | members |",
    "| --- | --- |",
    ...[...offeredMembers()]
      .sort(([a], [b]) => a.localeCompare(b))
      .map(
        ([name, members]) => `| ${name} | ${name === "Functions" ? worksheetFunctions(members) : members.join(", ")} |`,
      ),
  ];
  const [before, rest] = text.split(begin);
  const [standing, after] = rest?.split(end) ?? [];
  expect(after).toBeDefined();
  if (process.env.WRITE_TABLES) writeFileSync(path, `${before}${begin}\n\n${table.join("\n")}\n\n${end}${after}`);
  else expect(standing?.trim().split("\n").map(unpadded)).toEqual(table.map(unpadded));
});
