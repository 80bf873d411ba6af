import { act, cleanup, render, screen, waitFor } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { asymmetry } from "../../src/analyses/asymmetry/asymmetry";
import { questions } from "../../src/analyses/questions";
import { ErrorEdge } from "../../src/pane/parts/ErrorEdge";
import QuestionScreen from "../../src/pane/screens/QuestionScreen";
import { words } from "../../src/pane/words";
import { WorkbookProvider } from "../../src/pane/workbook";
import { recallColumnMap } from "../../src/sheet/columnMaps";
import { findPlace } from "../../src/sheet/findPlace";
import { HostRefusal } from "../../src/sheet/hostRefusal";
import { readBackground } from "../../src/sheet/readBackground";
import { readKeptResults } from "../../src/sheet/readKeptResults";
import { readAgain, readSelection } from "../../src/sheet/readSelection";
import { writeReport } from "../../src/sheet/writeReport";
import { gridOf } from "../reading/gridOf";
import { keptResult } from "../sheet/storeRows";
import { showInWorkbook, tellEdit, watchedByHand, workbookHolds } from "./shownIn";

jest.mock("../../src/sheet/readBackground");
jest.mock("../../src/sheet/watchWorkbook");
jest.mock("../../src/sheet/takeBack");
jest.mock("../../src/sheet/goTo");
jest.mock("../../src/sheet/columnMaps");
jest.mock("../../src/sheet/findPlace");
jest.mock("../../src/sheet/readSelection");
jest.mock("../../src/sheet/readKeptResults");
jest.mock("../../src/sheet/writeReport");

const go = jest.fn();
const asked = questions.find(({ id }) => id === "asymmetry")!;
const others = questions.filter((one) => one !== asked);

const hops = gridOf([
  ["Athlete", "Hop left 1 (cm)", "Hop left 2 (cm)", "Hop right 1 (cm)", "Hop right 2 (cm)"],
  ["Ane Berg", 150, 151, 170, 171],
  ["Liv Dal", 160, 162, 161, 160],
  ["Siv Lund", 155, 154, 156, 157],
]);
const selected = { kind: "cells", grid: hops, sheetId: "hops", grownFrom: null } as const;

beforeEach(() => {
  jest.resetAllMocks();
  jest.restoreAllMocks();
  watchedByHand();
  workbookHolds({}, []);
  jest.mocked(recallColumnMap).mockResolvedValue(null);
  jest.mocked(findPlace).mockResolvedValue({ sheet: "Asymmetry", renews: false });
  jest.mocked(readSelection).mockResolvedValue(selected);
  jest.mocked(readAgain).mockResolvedValue(selected);
});
afterEach(cleanup);

const show = () => showInWorkbook(<QuestionScreen id="asymmetry" go={go} />);
const answer = () => screen.findByRole("heading", { name: words.answer.title });

describe("an analysis", () => {
  it("is fetched when its question is asked, and no other with it", async () => {
    const loads = others.map((one) => jest.spyOn(one, "load"));
    let arrive: (analysis: typeof asymmetry) => void = () => {};
    const load = jest.spyOn(asked, "load").mockReturnValue(
      new Promise((resolve) => {
        arrive = resolve as typeof arrive;
      }),
    );
    show();
    expect(load).toHaveBeenCalledTimes(1);
    // The question stands there before its analysis does.
    expect(screen.getByRole("heading", { name: asked.title })).toBeTruthy();
    expect(screen.getByRole("status").textContent).toBe(words.reading);
    await act(async () => arrive(asymmetry));
    await answer();
    for (const other of loads) expect(other).not.toHaveBeenCalled();
  });

  it("that cannot be fetched is our mistake, told at the edge", async () => {
    jest.spyOn(console, "error").mockImplementation(() => {});
    jest.spyOn(asked, "load").mockRejectedValue(new Error("no such chunk"));
    render(
      <ErrorEdge>
        <WorkbookProvider>
          <QuestionScreen id="asymmetry" go={go} />
        </WorkbookProvider>
      </ErrorEdge>,
    );
    expect((await screen.findByRole("alert")).textContent).toContain(words.ourMistake.title);
  });
});

