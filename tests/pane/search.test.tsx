import { cleanup, fireEvent, render, screen, waitFor } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { Search } from "../../src/pane/screens/Search";
import { found } from "../../src/pane/search";
import { tasks } from "../../src/pane/tasks";

jest.mock("../../src/functions/reference", () => ({
  functionReference: [
    { id: "ASYMMETRY", subject: "Sides", alsoFoundBy: "leg", answers: "How far two sides differ.", more: "" },
    { id: "SPRINTPOWER", subject: "Sprints", alsoFoundBy: "", answers: "Power of a sprint.", more: "" },
  ],
}));

const go = jest.fn();

const field = () => screen.getByRole("combobox");
const options = () => screen.queryAllByRole("option").map((option) => option.textContent ?? "");
const chosen = () => screen.getByRole("option", { selected: true }).textContent ?? "";

describe("what is found", () => {
  const items = ["Jumps", "Hop test", "Long jump"].map((title) => ({
    ...{ title, text: "How far and how high?", alsoFoundBy: title === "Hop test" ? "one-legged jumping, Größe" : "" },
  }));
  const titles = (query: string) => found(items, query).map(({ title }) => title);

  it.each([
    ["jump", ["Jumps", "Long jump", "Hop test"]],
    ["ump", ["Jumps", "Long jump", "Hop test"]],
    ["jump far", ["Jumps", "Long jump", "Hop test"]],
    ["grosse", []],
    ["GRÖSSE", []],
    ["Grö", ["Hop test"]],
    ["gro", ["Hop test"]],
    ["jump water", []],
    ["  ", []],
  ])("for “%s”", (query, expected) => {
    expect(titles(query)).toEqual(expected);
  });
});

describe("the field", () => {
  beforeEach(() => {
    go.mockReset();
    render(<Search go={go} />);
  });
  afterEach(cleanup);

  it.each([
    ["imbalance", "Left-right asymmetry"],
    ["1RM", "Estimated strength and loads"],
    ["roster", "Squad and tests"],
    ["percentile", "Standing in the squad"],
    ["RPE", "Sessions and diary"],
  ])("knows what a coach calls %s", async (query, title) => {
    await userEvent.type(field(), query);
    expect(options().some((option) => option.startsWith(title))).toBe(true);
  });

  it("finds every capability by its title", () => {
    for (const { title } of tasks.flatMap(({ list }) => list)) {
      fireEvent.change(field(), { target: { value: title } });
      expect(chosen().startsWith(title)).toBe(true);
    }
  });

  it("goes by arrows round what was found, and there by Enter", async () => {
    await userEvent.type(field(), "asymmetry");
    await waitFor(() => expect(options().some((option) => option.startsWith("TAPELINE.ASYMMETRY"))).toBe(true));
    expect(chosen()).toContain("Left-right asymmetry");
    await userEvent.keyboard("{ArrowUp}");
    expect(chosen()).toBe(options().at(-1));
    await userEvent.keyboard("{ArrowDown}{Enter}");
    expect(go.mock.calls).toEqual([[{ kind: "question", id: "asymmetry" }]]);
    expect(field()).toBe(document.activeElement);
  });

  it("takes a function to the reference, where it is looked for", async () => {
    await userEvent.type(field(), "sprintpower");
    await waitFor(() => expect(options()).toHaveLength(1));
    await userEvent.click(screen.getByRole("option"));
    expect(go.mock.calls).toEqual([[{ kind: "functions", wished: "SPRINTPOWER" }]]);
  });

  it("says when there is nothing, and is cleared by Escape", async () => {
    await userEvent.type(field(), "xyzzy{Enter}");
    expect(screen.getByRole("status").textContent).toBe("Nothing found.");
    expect(go).not.toHaveBeenCalled();
    await userEvent.keyboard("{Escape}");
    expect(field().getAttribute("aria-expanded")).toBe("false");
    expect(screen.getByRole("status").textContent).toBe("");
  });
});
