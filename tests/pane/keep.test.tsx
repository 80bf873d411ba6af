import { act, cleanup, fireEvent, screen, waitFor, within } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import KeepScreen from "../../src/pane/screens/KeepScreen";
import { words } from "../../src/pane/words";
import { keepWords } from "../../src/pane/words/keep";
import { recallColumnMap, rememberColumnMap } from "../../src/sheet/columnMaps";
import { HostRefusal } from "../../src/sheet/hostRefusal";
import { type KeptOutcome, keepResults } from "../../src/sheet/keepResults";
import { type EntrySheetReading, readEntrySheets } from "../../src/sheet/readEntrySheets";
import { readSelection } from "../../src/sheet/readSelection";
import { planEntrySheet } from "../../src/store/entrySheet";
import { gridOf } from "../reading/gridOf";
import { batteryTest, keptResult, squadMember } from "../sheet/storeRows";
import { showInWorkbook, tellEdit, watchedByHand, workbookHolds } from "./shownIn";

jest.mock("../../src/sheet/readBackground");
jest.mock("../../src/sheet/watchWorkbook");
jest.mock("../../src/sheet/takeBack");
jest.mock("../../src/sheet/goTo");
jest.mock("../../src/sheet/columnMaps");
jest.mock("../../src/sheet/readSelection");
jest.mock("../../src/sheet/readEntrySheets");
jest.mock("../../src/sheet/keepResults");

const go = jest.fn();

/** There is something to take back only where something was written. */
const step = { kind: "restoreSetting", key: "sample", value: undefined } as const;

const outcome = (said: Partial<KeptOutcome> = {}): KeptOutcome => ({
  ...{
    added: 0,
    changed: 0,
    same: 0,
    clashes: [],
    inTheWay: null,
    cancelled: false,
    deed: { what: "Kept results", steps: said.added || said.changed ? [step] : [] },
  },
  ...said,
});

beforeEach(() => {
  jest.resetAllMocks();
  watchedByHand();
  workbookHolds({}, ["squad", "battery", "results"]);
  jest.mocked(recallColumnMap).mockResolvedValue(null);
  jest.mocked(rememberColumnMap).mockResolvedValue();
  jest.mocked(readSelection).mockResolvedValue({ kind: "empty", sheet: "Read me", address: "A1" });
  jest.mocked(readEntrySheets).mockResolvedValue([]);
});
afterEach(cleanup);

const plan = planEntrySheet({
  date: "2026-08-13",
  tests: [batteryTest("Single-leg hop", { unit: "cm", sides: 2 })],
  athletes: [squadMember("Ane Berg"), squadMember("Liv Dal")],
});

/** An entry sheet with these left and right results, as it would be read. */
const entrySheet = (...rows: (readonly (string | number | null)[])[]): EntrySheetReading => ({
  sheet: plan.sheet,
  sheetId: "entry",
  date: plan.date,
  grid: gridOf([
    plan.columns.map(({ heading }) => heading),
    ...rows.map((cells, row) => [plan.athletes[row]!.athlete, null, ...cells]),
  ]),
  map: plan.map,
  missing: [],
});

/** Two hops typed, and the button that keeps them pressed. */
async function keepTwo() {
  jest.mocked(readEntrySheets).mockResolvedValue([entrySheet([150, 152])]);
  showInWorkbook(<KeepScreen go={go} />);
  await userEvent.click(await screen.findByRole("button", { name: words.keep.keep(2) }));
}

it("tells how far a long keeping is, and can stop it", async () => {
  jest.mocked(keepResults).mockImplementationOnce(
    (_, { onProgress, signal } = {}) =>
      new Promise((resolve) => {
        onProgress?.(2000, 5000);
        signal?.addEventListener("abort", () => resolve(outcome({ cancelled: true })));
      }),
  );
  await keepTwo();
  expect(screen.getByText(keepWords.progress(2000, 5000))).toBeTruthy();
  await userEvent.click(screen.getByRole("button", { name: keepWords.stop }));
  expect(await screen.findByText(keepWords.cancelled)).toBeTruthy();
  expect(screen.queryByRole("progressbar")).toBeNull();
});

