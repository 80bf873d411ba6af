import type { Host } from "../../src/host";
import { readBackground } from "../../src/sheet/readBackground";
import { setUp } from "../../src/sheet/setUp";
import { takeBack } from "../../src/sheet/takeBack";
import { writeWeights } from "../../src/sheet/writeWeights";
import { openWorkbook, valuesAt } from "./openWorkbook";
import { workbookImage } from "./workbookImage";

let host: Host;
beforeEach(() => {
  host = openWorkbook();
});
afterEach(() => host.dispose());

const weight = (quality: string, role: string, value: number) => ({ quality, role, weight: value });

const standing = async () => (await readBackground()).background.weights;

describe("writeWeights(weights)", () => {
  it("makes the table where there is none, and goes with one take back", async () => {
    const before = await workbookImage(host);
    const { sheet, deed } = await writeWeights([weight("Speed", "Wing", 2)]);
    expect(sheet).toBe("Weights");
    expect(await standing()).toEqual([weight("Speed", "Wing", 2)]);
    await takeBack(deed);
    expect(await workbookImage(host)).toBe(before);
  });

  it("writes what it is given, gives it rows and columns, and touches nothing else", async () => {
    await setUp({ weights: [weight("Speed", "Wing", 1), weight("Strength", "Wing", 1)] });
    await host.type("Weights!B6", "1.7");
    const before = await workbookImage(host, "A1:H12");
    const syncs = host.syncs;
    const outcome = await writeWeights([
      ...[weight("speed", "Wing", 2), weight("Speed", "Pivot", 0.5), weight("Endurance", "Wing", 1.5)],
      weight("Endurance", "Pivot", 1),
    ]);
    expect(host.syncs - syncs).toBeLessThanOrEqual(4);
    expect(outcome.inTheWay).toBeNull();
    expect(await valuesAt("Weights", "A4:C7")).toEqual([
      ["Quality", "Wing", "Pivot"],
      ["Speed", 2, 0.5],
      ["Strength", 1.7, ""],
      ["Endurance", 1.5, 1],
    ]);
    expect(await standing()).toContainEqual(weight("Endurance", "Pivot", 1));
    await takeBack(outcome.deed);
    expect(await workbookImage(host, "A1:H12")).toBe(before);
  });

  it("fills the blank row of a table made before there were roles", async () => {
    await setUp({ weights: [] });
    await writeWeights([weight("Speed", "Wing", 2), weight("Strength", "Wing", 1)]);
    expect(await valuesAt("Weights", "A4:B6")).toEqual([
      ["Quality", "Wing"],
      ["Speed", 2],
      ["Strength", 1],
    ]);
  });

  it("leaves a formula of the coach's", async () => {
    await setUp({ weights: [weight("Speed", "Wing", 1), weight("Strength", "Wing", 1)] });
    await host.type("Weights!B5", "=B6*2");
    await writeWeights([weight("Speed", "Wing", 0.5), weight("Strength", "Wing", 0.7)]);
    expect(await valuesAt("Weights", "B5:B6")).toEqual([[1.4], [0.7]]);
  });

  it("says what is in the way, and writes nothing", async () => {
    await setUp({ weights: [weight("Speed", "Wing", 1)] });
    await host.type("Weights!C5", "mine");
    const before = await workbookImage(host, "A1:H12");
    const { inTheWay, written } = await writeWeights([weight("Speed", "Wing", 2), weight("Speed", "Pivot", 2)]);
    expect({ inTheWay, written }).toMatchObject({ written: 0, inTheWay: { sheet: "Weights", cell: "C5" } });
    expect(await workbookImage(host, "A1:H12")).toBe(before);
  });
});
