import { act, cleanup, screen, waitFor, within } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import PrioritiesScreen from "../../src/pane/screens/PrioritiesScreen";
import { demandWords } from "../../src/pane/words/demands";
import { priorityWords } from "../../src/pane/words/priorities";
import { readKeptResults } from "../../src/sheet/readKeptResults";
import { type ProgrammeReading, readProgramme } from "../../src/sheet/readProgramme";
import { writeComparison } from "../../src/sheet/writeComparison";
import { writeDecisions } from "../../src/sheet/writePriorities";
import type { Background } from "../../src/store/background";
import type { KeptResult } from "../../src/store/keptResults";
import { asProposed, type PriorityRow } from "../../src/store/priorityTable";
import { batteryTest, squadMember } from "../sheet/storeRows";
import { showInWorkbook, tellEdit, watchedByHand, workbookHolds } from "./shownIn";

jest.mock("../../src/sheet/readBackground");
jest.mock("../../src/sheet/readKeptResults");
jest.mock("../../src/sheet/readProgramme");
jest.mock("../../src/sheet/watchWorkbook");
jest.mock("../../src/sheet/takeBack");
jest.mock("../../src/sheet/writePriorities");
jest.mock("../../src/sheet/writeComparison");

const go = jest.fn();
const athletes = ["Ane", "Bo", "Cia", "Dag"];

const background: Partial<Background> = {
  squad: athletes.map((name) => squadMember(name, { role: "Wing", group: "Seniors" })),
  battery: [
    batteryTest("Hop", { quality: "Jumping", unit: "cm" }),
    batteryTest("Throw", { quality: "Throwing", unit: "m" }),
    batteryTest("Drop jump", { measure: "flightTime", quality: "Jumping", unit: "ms" }),
  ],
  weights: [{ quality: "Throwing", role: "Wing", weight: 2 }],
};

const result = (athlete: string, test: string, value: number, said: Partial<KeptResult> = {}): KeptResult => ({
  ...{ date: "2026-08-13", athlete, test, measure: null, side: null, trial: 1, value, unit: "cm", source: null },
  ...said,
});

const results = athletes.flatMap((athlete, index) => [
  result(athlete, "Hop", 150 + 10 * index),
  result(athlete, "Throw", 20 + index, { unit: "m" }),
]);

function holds(rows: readonly PriorityRow[], more: readonly KeptResult[] = []): void {
  const standing = [...results, ...more].map((one, offset) => ({ ...one, cell: `Results!G${offset + 5}`, offset }));
  jest.mocked(readKeptResults).mockResolvedValue({ results: standing, remarks: [] });
  const none = { exercises: [], plan: [], diary: [], remarks: [], present: new Set<never>() };
  jest.mocked(readProgramme).mockResolvedValue({ ...none, priorities: rows } as ProgrammeReading);
}

beforeEach(() => {
  jest.clearAllMocks();
  watchedByHand();
  workbookHolds(background, ["squad", "battery", "weights", "results"]);
  holds([]);
  const deed = {
    what: "Overruled a priority.",
    steps: [{ kind: "restoreSetting", key: "x", value: undefined }],
  } as const;
  jest.mocked(writeDecisions).mockResolvedValue({ sheet: "Priorities", inTheWay: null, deed });
  jest.mocked(writeComparison).mockResolvedValue({ deed });
});
afterEach(cleanup);

const show = async () => {
  showInWorkbook(<PrioritiesScreen go={go} />);
  await screen.findByText("Ane");
};

const decisionsMade = () => jest.mocked(writeDecisions).mock.calls.at(-1)![0];

