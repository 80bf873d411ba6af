import { cleanup, render, screen } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { useState } from "react";
import { AlikeNames } from "../../src/pane/screens/AlikeNames";
import { words } from "../../src/pane/words";
import { readResults } from "../../src/reading/readResults";
import { recogniseColumns } from "../../src/reading/recogniseColumns";
import { goTo } from "../../src/sheet/goTo";
import { gridOf } from "../reading/gridOf";

jest.mock("../../src/sheet/goTo");

beforeEach(() => jest.mocked(goTo).mockResolvedValue());
afterEach(cleanup);

const sheetOf = (...names: string[]) =>
  gridOf([["Athlete", "Sprint 10 m (s)"], ...names.map((name, row) => [name, 1.8 + row / 100])]);

/** The names as a screen shows them, with what is read of them. */
function Shown({ grid }: { readonly grid: ReturnType<typeof gridOf> }) {
  const [map, setMap] = useState(() => recogniseColumns(grid));
  const reading = readResults(grid, map);
  return (
    <>
      <AlikeNames sheet={grid.sheet} reading={reading} map={map} setMap={setMap} />
      <output>{reading.athletes.join(", ")}</output>
    </>
  );
}

const athletes = () => screen.getByRole("status").textContent;

it("asks about two spellings, and merges nothing by itself", async () => {
  render(<Shown grid={sheetOf("Ragnvi Tåkelur", "Liv Dal", "Ragnvi Takelur")} />);
  expect(screen.getByRole("heading", { name: words.alike.title })).toBeTruthy();
  expect(screen.getByText(words.alike.pair(["Ragnvi Tåkelur", "Ragnvi Takelur"]))).toBeTruthy();
  expect(athletes()).toBe("Ragnvi Tåkelur, Liv Dal, Ragnvi Takelur");
  await userEvent.click(screen.getByRole("button", { name: "Go to A4" }));
  expect(goTo).toHaveBeenCalledWith("Test", "A4");
  expect(athletes()).toBe("Ragnvi Tåkelur, Liv Dal, Ragnvi Takelur");
});

it("reads them as one person if told so, says it, and parts them again", async () => {
  render(<Shown grid={sheetOf("Ragnvi Tåkelur", "Liv Dal", "Ragnvi Takelur")} />);
  await userEvent.click(screen.getByRole("button", { name: words.alike.merge("Ragnvi Tåkelur") }));
  expect(athletes()).toBe("Ragnvi Tåkelur, Liv Dal");
  expect(screen.getByText(words.alike.merged("Ragnvi Takelur", "Ragnvi Tåkelur"))).toBeTruthy();
  await userEvent.click(screen.getByRole("button", { name: words.alike.part }));
  expect(athletes()).toBe("Ragnvi Tåkelur, Liv Dal, Ragnvi Takelur");
});

it("is not there where all names are far apart", () => {
  render(<Shown grid={sheetOf("Ane Berg", "Liv Dal")} />);
  expect(screen.queryByRole("heading", { name: words.alike.title })).toBeNull();
});
