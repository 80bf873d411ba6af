import { act, cleanup, screen } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { NotSetUp } from "../../src/pane/screens/NotSetUp";
import { words } from "../../src/pane/words";
import { readResults } from "../../src/reading/readResults";
import { recogniseColumns } from "../../src/reading/recogniseColumns";
import { gridOf } from "../reading/gridOf";
import { batteryTest, squadMember } from "../sheet/storeRows";
import { showInWorkbook, watchedByHand, workbookHolds } from "./shownIn";

jest.mock("../../src/sheet/readBackground");
jest.mock("../../src/sheet/watchWorkbook");
jest.mock("../../src/sheet/takeBack");

const grid = gridOf([
  ["Athlete", "505 left 1 (s)", "505 right 1 (s)"],
  ["Ane Berg", 2.5, 2.6],
  ["Liv Dal", 2.7, 2.8],
]);
const map = recogniseColumns(grid);
const setMap = jest.fn();

beforeEach(() => {
  setMap.mockReset();
  watchedByHand();
});
afterEach(cleanup);

const show = () => showInWorkbook(<NotSetUp reading={readResults(grid, map)} map={map} setMap={setMap} />);

it("names who is not in the squad and what is not in the battery, and offers the test it may be", async () => {
  const turn = { ...batteryTest("505 change of direction"), unit: "s", sides: 2 as const };
  workbookHolds({ squad: [squadMember("Ane Berg")], battery: [turn] }, ["squad", "battery"]);
  show();
  expect((await screen.findByText(/not in the squad/)).textContent).toContain("Liv Dal");
  await userEvent.click(screen.getByRole("button", { name: words.notSetUp.readAs("505 change of direction") }));
  const [[corrected]] = setMap.mock.calls;
  expect(readResults(grid, corrected).tests).toEqual(["505 change of direction"]);
});

it("has nothing to say where nothing is set up", async () => {
  workbookHolds({}, []);
  show();
  await act(async () => {});
  expect(screen.queryByText(words.notSetUp.title)).toBeNull();
});