describe("where results go", () => {
  it("is told to be set up first, where there is no table yet", async () => {
    workbookHolds({}, []);
    showInWorkbook(<KeepScreen go={go} />);
    expect(await screen.findByText(words.keep.noTable)).toBeTruthy();
    await userEvent.click(screen.getByRole("button", { name: words.tasks.setUp.title }));
    expect(go).toHaveBeenCalledWith({ kind: "setUp" });
    expect(readEntrySheets).not.toHaveBeenCalled();
  });
});

describe("an entry sheet", () => {
  it("is read to the number that can be kept, with what cannot be read named by its cell", async () => {
    jest.mocked(readEntrySheets).mockResolvedValue([entrySheet(["150,5", "DNS"], [148, 149])]);
    showInWorkbook(<KeepScreen go={go} />);
    expect(await screen.findByText(words.keep.typed(3, 1))).toBeTruthy();
    expect(screen.getByRole("button", { name: "Go to D2" })).toBeTruthy();
    jest.mocked(keepResults).mockResolvedValue(outcome({ added: 3 }));
    await userEvent.click(screen.getByRole("button", { name: words.keep.keep(3) }));
    const [[kept]] = jest.mocked(keepResults).mock.calls as unknown as [[readonly unknown[]]];
    expect(kept[0]).toMatchObject({
      ...{ date: "2026-08-13", athlete: "Ane Berg", test: "Single-leg hop", side: "left", value: 150.5, unit: "cm" },
      source: `'${plan.sheet}'!C2`,
    });
  });

  it("offers nothing to keep while nothing is typed, and reads again after an edit", async () => {
    jest.mocked(readEntrySheets).mockResolvedValue([entrySheet([null, null])]);
    showInWorkbook(<KeepScreen go={go} />);
    expect(await screen.findByText(words.keep.typed(0, 0))).toBeTruthy();
    expect(screen.queryByRole("button", { name: /^Keep \d/ })).toBeNull();
    jest.mocked(readEntrySheets).mockResolvedValue([entrySheet([150, null])]);
    act(tellEdit);
    expect(await screen.findByRole("button", { name: words.keep.keep(1) }, { timeout: 5000 })).toBeTruthy();
  });

  it("names columns of ours that are gone, whose results would be lost without a word", async () => {
    jest
      .mocked(readEntrySheets)
      .mockResolvedValue([{ ...entrySheet([150, 152]), missing: ["Single-leg hop left (cm)"] }]);
    showInWorkbook(<KeepScreen go={go} />);
    expect(await screen.findByText(/Single-leg hop left \(cm\)/)).toBeTruthy();
  });
});

