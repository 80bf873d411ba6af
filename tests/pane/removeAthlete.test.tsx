import { cleanup, screen } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import RemoveAthleteScreen from "../../src/pane/screens/RemoveAthleteScreen";
import { removeAthleteWords as words } from "../../src/pane/words/removeAthlete";
import { readKeptResults } from "../../src/sheet/readKeptResults";
import { readProgramme } from "../../src/sheet/readProgramme";
import { type AthleteFound, findAthlete, removeAthlete } from "../../src/sheet/removeAthlete";
import { squadMember } from "../sheet/storeRows";
import { showInWorkbook, watchedByHand, workbookHolds } from "./shownIn";

jest.mock("../../src/sheet/readBackground");
jest.mock("../../src/sheet/readKeptResults");
jest.mock("../../src/sheet/readProgramme");
jest.mock("../../src/sheet/removeAthlete");
jest.mock("../../src/sheet/watchWorkbook");

/** A name that a browser would take for markup, were it not text. */
const name = "<img src=x onerror=alert(1)>";
const found: AthleteFound = {
  tables: [{ sheet: "Squad", rows: 1 }],
  ...{ lines: 2, pages: ["Her page"], marks: true },
  elsewhere: ["'Hop''s'!A2", "Mine!B3 (note)"],
};

beforeEach(() => {
  jest.resetAllMocks();
  watchedByHand();
  workbookHolds({ squad: [squadMember(name)] }, ["squad"]);
  jest.mocked(readKeptResults).mockResolvedValue(null);
  jest.mocked(readProgramme).mockResolvedValue({
    ...{ exercises: [], priorities: [], plan: [], diary: [], remarks: [], present: new Set() },
  } as unknown as Awaited<ReturnType<typeof readProgramme>>);
  jest.mocked(findAthlete).mockResolvedValue(found);
});
afterEach(cleanup);

async function choose() {
  showInWorkbook(<RemoveAthleteScreen go={() => {}} />);
  await userEvent.selectOptions(await screen.findByLabelText(words.who), name);
  await screen.findByText(words.goes(name));
}

describe("removing an athlete", () => {
  it("shows what goes and what stays before anything is done, all of it as text", async () => {
    await choose();
    for (const text of [words.rows(found.tables[0]!), words.lines(2), words.pages(["Her page"]), words.marks]) {
      expect(screen.getByText(text)).toBeTruthy();
    }
    expect(screen.getByText(words.stays(2))).toBeTruthy();
    expect(screen.getByText("Hop's")).toBeTruthy();
    expect(document.querySelector("img")).toBeNull();
    expect(removeAthlete).not.toHaveBeenCalled();
  });

  it("asks once, says until when it can be taken back, and does it", async () => {
    jest.mocked(removeAthlete).mockResolvedValue({
      ...found,
      deed: { what: "Removed", steps: [{ kind: "restoreSetting", key: "a", value: 1 }] },
    });
    await choose();
    await userEvent.click(screen.getByRole("button", { name: words.press(name) }));
    expect(screen.getByRole("alert").textContent).toContain(words.sureText(true));
    expect(removeAthlete).not.toHaveBeenCalled();
    await userEvent.click(screen.getByRole("button", { name: words.yes }));
    expect(removeAthlete).toHaveBeenCalledWith(name);
    expect(await screen.findByText(words.done(name))).toBeTruthy();
  });

  it("can be left", async () => {
    await choose();
    await userEvent.click(screen.getByRole("button", { name: words.press(name) }));
    await userEvent.click(screen.getByRole("button", { name: words.no }));
    expect(screen.queryByText(words.goes(name))).toBeNull();
    expect(removeAthlete).not.toHaveBeenCalled();
  });
});
