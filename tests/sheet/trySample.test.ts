import { asymmetry } from "../../src/analyses/asymmetry/asymmetry";
import { describe as describeReport } from "../../src/analyses/describe";
import type { Report } from "../../src/analyses/report";
import { reportKey } from "../../src/analyses/reportKey";
import { gridAddress } from "../../src/reading/address";
import { usesOf } from "../../src/reading/columns";
import { readResults } from "../../src/reading/readResults";
import { recogniseColumns } from "../../src/reading/recogniseColumns";
import { recallColumnMap, rememberColumnMap } from "../../src/sheet/columnMaps";
import { markCells } from "../../src/sheet/marks";
import { readSelection } from "../../src/sheet/readSelection";
import { takeBack } from "../../src/sheet/takeBack";
import { findTrySample, removeTrySample, startTrySample } from "../../src/sheet/trySample";
import { writeReport } from "../../src/sheet/writeReport";
import { noBackground } from "../../src/store/background";
import { tryRows } from "../../src/store/trySample";
import { failAt } from "./failAt";
import { addSheet, openWorkbook, valuesAt } from "./openWorkbook";
import { reportOf } from "./reportOf";
import { workbookImage } from "./workbookImage";

let host: ReturnType<typeof openWorkbook>;

beforeEach(async () => {
  host = openWorkbook();
  await addSheet("Coach's own", [
    ["Athlete", "Left (cm)"],
    ["A", 150],
  ]);
  await select("Coach's own", "B2");
});
afterEach(() => host.dispose());

const select = (sheet: string, address: string) =>
  Excel.run(async (context) => {
    const worksheet = context.workbook.worksheets.getItem(sheet);
    worksheet.activate();
    worksheet.getRange(address).select();
    await context.sync();
  });

const selected = () =>
  Excel.run(async (context) => {
    const range = context.workbook.getSelectedRange().load("address");
    await context.sync();
    return range.address;
  });

/** What is asked of the cells that are selected, as the pane asks it. */
async function askAsymmetry() {
  const cells = await readSelection();
  if (cells.kind !== "cells") throw new Error("Nothing is selected.");
  const map = recogniseColumns(cells.grid);
  const reading = readResults(cells.grid, map);
  const test = reading.results[0]!.test;
  const report = describeReport({
    ...{ analysis: asymmetry, reading, uses: usesOf(map), test, settings: asymmetry.settings.parse({}) },
    ...{ background: noBackground, source: gridAddress(cells.grid), date: "2026-08-11" },
  });
  if (!report.ok) throw new Error(report.reasons.map(({ message }) => message).join(" "));
  return { cells, map, reading, report: report.value, key: reportKey(asymmetry, cells.grid, cells.sheetId, map, test) };
}

/** All that the guided try does, and what a coach may do beside it. */
async function tryEverything(): Promise<Report> {
  await startTrySample();
  const { cells, map, report, key } = await askAsymmetry();
  await writeReport(report, key);
  const place = `${cells.sheetId}!A4`;
  const headings = map.columns.map(({ heading }) => heading);
  await rememberColumnMap(place, headings, map);
  expect(await recallColumnMap(place, headings)).not.toBeNull();
  await markCells([{ cell: "B5", why: "Look at it." }], cells.grid.sheet);
  return report;
}

describe("the sample", () => {
  it("is selected when it is made, and is read without a remark", async () => {
    await startTrySample();
    const { reading } = await askAsymmetry();
    expect(reading.athletes).toHaveLength(tryRows.length);
    expect(reading.results).toHaveLength(tryRows.length * 6);
    expect(reading.remarks).toEqual([]);
  });

  it("has one athlete beyond the noise of the test", async () => {
    await startTrySample();
    const { report } = await askAsymmetry();
    const verdict = report.table.columns.findIndex(({ key }) => key === "verdict");
    const beyond = report.table.rows.filter((row) => String(row[verdict]).includes("Beyond noise"));
    expect(beyond.map(([athlete]) => athlete)).toEqual(["Eldrid Kveldsmo"]);
  });

  it("is found with the sheets of its answers, and by no other", async () => {
    expect(await findTrySample()).toBeNull();
    await writeReport(reportOf([["A", 1, "x"]]), "sample|{other}|A1|");
    const report = await tryEverything();
    expect(await findTrySample()).toEqual({ sheet: "Tapeline sample", address: "A4:G14", answers: [report.sheet] });
  });
});

describe("removing the sample", () => {
  it("leaves the workbook as it was, whatever was done with it", async () => {
    const before = await workbookImage(host);
    await tryEverything();
    expect(await workbookImage(host)).not.toBe(before);
    await removeTrySample();
    expect(await workbookImage(host)).toBe(before);
    expect(await selected()).toBe("'Coach''s own'!B2");
  });

  it("leaves what the coach has written and remembered beside it, before and since", async () => {
    const own = { before: reportOf([["A", 1, "x"]]), since: reportOf([["B", 2, "y"]]) };
    await writeReport(own.before, "sample|{one}|A1|");
    await tryEverything();
    await removeTrySample();
    const once = await workbookImage(host);
    await tryEverything();
    await writeReport(own.since, "sample|{two}|A1|");
    await removeTrySample();
    expect(await valuesAt("Sample", "A7")).toEqual([["A"]]);
    expect(await valuesAt("Sample 2", "A7")).toEqual([["B"]]);
    expect(once).toContain("sample|{one}|A1|");
    expect(await workbookImage(host)).toContain("sample|{two}|A1|");
    expect(await findTrySample()).toBeNull();
  });

  it("does nothing where there is none", async () => {
    const before = await workbookImage(host);
    expect([...(await removeTrySample())]).toEqual([]);
    expect(await workbookImage(host)).toBe(before);
  });

  it("is also taken back as the last thing written", async () => {
    const before = await workbookImage(host);
    const { deed } = await startTrySample();
    await takeBack(deed);
    expect(await workbookImage(host)).toBe(before);
  });

  it("is not needed where making it failed half way", async () => {
    const before = await workbookImage(host);
    const { error } = await failAt(12, "instead", startTrySample);
    expect(error).not.toBeNull();
    expect(await workbookImage(host)).toBe(before);
  });
});