describe("results that are selected", () => {
  it("are answered before anything is written", async () => {
    show();
    await answer();
    expect(screen.getByText(words.source.wide(3, 12, " in cm"))).toBeTruthy();
    expect(writeReport).not.toHaveBeenCalled();
  });

  it("are asked for in the analysis' own words, where nothing is selected", async () => {
    jest.mocked(readSelection).mockResolvedValue({ kind: "empty", sheet: "Read me", address: "A1" });
    show();
    expect(await screen.findByText(words.nothing.text("Read me, A1"))).toBeTruthy();
    expect(screen.getByText(asymmetry.select)).toBeTruthy();
  });

  it.each([
    ["InvalidOperationInCellEditMode", words.hostRefusal.busy],
    ["ResponsePayloadSizeLimitExceeded", words.hostRefusal.tooLarge],
    ["GeneralException", words.hostRefusal.other("its own words")],
  ])("cannot be read (%s): the reason, and the way to try again", async (code, reason) => {
    jest.mocked(readSelection).mockRejectedValue(new HostRefusal(code, "its own words"));
    show();
    expect((await screen.findByRole("alert")).textContent).toContain(reason);
    jest.mocked(readSelection).mockResolvedValue(selected);
    await userEvent.click(screen.getByRole("button", { name: words.hostRefusal.again }));
    await answer();
    expect(screen.queryByRole("alert")).toBeNull();
  });
});

describe("writing", () => {
  const write = async () =>
    userEvent.click(await screen.findByRole("button", { name: words.write.newSheet("Asymmetry") }));
  const deed = { what: "Wrote Asymmetry!A7:L10", steps: [] };
  const outcome = { kind: "written", sheet: "Asymmetry", address: "A7:L10", updated: false, deed } as const;

  it("tells where the table stands, also when the workbook has been read anew since", async () => {
    jest.mocked(writeReport).mockResolvedValue(outcome);
    show();
    await write();
    const told = words.write.written("Asymmetry", "A7:L10");
    await screen.findByText(told);
    const reads = jest.mocked(readBackground).mock.calls.length;
    // Our own write is an edit of the workbook, too.
    act(tellEdit);
    await waitFor(() => expect(jest.mocked(readBackground).mock.calls.length).toBeGreaterThan(reads), {
      timeout: 5000,
    });
    await act(async () => {});
    expect(screen.getByText(told)).toBeTruthy();
  });

  it("tells what the workbook refused", async () => {
    jest.mocked(writeReport).mockRejectedValue(new HostRefusal("AccessDenied", "no"));
    show();
    await write();
    expect((await screen.findByRole("alert")).textContent).toContain(words.hostRefusal.protectedSheet);
  });

  it("leaves a table that the coach has changed alone, says why, and offers another sheet", async () => {
    const { headings } = words.write.conflict;
    jest
      .mocked(writeReport)
      .mockResolvedValueOnce({ kind: "conflict", sheet: "Asymmetry", reason: "headings" } as never);
    show();
    await write();
    expect((await screen.findByRole("alert")).textContent).toContain(headings);
    jest.mocked(writeReport).mockResolvedValueOnce({ ...outcome, sheet: "Asymmetry 2" });
    await userEvent.click(screen.getByRole("button", { name: words.write.elsewhere }));
    expect(jest.mocked(writeReport).mock.lastCall?.[2]).toBe(true);
    await screen.findByText(words.write.written("Asymmetry 2", "A7:L10"));
  });
});

describe("the workbook's own results", () => {
  beforeEach(() => workbookHolds({}, ["results"]));

  const choose = async () => userEvent.selectOptions(await screen.findByLabelText(words.origin.label), "kept");

  it("are offered once there is a table of them, and answered as any selection", async () => {
    const results = (["left", "right"] as const).flatMap((side) =>
      [1, 2].map((trial, index) => ({
        ...keptResult({ side, trial, value: (side === "left" ? 150 : 170) + trial }),
        ...{ cell: `Results!G${7 + index}`, offset: index },
      })),
    );
    jest.mocked(readKeptResults).mockResolvedValue({ results, remarks: [] });
    show();
    await choose();
    await answer();
    expect(screen.getByText(words.source.kept(1, 4, 1))).toBeTruthy();
  });

  it("cannot be read: the reason is told", async () => {
    jest.mocked(readKeptResults).mockRejectedValue(new HostRefusal("GeneralException", "its own words"));
    show();
    await choose();
    expect((await screen.findByRole("alert")).textContent).toContain("its own words");
  });
});
