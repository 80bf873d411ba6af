import { cleanup, render, screen, within } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { FunctionsScreen } from "../../src/pane/screens/functions/FunctionsScreen";
import { searchFunctions } from "../../src/pane/screens/functions/searchFunctions";
import type { Deed } from "../../src/sheet/deed";
import { HostRefusal } from "../../src/sheet/hostRefusal";
import { insertExample } from "../../src/sheet/insertExample";
import { type ActiveCall, readActiveCall } from "../../src/sheet/readActiveCall";
import { repairFormulas } from "../../src/sheet/repairFormulas";
import { replaceByValues } from "../../src/sheet/replaceByValues";
import { functionReference } from "../functions/builtReference";
import { installCustomFunctionsErrors } from "../functions/customFunctionsErrors";

jest.mock("../../src/functions/reference", () => jest.requireActual("../functions/builtReference"));
jest.mock("../../src/sheet/watchWorkbook", () => ({ watchWorkbook: async () => async () => undefined }));
jest.mock("../../src/sheet/insertExample");
jest.mock("../../src/sheet/repairFormulas");
jest.mock("../../src/sheet/replaceByValues");
jest.mock("../../src/sheet/readActiveCall", () => ({
  ...jest.requireActual("../../src/sheet/readActiveCall"),
  readActiveCall: jest.fn(),
}));

const deed: Deed = { what: "Did it", steps: [] };
const onDeed = jest.fn();

beforeAll(installCustomFunctionsErrors);
beforeEach(() => {
  jest.resetAllMocks();
  jest.mocked(readActiveCall).mockResolvedValue(null);
});
afterEach(cleanup);

const call = (said: Partial<ActiveCall>): ActiveCall => ({
  address: "Hops!F4",
  id: "TRIALSCORE",
  arguments: [{ text: "B4:D4", cells: [[180, "182 cm", null]] }],
  offset: { row: 0, column: 0 },
  error: "#VALUE!",
  ...said,
});

async function openWith(said: Partial<ActiveCall>) {
  jest.mocked(readActiveCall).mockResolvedValue(call(said));
  render(<FunctionsScreen onDeed={onDeed} />);
  return within(await screen.findByRole("region", { name: "This cell" }));
}

describe("searching the reference", () => {
  const found = (query: string) =>
    searchFunctions(functionReference, query).flatMap(({ functions }) => functions.map(({ id }) => id));

  it.each([
    ["hop", "ASYMMETRY"],
    ["left right", "STRONGERSIDE"],
    ["noise", "TRIALNOISE"],
    ["NOISE limit", "NOISELIMIT"],
    ["1rm", "ONEREPMAX"],
    ["icc", "ICC"],
    ["contact times", "RSI"],
  ])("%s finds %s", (query, id) => expect(found(query)).toContain(id));

  it("needs every word, finds nothing for none of ours, and all for nothing", () => {
    expect(found("left elephant")).toEqual([]);
    expect(found("  ")).toHaveLength(functionReference.length);
    expect(found("noise").length).toBeLessThan(functionReference.length / 2);
  });
});