describe("overruling", () => {
  it("moves a priority with one press, which changes both places", async () => {
    await show();
    await userEvent.click(screen.getAllByRole("button", { name: priorityWords.earlier("Jumping") })[0]!);
    expect(decisionsMade()).toMatchObject([
      { athlete: "Ane", rank: 1, choice: "Jumping" },
      { athlete: "Ane", rank: 2, choice: "Throwing" },
    ]);
  });

  it("sets aside, and takes another quality instead", async () => {
    await show();
    const what = screen.getByLabelText(priorityWords.decide("Throwing", "Ane"));
    await userEvent.selectOptions(what, priorityWords.setAside);
    expect(decisionsMade()).toMatchObject([{ athlete: "Ane", rank: 1, choice: "none" }]);
    await userEvent.selectOptions(what, priorityWords.instead("Jumping"));
    expect(decisionsMade()).toMatchObject([{ athlete: "Ane", rank: 1, choice: "Jumping" }]);
  });

  it("keeps the reason the coach types beside what they decided, once", async () => {
    const [row] = [asProposed({ athlete: "Ane", rank: 1, quality: "Throwing", why: "x" })];
    holds([{ ...row!, choice: "none" }]);
    await show();
    const reason = await screen.findByLabelText(priorityWords.reasonFor("Throwing", "Ane"));
    await userEvent.type(reason, "A camp in May{Enter}");
    expect(decisionsMade()).toMatchObject([{ athlete: "Ane", rank: 1, choice: "none", reason: "A camp in May" }]);
    expect(screen.queryByLabelText(priorityWords.reasonFor("Throwing", "Bo"))).toBeNull();
  });

  it("can move neither the first one earlier nor the last later", async () => {
    await show();
    const disabled = (name: string) =>
      screen.getAllByRole<HTMLButtonElement>("button", { name }).map((button) => button.disabled)[0];
    expect(disabled(priorityWords.earlier("Throwing"))).toBe(true);
    expect(disabled(priorityWords.later("Jumping"))).toBe(true);
    expect(disabled(priorityWords.later("Throwing"))).toBe(false);
  });

  it("says for whom the rule says something else by now", async () => {
    holds([asProposed({ athlete: "Ane", rank: 1, quality: "Speed", why: "Long ago." })]);
    await show();
    expect(await screen.findByText(priorityWords.outdated(4))).toBeTruthy();
  });
});

describe("what stands behind it", () => {
  it("is a picture of what is asked for and where the squad is, with a table behind it", async () => {
    await show();
    const picture = screen.getByRole("img", { name: new RegExp(demandWords.picture.squad) });
    expect(picture.querySelector("desc")!.textContent).toContain("Throwing: ");
    const [disclosure] = screen.getAllByRole("button", { name: demandWords.picture.table });
    await userEvent.click(disclosure!);
    const rows = within(screen.getByRole("table", { name: demandWords.picture.squad })).getAllByRole("row");
    // What counts most comes first.
    expect(rows.map((row) => row.textContent).slice(1)).toEqual([
      expect.stringMatching(/^Throwing2/),
      expect.stringMatching(/^Jumping1/),
    ]);
  });

  it("shows an athlete's own, with the noise told", async () => {
    await show();
    await userEvent.click(screen.getAllByRole("button", { name: priorityWords.profile })[0]!);
    const picture = screen.getByRole("img", { name: new RegExp(demandWords.picture.athlete("Ane")) });
    expect(picture.querySelector("desc")!.textContent).toContain("Throwing: −12 points, noise not known: weakness");
    expect(screen.getByText(priorityWords.noRatios)).toBeTruthy();
  });

  it("names kept results that nobody can have, each by its cell", async () => {
    holds([], [result("Ane", "Drop jump", 0.52, { measure: "flightTime", unit: "ms" })]);
    await show();
    expect(await screen.findByText(priorityWords.leftOut.title(1))).toBeTruthy();
    expect(screen.getByRole("button", { name: "Go to G13" })).toBeTruthy();
  });
});

describe("whom athletes are compared with", () => {
  it("is the coach's choice, kept in the workbook; who cannot be compared with their own is told", async () => {
    await show();
    await userEvent.selectOptions(screen.getByLabelText(priorityWords.comparison.label), "role");
    expect(writeComparison).toHaveBeenCalledWith("role");
    workbookHolds({ ...background, comparedWith: "role" }, ["squad", "battery", "weights", "results"]);
    act(tellEdit);
    await waitFor(() => screen.getByText(priorityWords.comparison.fallback(athletes)), { timeout: 5000 });
    expect(screen.getByText(priorityWords.comparison.small("the squad", 4))).toBeTruthy();
  });
});
