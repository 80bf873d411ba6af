import { cleanup, screen } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import SetUpScreen from "../../src/pane/screens/SetUpScreen";
import { words } from "../../src/pane/words";
import { demandWords } from "../../src/pane/words/demands";
import { readSelection } from "../../src/sheet/readSelection";
import { setUp } from "../../src/sheet/setUp";
import { writeWeights } from "../../src/sheet/writeWeights";
import type { Background } from "../../src/store/background";
import { batteryTest, squadMember } from "../sheet/storeRows";
import { showInWorkbook, watchedByHand, workbookHolds } from "./shownIn";

jest.mock("../../src/sheet/readBackground");
jest.mock("../../src/sheet/watchWorkbook");
jest.mock("../../src/sheet/takeBack");
jest.mock("../../src/sheet/readSelection");
jest.mock("../../src/sheet/columnMaps");
jest.mock("../../src/sheet/setUp");
jest.mock("../../src/sheet/writeWeights");

const deed = { what: "Wrote weights.", steps: [{ kind: "restoreSetting", key: "x", value: undefined }] } as const;
const club: Partial<Background> = {
  squad: [squadMember("Ane", { role: "Wing" }), squadMember("Bo", { role: "Libero" })],
  battery: [batteryTest("Sprint", { quality: "Speed" }), batteryTest("Tapping", { quality: "Rhythm" })],
};

beforeEach(() => {
  jest.clearAllMocks();
  watchedByHand();
  jest.mocked(readSelection).mockResolvedValue({ kind: "empty", sheet: "Read me", address: "A1" });
  jest.mocked(writeWeights).mockResolvedValue({ sheet: "Weights", written: 9, inTheWay: null, deed });
  jest.mocked(setUp).mockResolvedValue({ sheets: ["Weights"], deed });
});
afterEach(cleanup);

const choose = async (sport: string) => userEvent.selectOptions(await screen.findByLabelText(demandWords.sport), sport);

const written = () => jest.mocked(writeWeights).mock.calls.at(-1)![0];

describe("the demands of a sport", () => {
  it("fill the table of weights, and tell what the template does not know", async () => {
    workbookHolds({ ...club, weights: [{ quality: "Speed", role: "Wing", weight: 1 }] }, [
      "squad",
      "battery",
      "weights",
      "results",
    ]);
    showInWorkbook(<SetUpScreen go={jest.fn()} />);
    await choose("Handball");
    expect(screen.getByText(demandWords.unknownRoles(["Libero"]))).toBeTruthy();
    expect(screen.getByText(demandWords.unknownQualities(["Rhythm"]))).toBeTruthy();
    await userEvent.click(screen.getByRole("button", { name: demandWords.write("Handball") }));
    expect(written()).toContainEqual({ quality: "Speed", role: "Wing", weight: 2 });
    expect(await screen.findByText(demandWords.written("Weights", 9))).toBeTruthy();
    // Taken back in one press.
    expect(screen.getByRole("button", { name: words.takeBack.press })).toBeTruthy();
  });

  it("keep the coach's own numbers, unless told to replace them", async () => {
    workbookHolds({ ...club, weights: [{ quality: "Speed", role: "Wing", weight: 3 }] }, [
      "squad",
      "battery",
      "weights",
      "results",
    ]);
    showInWorkbook(<SetUpScreen go={jest.fn()} />);
    await choose("Handball");
    const ofWing = () => written().filter(({ quality, role }) => quality === "Speed" && role === "Wing");
    await userEvent.click(screen.getByRole("button", { name: demandWords.write("Handball") }));
    expect(ofWing()).toEqual([]);
    await userEvent.selectOptions(screen.getByLabelText(demandWords.own(1)), demandWords.replace);
    await userEvent.click(screen.getByRole("button", { name: demandWords.write("Handball") }));
    expect(ofWing()).toHaveLength(1);
  });

  it("are offered where the tables are made, too", async () => {
    workbookHolds(club, ["squad", "battery", "results"]);
    showInWorkbook(<SetUpScreen go={jest.fn()} />);
    await choose("Cricket");
    await userEvent.click(screen.getByRole("button", { name: words.setUp.make(1) }));
    const tables = jest.mocked(setUp).mock.calls[0]![0];
    expect(tables.weights).toContainEqual({ quality: "Speed", role: "Fast bowler", weight: 1.5 });
    expect(tables.squad).toBeUndefined();
  });
});
