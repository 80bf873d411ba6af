import type { Host } from "../../src/host";
import { readResults } from "../../src/reading/readResults";
import { recogniseColumns } from "../../src/reading/recogniseColumns";
import { readSelection } from "../../src/sheet/readSelection";
import { addSheet, openWorkbook } from "./openWorkbook";

/** What coaches' sheets hold, read from the cells of a workbook, where dates are serial numbers with a format. */

let host: Host;

beforeEach(() => {
  host = openWorkbook();
});

afterEach(() => host.dispose());

async function readingOf(rows: readonly (readonly (string | number)[])[]) {
  await addSheet("Tests", rows as (string | number)[][]);
  host.select(`Tests!A1:${"ABCDE"[rows[0]!.length - 1]}${rows.length}`);
  const selection = await readSelection();
  if (selection.kind !== "cells") throw new Error("Nothing was read.");
  return readResults(selection.grid, recogniseColumns(selection.grid));
}

it("brings two units of one column into one, and tells what it read so and what it cannot bring along", async () => {
  const { results, remarks } = await readingOf([
    ["Athlete", "Hop"],
    ["Ada", "152 cm"],
    ["Bo", "1.61 m"],
    ["Cleo", "149 cm"],
    ["Dag", "12 kg"],
    ["Eli", 150],
  ]);
  expect(results.map(({ athlete, value, unit }) => [athlete, value, unit])).toEqual([
    ["Ada", 152, "cm"],
    ["Bo", 161, "cm"],
    ["Cleo", 149, "cm"],
    ["Eli", 150, "cm"],
  ]);
  const left = remarks.filter(({ leftOut }) => leftOut);
  expect(left.map(({ cell }) => cell)).toEqual(["B5"]);
  expect(left[0]!.why).toMatch(/kg.*cm/);
  expect(remarks.find(({ cell }) => cell === "B3")?.why).toMatch(/161 cm/);
});

it("reads one day however it is given: as a date, as its serial number, as text", async () => {
  const { results, remarks } = await readingOf([
    ["Date", "Athlete", "Hop (cm)"],
    ["2026-08-11", "Ada", 152],
    [46_245, "Bo", 161],
    ["11.8.2026", "Cleo", 149],
    ["11 Aug 2026", "Dag", 155],
    ["last Tuesday", "Eli", 150],
  ]);
  expect(results.filter(({ date }) => date === "2026-08-11").map(({ athlete }) => athlete)).toEqual([
    ...["Ada", "Bo", "Cleo", "Dag"],
  ]);
  expect(remarks.map(({ cell }) => cell)).toContain("A6");
});
