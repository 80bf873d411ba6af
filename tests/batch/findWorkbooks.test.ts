import { mkdirSync, writeFileSync } from "node:fs";
import { relative } from "node:path";
import { findWorkbooks, isPattern } from "../../src/batch/findWorkbooks";
import { folderOfOwn } from "./folder";

const at = folderOfOwn();

beforeEach(() => {
  for (const folder of [["u16"], ["u18", "spring"], ["out"], [".hidden"]])
    mkdirSync(at(...folder), { recursive: true });
  for (const file of ["a.xlsx", "B.XLSX", "a.csv", "~$a.xlsx", ".a.xlsx", "squad [1].xlsx", "what?.xlsx"]) touch(file);
  for (const folder of ["u16", "out", ".hidden"]) touch(folder, "c1.xlsx");
  touch("u18", "spring", "c2.xlsx");
});

const touch = (...names: string[]) => writeFileSync(at(...names), "");
const found = (...pattern: string[]) =>
  findWorkbooks(at(...pattern), at("out")).map((path) => relative(at(), path).replaceAll("\\", "/"));

it("takes * and ? in any part of a path, whatever the case, and ** for any depth", () => {
  expect(found("*.xlsx")).toEqual(["B.XLSX", "a.xlsx", "squad [1].xlsx", "what?.xlsx"]);
  expect(found("u??", "*.xlsx")).toEqual(["u16/c1.xlsx"]);
  expect(found("**", "c?.xlsx")).toEqual(["u16/c1.xlsx", "u18/spring/c2.xlsx"]);
  expect(found("u18", "**")).toEqual(["u18/spring/c2.xlsx"]);
});

it("leaves out hidden files, those of open workbooks, and the folder of the results", () => {
  expect(found("**", "*.xlsx").filter((path) => /out|hidden|~|^\./.test(path))).toEqual([]);
});

it("finds nothing where nothing is", () => {
  expect(found("nowhere", "*.xlsx")).toEqual([]);
});

it("takes a file whose own name looks like a pattern as that file", () => {
  expect(isPattern(at("what?.xlsx"))).toBe(false);
  expect(isPattern(at("squad [1].xlsx"))).toBe(false);
  expect(isPattern(at("*.xlsx"))).toBe(true);
});