describe("what came of it", () => {
  it("tells what is new, what was renewed and what had been kept, and can be taken back", async () => {
    jest.mocked(keepResults).mockResolvedValue(outcome({ added: 1, changed: 1, same: 4 }));
    await keepTwo();
    const told = await screen.findByText(words.keep.kept(1));
    expect(told).toBeTruthy();
    expect(screen.getByText(words.keep.changed(1))).toBeTruthy();
    expect(screen.getByText(words.keep.same(4))).toBeTruthy();
    const bar = within(screen.getByRole("complementary", { name: words.takeBack.label }));
    expect(bar.getByText("Kept results")).toBeTruthy();
  });

  it("goes on telling it while the workbook is edited elsewhere", async () => {
    jest.mocked(keepResults).mockResolvedValue(outcome({ added: 2 }));
    await keepTwo();
    await screen.findByText(words.keep.kept(2));
    const readBefore = jest.mocked(readEntrySheets).mock.calls.length;
    act(tellEdit);
    await waitFor(() => expect(jest.mocked(readEntrySheets).mock.calls.length).toBeGreaterThan(readBefore), {
      timeout: 5000,
    });
    expect(screen.getByText(words.keep.kept(2))).toBeTruthy();
  });

  it("has nothing to take back where nothing new came", async () => {
    jest.mocked(keepResults).mockResolvedValue(outcome({ same: 2 }));
    await keepTwo();
    expect(await screen.findByText(words.keep.kept(0))).toBeTruthy();
    expect(screen.queryByRole("complementary", { name: words.takeBack.label })).toBeNull();
  });

  it("tells clashes as trouble: both values, and where each stands", async () => {
    const fresh = keptResult({ value: 152, source: "'Test day 13 Aug'!C2" });
    const standing = keptResult({ value: 171.5, source: "Hops!C4" });
    jest.mocked(keepResults).mockResolvedValue(outcome({ added: 1, clashes: [{ fresh, standing }] }));
    await keepTwo();
    const alert = await screen.findByRole("alert");
    expect(alert.textContent).toContain(words.keep.clashes(1));
    for (const said of ["Ane Berg", "152 here", "171.5 in the table", "Hops!C4", "'Test day 13 Aug'!C2"])
      expect(alert.textContent).toContain(said);
  });

  it("tells what is in the way, and that nothing was kept", async () => {
    const inTheWay = { sheet: "Results", cell: "A9", why: "Below the table stands something of yours." };
    jest.mocked(keepResults).mockResolvedValue(outcome({ inTheWay }));
    await keepTwo();
    const alert = await screen.findByRole("alert");
    expect(alert.textContent).toContain(words.keep.nothingKept);
    expect(alert.textContent).toContain(inTheWay.why);
    expect(screen.queryByRole("complementary", { name: words.takeBack.label })).toBeNull();
  });

  it("tells what the workbook refused, and nothing was done", async () => {
    jest.mocked(keepResults).mockRejectedValue(new HostRefusal("InvalidOperationInCellEditMode", "no"));
    await keepTwo();
    expect((await screen.findByRole("alert")).textContent).toContain(words.hostRefusal.busy);
    expect(screen.queryByRole("complementary", { name: words.takeBack.label })).toBeNull();
    expect(screen.getByRole("button", { name: words.keep.keep(2) })).toHaveProperty("disabled", false);
  });

  it("is awaited: the button cannot be pressed twice", async () => {
    jest.mocked(keepResults).mockReturnValue(new Promise(() => {}));
    await keepTwo();
    const button = await screen.findByRole("button", { name: words.write.writing });
    expect(button).toHaveProperty("disabled", true);
    expect(keepResults).toHaveBeenCalledTimes(1);
  });
});

describe("any cells the coach selects", () => {
  const rows = [
    ["Athlete", "Sprint 10 m (s)"],
    ["Ane Berg", 1.81],
    ["Liv Dal", 1.92],
  ];

  it("are kept under the day the coach says", async () => {
    jest
      .mocked(readSelection)
      .mockResolvedValue({ kind: "cells", grid: gridOf(rows), sheetId: "field", grownFrom: null });
    jest.mocked(keepResults).mockResolvedValue(outcome({ added: 2 }));
    showInWorkbook(<KeepScreen go={go} />);
    const day = await screen.findByLabelText(words.keep.day);
    fireEvent.change(day, { target: { value: "2026-08-18" } });
    await userEvent.click(screen.getByRole("button", { name: words.keep.keep(2) }));
    const [[kept]] = jest.mocked(keepResults).mock.calls as unknown as [[readonly { readonly date: string }[]]];
    expect(kept.map(({ date }) => date)).toEqual(["2026-08-18", "2026-08-18"]);
  });

  it("with two spellings of a name are asked about, not merged", async () => {
    const grid = gridOf([...rows, ["Ane Bérg", 1.83]]);
    jest.mocked(readSelection).mockResolvedValue({ kind: "cells", grid, sheetId: "field", grownFrom: null });
    showInWorkbook(<KeepScreen go={go} />);
    expect(await screen.findByRole("heading", { name: words.alike.title })).toBeTruthy();
    expect(screen.getByRole("button", { name: words.keep.keep(3) })).toBeTruthy();
  });

  it("with nothing in them leave the way to select some", async () => {
    showInWorkbook(<KeepScreen go={go} />);
    expect(await screen.findByText(words.keep.select)).toBeTruthy();
  });
});
