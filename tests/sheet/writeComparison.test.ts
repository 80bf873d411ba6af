import type { Host } from "../../src/host";
import { readBackground } from "../../src/sheet/readBackground";
import { takeBack } from "../../src/sheet/takeBack";
import { writeComparison } from "../../src/sheet/writeComparison";
import { comparisonSetting, parseComparison } from "../../src/store/comparison";
import { openWorkbook } from "./openWorkbook";

let host: Host;
beforeEach(() => {
  host = openWorkbook();
});
afterEach(() => host.dispose());

const comparedWith = async () => (await readBackground()).background.comparedWith;

describe("writeComparison(comparison)", () => {
  it("is read back with the background, and taken back to what was there, or was not", async () => {
    const before = host.syncs;
    const first = await writeComparison("role");
    expect(host.syncs - before).toBeLessThanOrEqual(2);
    const second = await writeComparison("age");
    expect(await comparedWith()).toBe("age");
    await takeBack(second.deed);
    expect(await comparedWith()).toBe("role");
    await takeBack(first.deed);
    expect(await comparedWith()).toBeUndefined();
  });

  it("reads a setting of a newer version, or a damaged one, as the squad", async () => {
    expect([{ version: 2, with: "role" }, "role", null].map(parseComparison)).toEqual(["squad", "squad", "squad"]);
    expect(comparisonSetting).toBe("Tapeline.comparison");
  });
});