describe("the list", () => {
  it("narrows while the coach types, and tells how many are left", async () => {
    render(<FunctionsScreen onDeed={onDeed} />);
    await userEvent.type(screen.getByRole("searchbox"), "noiselimit");
    expect(screen.getByText("1 found")).toBeTruthy();
    expect(screen.getByText("=TAPELINE.NOISELIMIT", { exact: false, selector: "code" })).toBeTruthy();
    expect(screen.queryByText("RSI")).toBeNull();
    await userEvent.clear(screen.getByRole("searchbox"));
    await userEvent.type(screen.getByRole("searchbox"), "elephant");
    expect(screen.getByText(/Nothing found/)).toBeTruthy();
  });

  async function pressInsert() {
    render(<FunctionsScreen onDeed={onDeed} />);
    await userEvent.type(screen.getByRole("searchbox"), "noiselimit");
    await userEvent.click(screen.getByRole("button", { name: "Put the example into the active cell" }));
  }

  it("puts an example into the sheet with the room its answer takes, and hands the deed on", async () => {
    jest.mocked(insertExample).mockResolvedValue({ kind: "written", address: "Hops!F4:F6", deed });
    await pressInsert();
    expect(insertExample).toHaveBeenCalledWith(expect.stringMatching(/^=TAPELINE\.NOISELIMIT\(/), {
      rows: 3,
      columns: 1,
    });
    expect(await screen.findByText(/Written into Hops!F4:F6/)).toBeTruthy();
    expect(onDeed).toHaveBeenCalledWith(deed);
  });

  it("says what is in the way, or what the workbook refused, and hands on nothing", async () => {
    jest.mocked(insertExample).mockResolvedValueOnce({ kind: "inTheWay", what: "cells", address: "Hops!F5" });
    await pressInsert();
    expect(await screen.findByText(/Hops!F5 is not empty/)).toBeTruthy();
    jest.mocked(insertExample).mockRejectedValueOnce(new HostRefusal("AccessDenied", "no"));
    await userEvent.click(screen.getByRole("button", { name: "Put the example into the active cell" }));
    expect(await screen.findByText(/is protected/)).toBeTruthy();
    expect(onDeed).not.toHaveBeenCalled();
  });
});

describe("this cell", () => {
  it("explains what it is for, where there is no formula of ours", async () => {
    render(<FunctionsScreen onDeed={onDeed} />);
    expect(await screen.findByText(/Select a cell with a TAPELINE formula/)).toBeTruthy();
  });

  it("shows what is asked, part by part, and the reason of the error in words", async () => {
    const cell = await openWith({});
    expect(await cell.findByText("“182 cm” is text. Type it as a number.")).toBeTruthy();
    expect(cell.getByText("Hops!F4 asks TRIALSCORE")).toBeTruthy();
    expect(cell.getByText("B4:D4")).toBeTruthy();
    expect(cell.getAllByText("left out")).toHaveLength(2);
  });

  it("shows no reason where the cell shows a value", async () => {
    const cell = await openWith({ error: null, arguments: [{ text: "B4", cells: [[180]] }] });
    expect(await cell.findByText("Hops!F4 asks TRIALSCORE")).toBeTruthy();
    expect(cell.queryByText(/Why it shows/)).toBeNull();
  });

  it("gives the reason of the very cell, where the answer spilt", async () => {
    const cell = await openWith({
      id: "JUMPHEIGHT",
      arguments: [{ text: "B4:B6", cells: [[0.5], [0.48], ["fast"]] }],
      offset: { row: 2, column: 0 },
    });
    expect(await cell.findByText(/“fast” is text/)).toBeTruthy();
  });

  it.each([
    ["#NAME?", /Repair the formulas/],
    ["#SPILL!", /more cells than are free/],
    ["#REF!", /have been deleted/],
    ["#FIELD!", /comes from a cell/],
  ])("says what %s means without asking the function", async (error, words) => {
    const cell = await openWith({ error, arguments: [{ text: "B4", cells: [[180]] }] });
    expect(await cell.findByText(words)).toBeTruthy();
  });

  it("admits where it cannot find the reason, or where the function is not the cause", async () => {
    const cell = await openWith({ arguments: [{ text: "MAX(B1:B3)", cells: null }] });
    expect(await cell.findByText(/MAX\(B1:B3\) is worked out by another formula/)).toBeTruthy();
    cleanup();
    const other = await openWith({ arguments: [{ text: "B4", cells: [[180]] }] });
    expect(await other.findByText(/The function itself answers now/)).toBeTruthy();
  });
});

describe("repair and share", () => {
  it("repairs, tells what was done and what is still not known", async () => {
    jest.mocked(repairFormulas).mockResolvedValue({ count: 2, cells: ["Hops!F4:F5"], still: ["Hops!F5"], deed });
    render(<FunctionsScreen onDeed={onDeed} />);
    await userEvent.click(screen.getByRole("button", { name: "Repair formulas" }));
    expect(await screen.findByText("2 formulas were written anew: Hops!F4:F5.")).toBeTruthy();
    expect(screen.getByText(/Still not known: Hops!F5/)).toBeTruthy();
    expect(onDeed).toHaveBeenCalledWith(deed);
  });

  it("hands on no deed where nothing was to be done", async () => {
    jest.mocked(repairFormulas).mockResolvedValue({ count: 0, cells: [], still: [], deed });
    render(<FunctionsScreen onDeed={onDeed} />);
    await userEvent.click(screen.getByRole("button", { name: "Repair formulas" }));
    expect(await screen.findByText(/Nothing was changed/)).toBeTruthy();
    expect(onDeed).not.toHaveBeenCalled();
  });

  it("replaces where the coach says, and names the errors", async () => {
    const errors = [
      { cell: "Hops!F9", error: "#N/A", formulaLeft: true },
      { cell: "Hops!G7", error: "#N/A", formulaLeft: false },
    ];
    jest.mocked(replaceByValues).mockResolvedValue({ count: 1, cells: ["Hops!G4:G8"], errors, deed });
    render(<FunctionsScreen onDeed={onDeed} />);
    await userEvent.selectOptions(screen.getByRole("combobox", { name: "Where" }), "On this sheet");
    await userEvent.click(screen.getByRole("button", { name: "Replace formulas by values" }));
    expect(replaceByValues).toHaveBeenCalledWith("sheet");
    expect(await screen.findByText("1 formula was replaced: Hops!G4:G8.")).toBeTruthy();
    expect(screen.getByText(/Left as formulas.*Hops!F9 \(#N\/A\)/)).toBeTruthy();
    expect(screen.getByText(/among the values now: Hops!G7/)).toBeTruthy();
  });
});
