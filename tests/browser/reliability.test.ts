import { ask, goToSheet, type OpenPage, openPage, tableNamed } from "./page";

let open: OpenPage;

beforeAll(async () => {
  open = await openPage();
}, 90_000);

afterAll(() => open.close());

describe("a coach who asks how much the hop test varies", () => {
  it("chooses the question, sees the answer for both legs, and writes it", async () => {
    await goToSheet(open.page, "Hop test");
    await ask(open.pane, "Reliability of a test");
    await open.pane.getByText(/From trial to trial the tests vary by \d\.\d % \((Left|Right) side\)/).waitFor();
    await open.pane.getByRole("button", { name: "Write to a new sheet “Reliability”" }).click();
    await open.pane.getByText("Written: Reliability, ").waitFor();
    const { headings, rows } = await tableNamed(open.page, "Tapeline_Reliability");
    expect(headings).toEqual(
      expect.arrayContaining(["Test", "Athletes", "Repeats", "Mean (cm)", "Typical error (cm)", "CV (%)"]),
    );
    expect(rows.map((row) => [row.Test, row.Athletes, row.Repeats])).toEqual([
      ["Left side", 26, 3],
      ["Right side", 26, 3],
    ]);
  });

  it("goes back to the other questions", async () => {
    await open.pane.getByRole("button", { name: "‹ Start" }).click();
    await open.pane.getByRole("button", { name: /^Left-right asymmetry/ }).waitFor();
    expect(open.complaints).toEqual([]);
  });
});
