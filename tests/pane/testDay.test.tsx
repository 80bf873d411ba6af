import { cleanup, screen } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import TestDayScreen from "../../src/pane/screens/TestDayScreen";
import { testDayWords as words } from "../../src/pane/words/testDay";
import { makeEntrySheet } from "../../src/sheet/makeEntrySheet";
import { batteryTest, squadMember } from "../sheet/storeRows";
import { showInWorkbook, watchedByHand, workbookHolds } from "./shownIn";

jest.mock("../../src/sheet/readBackground");
jest.mock("../../src/sheet/watchWorkbook");
jest.mock("../../src/sheet/takeBack");
jest.mock("../../src/sheet/makeEntrySheet");

beforeEach(() => {
  jest.resetAllMocks();
  watchedByHand();
  workbookHolds(
    {
      squad: [squadMember("Ane Berg")],
      battery: [
        batteryTest("Hop", { lowest: 30, highest: 300 }),
        batteryTest("Throw", { lowest: null, highest: null }),
      ],
    },
    ["squad", "battery"],
  );
});
afterEach(cleanup);

async function make(remembered: boolean): Promise<void> {
  const deed = { what: "Made it.", steps: [] };
  jest.mocked(makeEntrySheet).mockResolvedValue({ sheet: "Test day 11 Aug", remembered, deed });
  showInWorkbook(<TestDayScreen go={jest.fn()} />);
  await userEvent.click(await screen.findByLabelText("Hop"));
  await userEvent.click(screen.getByRole("button", { name: /^Make “/ }));
  await screen.findByText(words.made("Test day 11 Aug"));
}

it("tells where the workbook could not make a note of the sheet, and what to do then", async () => {
  await make(false);
  expect(screen.getByText(words.notRemembered)).toBeTruthy();
});

it("says nothing of it where it could", async () => {
  await make(true);
  expect(screen.queryByText(words.notRemembered)).toBeNull();
});

it("names the tests whose numbers it cannot question, as they are ticked", async () => {
  showInWorkbook(<TestDayScreen go={jest.fn()} />);
  await userEvent.click(await screen.findByLabelText("Hop"));
  expect(screen.queryByText(words.noRange(["Throw"]))).toBeNull();
  await userEvent.click(screen.getByLabelText("Throw"));
  expect(screen.getByText(words.noRange(["Throw"]))).toBeTruthy();
});
