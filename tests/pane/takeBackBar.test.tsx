import { act, cleanup, screen, waitFor, within } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { words } from "../../src/pane/words";
import type { Deed } from "../../src/sheet/deed";
import { HostRefusal } from "../../src/sheet/hostRefusal";
import { type TakenBack, takeBack } from "../../src/sheet/takeBack";
import { DoneBy, showInWorkbook, watchedByHand, workbookHolds } from "./shownIn";

jest.mock("../../src/sheet/readBackground");
jest.mock("../../src/sheet/watchWorkbook");
jest.mock("../../src/sheet/takeBack");

const first: Deed = { what: "Wrote Asymmetry!A7:L33", steps: [] };
const second: Deed = { what: "Marked 3 cells", steps: [] };

beforeEach(() => {
  jest.resetAllMocks();
  watchedByHand();
  workbookHolds({}, []);
});
afterEach(cleanup);

const bar = () => within(screen.getByRole("complementary", { name: words.takeBack.label }));
const noBar = () => screen.queryByRole("complementary", { name: words.takeBack.label }) === null;
const done = (deed: Deed) => userEvent.click(screen.getByRole("button", { name: `Do: ${deed.what}` }));
const press = (name: string) => userEvent.click(bar().getByRole("button", { name }));

/** Both deeds done, the second last. */
async function show() {
  showInWorkbook(
    <>
      <DoneBy deed={first} />
      <DoneBy deed={second} />
    </>,
  );
  await done(first);
  await done(second);
}

const changed = (cells: readonly string[]) =>
  jest.mocked(takeBack).mockResolvedValueOnce({ kind: "changedSince", cells });

describe("taking back", () => {
  it("is offered only where something was written", async () => {
    showInWorkbook(<DoneBy deed={first} />);
    await act(async () => {});
    expect(noBar()).toBe(true);
  });

  it("takes back the last thing first, then the one before", async () => {
    jest.mocked(takeBack).mockResolvedValue({ kind: "takenBack", gone: [] });
    await show();
    expect(bar().getByText(second.what)).toBeTruthy();
    await press(words.takeBack.press);
    expect(takeBack).toHaveBeenLastCalledWith(second, { anyway: false });
    expect(await bar().findByText(first.what)).toBeTruthy();
    await press(words.takeBack.press);
    expect(takeBack).toHaveBeenLastCalledWith(first, { anyway: false });
    await waitFor(() => expect(noBar()).toBe(true));
  });

  it("tells which cells the coach has changed since, changes nothing, and goes on only if told", async () => {
    await show();
    changed(["Gym!C5", "Gym!C6", "Gym!C7", "Gym!C8", "Gym!C9", "Gym!C10"]);
    await press(words.takeBack.press);
    expect(bar().getByRole("alert").textContent).toContain("Gym!C5, Gym!C6, Gym!C7, Gym!C8, Gym!C9 and more");
    expect(bar().getByText(second.what)).toBeTruthy();
    expect(takeBack).toHaveBeenCalledTimes(1);
    jest.mocked(takeBack).mockResolvedValueOnce({ kind: "takenBack", gone: [] });
    await press(words.takeBack.anyway);
    expect(takeBack).toHaveBeenLastCalledWith(second, { anyway: true });
    expect(await bar().findByText(first.what)).toBeTruthy();
    expect(bar().queryByRole("alert")).toBeNull();
  });

  it("does not go on with a later deed for what was told of an earlier one", async () => {
    showInWorkbook(
      <>
        <DoneBy deed={first} />
        <DoneBy deed={second} />
      </>,
    );
    await done(first);
    changed(["Asymmetry!C9"]);
    await press(words.takeBack.press);
    expect(bar().getByRole("alert").textContent).toContain("Asymmetry!C9");
    await done(second);
    expect(bar().getByText(second.what)).toBeTruthy();
    expect(bar().queryByRole("alert")).toBeNull();
  });

  it("forgets what was taken back, not what was written while that was under way", async () => {
    showInWorkbook(
      <>
        <DoneBy deed={first} />
        <DoneBy deed={second} />
      </>,
    );
    await done(first);
    let finish: (done: TakenBack) => void = () => {};
    jest.mocked(takeBack).mockReturnValueOnce(
      new Promise((resolve) => {
        finish = resolve;
      }),
    );
    await press(words.takeBack.press);
    await done(second);
    await act(async () => finish({ kind: "takenBack", gone: [] }));
    expect(bar().getByText(second.what)).toBeTruthy();
    jest.mocked(takeBack).mockResolvedValueOnce({ kind: "takenBack", gone: [] });
    await press(words.takeBack.press);
    expect(takeBack).toHaveBeenLastCalledWith(second, { anyway: false });
    await waitFor(() => expect(noBar()).toBe(true));
  });

  it("says what the workbook refused, and can be tried again", async () => {
    await show();
    jest.mocked(takeBack).mockRejectedValueOnce(new HostRefusal("AccessDenied", "no"));
    await press(words.takeBack.press);
    expect((await bar().findByRole("alert")).textContent).toContain("is protected");
    jest.mocked(takeBack).mockResolvedValueOnce({ kind: "takenBack", gone: [] });
    await press(words.takeBack.press);
    expect(await bar().findByText(first.what)).toBeTruthy();
    expect(bar().queryByRole("alert")).toBeNull();
  });
});
