import { act, cleanup, screen, waitFor, within } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { questions } from "../../src/analyses/questions";
import { today } from "../../src/analyses/today";
import { Home } from "../../src/pane/screens/Home";
import { words } from "../../src/pane/words";
import { nextStepWords } from "../../src/pane/words/nextStep";
import { keptSeries } from "../../src/programme/keptSeries";
import { priorities } from "../../src/programme/priorities";
import { qualityProfiles } from "../../src/programme/qualityProfile";
import { dayNumber, isoDay } from "../../src/reading/days";
import { readBackground } from "../../src/sheet/readBackground";
import { readKeptResults } from "../../src/sheet/readKeptResults";
import { type ProgrammeReading, readProgramme } from "../../src/sheet/readProgramme";
import type { KeptResult } from "../../src/store/keptResults";
import { asPlanned } from "../../src/store/planTable";
import { asProposed } from "../../src/store/priorityTable";
import { plannedRow } from "../sheet/plannedRows";
import { batteryTest, squadMember } from "../sheet/storeRows";
import { showInWorkbook, tellEdit, watchedByHand, workbookHolds } from "./shownIn";

jest.mock("../../src/sheet/readBackground");
jest.mock("../../src/sheet/readKeptResults");
jest.mock("../../src/sheet/readProgramme");
jest.mock("../../src/sheet/watchWorkbook");
jest.mock("../../src/sheet/takeBack");

const go = jest.fn();

beforeEach(() => {
  go.mockReset();
  watchedByHand();
  workbookHolds({}, []);
  keeps([]);
});

const noProgramme = { exercises: [], priorities: [], plan: [], diary: [], remarks: [], present: new Set<never>() };

/** What the workbook's table of results and its programme hold. */
function keeps(results: readonly KeptResult[], programme: Partial<ProgrammeReading> = {}): void {
  const standing = results.map((result, offset) => ({ ...result, cell: `Results!G${offset + 5}`, offset }));
  jest.mocked(readKeptResults).mockResolvedValue({ results: standing, remarks: [] });
  jest.mocked(readProgramme).mockResolvedValue({ ...noProgramme, ...programme });
}

const hop = (athlete: string, date: string): KeptResult => ({
  ...{ date, athlete, test: "Hop", measure: null, side: null, trial: 1, value: 150, unit: "cm", source: null },
});
afterEach(cleanup);

/** It is fetched when first asked for, on a slow machine not at once. */
const step = () => screen.findByRole("region", { name: nextStepWords.label }, { timeout: 20_000 });

const buttonsOf = (part: string) =>
  within(screen.getByRole("region", { name: part }))
    .getAllByRole("button")
    .map((button) => button.textContent);

describe("what can be asked and done", () => {
  it("is all there, in the part of the cycle where it belongs, each once", async () => {
    showInWorkbook(<Home go={go} />);
    await step();
    const { tasks } = words;
    const asked = (part: string) =>
      questions.filter((one) => one.part === part).map(({ title, question }) => title + question);
    const told = ({ title, question }: { title: string; question: string }) => title + question;
    expect(buttonsOf(words.home.parts.test)).toEqual([
      ...[tasks.setUp, tasks.testDay, tasks.keep].map(told),
      ...asked("test"),
    ]);
    expect(buttonsOf(words.home.parts.understand)).toEqual(asked("understand"));
    expect(buttonsOf(words.home.parts.review)).toEqual(expect.arrayContaining(asked("review")));
    expect(buttonsOf(words.home.parts.cells)).toContain(told(tasks.functions));
    // None is in no part: three parts hold all the questions there are.
    const parts = [words.home.parts.test, words.home.parts.understand, words.home.parts.review];
    const shown = parts.flatMap(buttonsOf);
    for (const { title, question } of questions)
      expect(shown.filter((text) => text === title + question)).toHaveLength(1);
  });

  it.each(questions.map(({ id, title }) => [title, id]))("%s is one press away", async (title, id) => {
    showInWorkbook(<Home go={go} />);
    await userEvent.click(screen.getByRole("button", { name: new RegExp(`^${title}`) }));
    expect(go).toHaveBeenCalledWith({ kind: "question", id });
  });
});

