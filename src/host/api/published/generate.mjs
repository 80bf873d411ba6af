/**
 * Reads the published typings of the Excel JavaScript API and writes what the host must know of all of it:
 * every class with its members and the requirement set each came with (`members.ts`), and every enumeration
 * (`enumerations.ts`). Run it after `@types/office-js` is updated: `node src/host/api/published/generate.mjs`.
 */
import { readFileSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import ts from "typescript";

const typings = createRequire(import.meta.url).resolve("@types/office-js/index.d.ts");
const source = ts.createSourceFile("office.d.ts", readFileSync(typings, "utf8"), ts.ScriptTarget.Latest, true);

/** Members every proxy has by itself. */
const ownOfEveryProxy = new Set(["context", "isNullObject", "load", "toJSON", "set", "track", "untrack"]);
const leftOut = new Set(["RequestContext", "Session"]);

/** "ExcelApi 1.9" -> "1.9"; sets of one platform keep their name; preview members have none. */
function requirementSet(node) {
  const found = /\[Api set: (\w+) ([\d.]+\d|BETA)/.exec(node.getFullText().split("*/").slice(-2)[0] ?? "");
  if (!found) return "";
  return found[1] === "ExcelApi" ? found[2] : `${found[1]}/${found[2]}`;
}

const classes = {};
const enumerations = {};
for (const module of source.statements) {
  if (!ts.isModuleDeclaration(module) || module.name.text !== "Excel") continue;
  for (const statement of module.body.statements) {
    if (ts.isClassDeclaration(statement) && !leftOut.has(statement.name.text)) {
      const members = {};
      classes[statement.name.text] = members;
      for (const member of statement.members) {
        const name = member.name?.getText();
        if (!name || ownOfEveryProxy.has(name) || name in members) continue;
        members[name] = `${ts.isMethodDeclaration(member) ? "()" : ""}@${requirementSet(member)}`;
      }
    }
    if (ts.isEnumDeclaration(statement)) {
      const values = {};
      enumerations[statement.name.text] = values;
      statement.members.forEach((member, index) => {
        const given = member.initializer;
        values[member.name.text] =
          given && ts.isStringLiteral(given) ? given.text : given ? Number(given.getText()) : index;
      });
    }
  }
}

const header = "// Written by generate.mjs from @types/office-js; change that, not this.\n\n";
const here = (file) => new URL(file, import.meta.url);
writeFileSync(
  here("members.ts"),
  `${header}/** Class -> its published members: "name@set", methods "name()@set"; a member without a set is a preview. */
export const publishedMembers: Readonly<Record<string, string>> = ${JSON.stringify(
    Object.fromEntries(
      Object.entries(classes).map(([name, members]) => [
        name,
        Object.entries(members)
          .map(([member, rest]) => member + rest)
          .join(" "),
      ]),
    ),
    null,
    2,
  )};\n`,
);
writeFileSync(
  here("enumerations.ts"),
  `${header}export const enumerations: Readonly<Record<string, Readonly<Record<string, string | number>>>> = ${JSON.stringify(enumerations, null, 2)};\n`,
);
