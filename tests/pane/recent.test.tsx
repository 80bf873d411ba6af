import { cleanup, screen, waitFor } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { useNoteRecent, useRecent } from "../../src/pane/recent";
import { RecentList } from "../../src/pane/screens/RecentList";
import { recentWords } from "../../src/pane/words/recent";
import { goTo } from "../../src/sheet/goTo";
import { HostRefusal } from "../../src/sheet/hostRefusal";
import { gridOf } from "../reading/gridOf";
import { showInWorkbook, watchedByHand, workbookHolds } from "./shownIn";

jest.mock("../../src/sheet/readBackground");
jest.mock("../../src/sheet/watchWorkbook");
jest.mock("../../src/sheet/takeBack");
jest.mock("../../src/sheet/goTo");

const go = jest.fn();
const hops = gridOf([
  ["Athlete", "Left"],
  ["A", 150],
]);

beforeEach(() => {
  jest.resetAllMocks();
  watchedByHand();
  workbookHolds({}, []);
  jest.mocked(goTo).mockResolvedValue(undefined);
});
afterEach(cleanup);

/** The list, after a question was asked of the cells on each of these sheets in turn. */
function Asked({ sheets, question = "asymmetry" }: { readonly sheets: readonly string[]; readonly question?: string }) {
  const { note } = useRecent();
  const ask = () => {
    for (const sheet of sheets) note({ sheet, address: "A1:B2", question });
  };
  return (
    <>
      <button type="button" onClick={ask}>
        Ask
      </button>
      <RecentList go={go} />
    </>
  );
}

/** The list, while a question is asked of the hops; null where it cannot be. */
function Noting({ question }: { readonly question: string | null }) {
  useNoteRecent(hops, question);
  return <RecentList go={go} />;
}

const listed = () => screen.queryAllByRole("listitem").map((item) => item.textContent);
const press = (name: string) => userEvent.click(screen.getAllByRole("button", { name })[0]!);

it("lists the cells asked of, the latest first, each once, and few", async () => {
  showInWorkbook(<Asked sheets={["One", "Two", "Three", "Two", "Four", "Five"]} />);
  expect(screen.queryByText(recentWords.title)).toBeNull();
  await press("Ask");
  expect(listed()).toEqual(["Five", "Four", "Two", "Three"].map((sheet) => `Left-right asymmetry ${sheet} A1:B2`));
});

it("selects the cells again and asks the same of them", async () => {
  showInWorkbook(<Asked sheets={["One"]} />);
  await press("Ask");
  await press("Left-right asymmetry");
  expect(jest.mocked(goTo).mock.calls).toEqual([["One", "A1:B2"]]);
  await waitFor(() => expect(go.mock.calls).toEqual([[{ kind: "question", id: "asymmetry" }]]));
});

it("says when a sheet is gone, and drops it", async () => {
  jest.mocked(goTo).mockRejectedValue(new HostRefusal("ItemNotFound", "It is gone."));
  showInWorkbook(<Asked sheets={["One", "Two"]} />);
  await press("Ask");
  await press("Left-right asymmetry");
  await screen.findByText(recentWords.gone("Two"));
  expect(listed()).toEqual(["Left-right asymmetry One A1:B2"]);
  expect(go).not.toHaveBeenCalled();
});

it("is forgotten by a press", async () => {
  showInWorkbook(<Asked sheets={["One", "Two"]} />);
  await press("Ask");
  await press(recentWords.forget);
  expect(screen.queryByText(recentWords.title)).toBeNull();
});

it("is noted once a question is asked of cells, and not before", async () => {
  const { unmount } = showInWorkbook(<Noting question={null} />);
  expect(listed()).toEqual([]);
  unmount();
  showInWorkbook(<Noting question="jumps" />);
  expect(listed()).toEqual(["Jumps Test A1:B2"]);
});
