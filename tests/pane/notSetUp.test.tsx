import { act, cleanup, screen } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { useState } from "react";
import { NotSetUp } from "../../src/pane/screens/NotSetUp";
import { notSetUpWords as words } from "../../src/pane/words/notSetUp";
import type { Grid } from "../../src/reading/grid";
import { readResults } from "../../src/reading/readResults";
import { recogniseColumns } from "../../src/reading/recogniseColumns";
import { gridOf } from "../reading/gridOf";
import { batteryTest, squadMember } from "../sheet/storeRows";
import { showInWorkbook, watchedByHand, workbookHolds } from "./shownIn";

jest.mock("../../src/sheet/readBackground");
jest.mock("../../src/sheet/watchWorkbook");
jest.mock("../../src/sheet/takeBack");

const wide = gridOf([
  ["Athlete", "505 left 1 (s)", "505 right 1 (s)"],
  ["Ane Berg", 2.5, 2.6],
  ["Liv Dal", 2.7, 2.8],
]);
const long = gridOf([
  ["Athlete", "Test", "Side", "Result (s)"],
  ["Ane Berg", "505", "left", 2.5],
  ["Ane Berg", "505 change of direction", "left", 2.55],
  ["Liv Dal", "505", "right", 2.7],
]);
const turn = { ...batteryTest("505 change of direction"), unit: "s", sides: 2 as const };

beforeEach(watchedByHand);
afterEach(cleanup);

/** As a screen has it: what is corrected is read again at once. */
function Shown({ grid }: { readonly grid: Grid }) {
  const [map, setMap] = useState(() => recogniseColumns(grid));
  const reading = readResults(grid, map);
  return (
    <>
      <NotSetUp reading={reading} correction={{ map, setMap }} />
      <p>Tests: {reading.tests.join(", ")}</p>
      <p>Trials: {reading.results.map(({ attempt }) => attempt).join(" ")}</p>
    </>
  );
}

const press = (name: string) => userEvent.click(screen.getByRole("button", { name }));

it.each([
  ["in headings", wide, "505"],
  ["in cells, beside rows that have the battery's name", long, "505, 505 change of direction"],
])(
  "names who is not in the squad and what is not in the battery, and reads it as the test it is: %s",
  async (_, grid, before) => {
    workbookHolds({ squad: [squadMember("Ane Berg")], battery: [turn] }, ["squad", "battery"]);
    showInWorkbook(<Shown grid={grid} />);
    expect((await screen.findByText(/not in the squad/)).textContent).toContain("Liv Dal");
    expect(screen.getByText(`Tests: ${before}`)).toBeTruthy();
    await press(words.readAs("505 change of direction"));
    expect(screen.getByText("Tests: 505 change of direction")).toBeTruthy();
    expect(screen.queryByText(words.test("505"))).toBeNull();
    expect(screen.getByText(words.isReadAs("505", "505 change of direction"), { exact: false })).toBeTruthy();
    await press(words.readAsItStands);
    expect(screen.getByText(`Tests: ${before}`)).toBeTruthy();
  },
);

it("numbers the trials of both names through, once they are one test", async () => {
  workbookHolds({ battery: [turn] }, ["battery"]);
  showInWorkbook(<Shown grid={long} />);
  await screen.findByText(words.test("505"), { exact: false });
  expect(screen.getByText("Trials: 1 1 1")).toBeTruthy();
  await press(words.readAs("505 change of direction"));
  expect(screen.getByText("Trials: 1 2 1")).toBeTruthy();
});

it("says of kept results which test it may be, to be renamed where it stands", async () => {
  workbookHolds({ battery: [turn] }, ["battery"]);
  showInWorkbook(<NotSetUp reading={readResults(wide, recogniseColumns(wide))} correction={null} />);
  await screen.findByText(words.mayBe("505 change of direction"), { exact: false });
  expect(screen.queryByRole("button")).toBeNull();
});

it("has nothing to say where nothing is set up", async () => {
  workbookHolds({}, []);
  showInWorkbook(<Shown grid={wide} />);
  await act(async () => {});
  expect(screen.queryByText(words.title)).toBeNull();
});
