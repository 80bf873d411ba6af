import { answerOf } from "../../src/functions/answerOf";
import { down } from "./cells";
import { installCustomFunctionsErrors } from "./customFunctionsErrors";

jest.mock("../../src/functions/reference", () => jest.requireActual("./builtReference"));

beforeAll(installCustomFunctionsErrors);

describe("answerOf(id, given)", () => {
  test("gives what the function gives", async () => {
    expect(await answerOf("TRIALSCORE", [[[171, 174, null]]])).toEqual([[174]]);
    expect(await answerOf("STRONGERSIDE", [[[171]], [[150]], [["mean"]], [[null]]])).toEqual([["Left"]]);
  });

  test("gives the reason of an error that fills the cell", async () => {
    const [[cell]] = (await answerOf("TRIALSCORE", [[["n/a?"]]])) as [[unknown]];
    expect(cell).toEqual({ error: "#VALUE!", why: "“n/a?” is text; a number is needed." });
  });

  test("gives each cell of what spills its own reason, from files fetched on demand too", async () => {
    const answer = await answerOf("JUMPHEIGHT", [down([0.5, 520, null])]);
    expect(answer).toEqual([[expect.any(Number)], [{ error: "#N/A", why: expect.stringMatching(/\w/) }], [""]]);
    const noise = await answerOf("TRIALNOISE", [[[1, null]]]);
    expect(noise).toEqual([[{ error: "#N/A", why: expect.stringMatching(/at least/i) }]]);
  });

  test("refuses several cells where one value belongs, as Excel does, before the function is called", async () => {
    expect(await answerOf("EXPECTEDRETEST", [down([31, 28, 35]), down([0.8, 0.9])])).toEqual([
      [{ error: "#VALUE!", why: "" }],
    ]);
  });

  test("takes an optional range that is left out for none", async () => {
    expect(await answerOf("COMPOSITE", [down([31, 28, 35])])).toHaveLength(3);
  });

  test("does not hide a mistake of ours", async () => {
    await expect(answerOf("NOBODYKNOWS", [])).rejects.toThrow("There is no function NOBODYKNOWS.");
  });
});