describe("the next step", () => {
  it("is not guessed before the workbook has been read, nor where it cannot be", async () => {
    jest.mocked(readBackground).mockRejectedValue(new Error("no"));
    showInWorkbook(<Home go={go} />);
    expect(screen.queryByRole("region", { name: nextStepWords.label })).toBeNull();
    await act(async () => {});
    expect(screen.queryByRole("region", { name: nextStepWords.label })).toBeNull();
  });

  it.each([
    ["nothing is set up", {}, [], nextStepWords.setUp.press, "setUp"],
    ["the squad has no tests", { squad: [squadMember("Ane Berg")] }, ["squad"], nextStepWords.setUp.press, "setUp"],
    ["the tables are empty", {}, ["squad", "battery"], nextStepWords.setUp.press, "setUp"],
  ] as const)("is to set up where %s", async (_, background, present, press, kind) => {
    workbookHolds(background, present);
    showInWorkbook(<Home go={go} />);
    await userEvent.click(within(await step()).getByRole("button", { name: press }));
    expect(go).toHaveBeenCalledWith(expect.objectContaining({ kind }));
  });

  it("follows the workbook: once squad and tests stand, it is the sheet for a test day", async () => {
    showInWorkbook(<Home go={go} />);
    within(await step()).getByRole("button", { name: nextStepWords.setUp.press });
    workbookHolds({ squad: [squadMember("Ane Berg"), squadMember("Liv Dal")], battery: [batteryTest("Hop")] }, [
      "squad",
      "battery",
    ]);
    act(tellEdit);
    await waitFor(async () => expect((await step()).textContent).toContain("2 athletes and 1 test number"), {
      timeout: 5000,
    });
    await userEvent.click(within(await step()).getByRole("button"));
    expect(go).toHaveBeenCalledWith(expect.objectContaining({ kind: "testDay" }));
  });

  const setUp = () =>
    workbookHolds({ squad: [squadMember("Ane Berg")], battery: [{ ...batteryTest("Hop"), retestAfterWeeks: 8 }] }, [
      "squad",
      "battery",
      "results",
    ]);
  const priority = { athlete: "Ane Berg", rank: 1, quality: "Speed", why: "x", choice: null, reason: null };

  it.each([
    ["priorities once there are results", {}, "priorities"],
    ["the plan once there are priorities", { priorities: [{ ...priority, asProposed: null }] }, "plan"],
  ] as const)("is %s", async (_, programme, kind) => {
    setUp();
    keeps([hop("Ane Berg", today())], programme);
    showInWorkbook(<Home go={go} />);
    await userEvent.click(within(await step()).getByRole("button"));
    expect(go).toHaveBeenCalledWith(expect.objectContaining({ kind }));
  });

  const planned = (begins: string) => asPlanned({ ...plannedRow("Ane Berg", "Back squat"), begins, week: 1 });

  it.each([
    ["the sessions of a block to come", 3, {}, nextStepWords.toCome(3).text, "deliver"],
    ["the sessions of the block under way", -1, {}, nextStepWords.deliver(6).text, "deliver"],
    ["a retest once the block is over", -7, {}, nextStepWords.retest.text, "testDay"],
  ] as const)("is %s", async (_, days, programme, text, kind) => {
    setUp();
    const begins = isoDay(dayNumber(today()) + days);
    keeps([hop("Ane Berg", isoDay(dayNumber(begins) - 7))], { plan: [planned(begins)], ...programme });
    showInWorkbook(<Home go={go} />);
    expect((await step()).textContent).toContain(text);
    await userEvent.click(within(await step()).getByRole("button"));
    expect(go).toHaveBeenCalledWith(expect.objectContaining({ kind }));
  });

  it("is the review after the retest, and the next plan once the priorities follow from it", async () => {
    const squad = ["Ane Berg", "Kari Dahl", "Liv Aas"].map((name) => squadMember(name));
    const background = { squad, battery: [batteryTest("Hop", { quality: "Speed" })], weights: [] };
    workbookHolds(background, ["squad", "battery", "results"]);
    const retest = squad.map(({ athlete }, index) => ({ ...hop(athlete, today()), value: 150 + 10 * index }));
    const before = squad.map(({ athlete }, index) => ({ ...hop(athlete, "2020-01-01"), value: 170 - 10 * index }));
    const plan = [planned(isoDay(dayNumber(today()) - 7))];
    const old = asProposed({ athlete: "Liv Aas", rank: 1, quality: "Speed", why: "Old." });
    keeps([...before, ...retest], { plan, priorities: [old] });
    showInWorkbook(<Home go={go} />);
    await screen.findByText(nextStepWords.review.text, {}, { timeout: 20_000 });
    await userEvent.click(within(await step()).getByRole("button"));
    expect(go).toHaveBeenLastCalledWith({ kind: "outcome" });

    const standing = [...before, ...retest].map((one, offset) => ({ ...one, cell: `Results!G${offset}`, offset }));
    const { results } = keptSeries(standing, background);
    const { priorities: fresh } = priorities(qualityProfiles(results, background), [], background, { most: 3 });
    expect(fresh.length).toBeGreaterThan(0);
    keeps([...before, ...retest], { plan, priorities: fresh.map(asProposed) });
    act(tellEdit);
    await screen.findByText(nextStepWords.planNext.text, {}, { timeout: 20_000 });
    await userEvent.click(within(await step()).getByRole("button"));
    expect(go).toHaveBeenLastCalledWith({ kind: "plan" });
  });

  it("reminds of an ending block and a diary that has stopped", async () => {
    setUp();
    keeps([hop("Ane Berg", today())], { plan: [planned(isoDay(dayNumber(today()) - 5))] });
    showInWorkbook(<Home go={go} />);
    const { textContent } = await step();
    expect(textContent).toContain(nextStepWords.ending(2));
    expect(textContent).toContain(nextStepWords.noDiary(6));
  });

  it("names what is due", async () => {
    setUp();
    keeps([hop("Ane Berg", "2020-01-01")]);
    showInWorkbook(<Home go={go} />);
    expect((await step()).textContent).toContain("Hop: a retest is due for 1 athlete.");
  });
});
