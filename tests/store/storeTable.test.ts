import { batteryTable, readBattery } from "../../src/store/battery";
import { readWeights, weightsTable } from "../../src/store/qualityWeights";
import { readSquad, squadTable } from "../../src/store/squad";
import { batteryTest, squadMember } from "../sheet/storeRows";
import { typedCells } from "./cellsOf";

describe("a squad as a coach keeps it", () => {
  it("is read by its headings, wherever they stand and in any case, with columns of the coach's between", () => {
    const { squad, remarks } = readSquad(
      typedCells(
        squadTable,
        [["x", 71.5, "Back", " Ane  Berg ", "R", 2004, "178,5", "U20", null]],
        ["Mine", "BODY MASS (KG)", "role ", "athlete", "Dominant side", "Birth year", "Stature (cm)", "Group", "Notes"],
      ),
    );
    expect(remarks).toEqual([]);
    expect(squad).toEqual([
      squadMember("Ane  Berg", {
        ...{ role: "Back", group: "U20", dominantSide: "right", birthYear: 2004, bodyMass: 71.5, stature: 178.5 },
      }),
    ]);
  });

  it("passes over blank rows, tells each cell it cannot read, and reads the rest of the row", () => {
    const { squad, remarks } = readSquad(
      typedCells(squadTable, [
        ["Ane", null, null, "both", "04", "1.5 kg", { error: "#N/A" }, null],
        [null, null, " ", null, null, null, null, null],
        [null, "Wing", null, null, null, null, null, null],
        ["Bo", null, null, null, 2004.5, "dns", 1.78, null],
      ]),
    );
    expect(squad).toEqual([squadMember("Ane"), squadMember("Bo")]);
    expect(remarks).toEqual([
      { sheet: "Squad", cell: "D5", why: "“both” is neither left nor right." },
      { sheet: "Squad", cell: "E5", why: "4 is not from 1900 to 2100." },
      { sheet: "Squad", cell: "F5", why: "1.5 is not from 20 to 250." },
      { sheet: "Squad", cell: "G5", why: "The cell shows the error #N/A." },
      { sheet: "Squad", cell: "A7", why: "Nothing stands under “Athlete”; the row was left out." },
      { sheet: "Squad", cell: "E8", why: "2004.5 is not a whole number." },
      { sheet: "Squad", cell: "G8", why: "1.78 is not from 100 to 250." },
    ]);
  });

  it("counts an athlete once, and says where the first stands", () => {
    const row = (name: string, role: string) => [name, role, null, null, null, null, null, null];
    const { squad, remarks } = readSquad(typedCells(squadTable, [row("Ane Berg", "Back"), row("ane berg ", "Wing")]));
    expect(squad).toEqual([squadMember("Ane Berg", { role: "Back" })]);
    expect(remarks.map(({ cell, why }) => `${cell}: ${why}`)).toEqual([
      "A6: “ane berg” also stands in A5; only the first row counts.",
    ]);
  });

  it("goes on without a column, and says so; without the names it reads nothing", () => {
    const { squad, remarks } = readSquad(typedCells(squadTable, [["Ane"]], ["Athlete"]));
    expect(squad).toEqual([squadMember("Ane")]);
    expect(remarks).toHaveLength(7);
    expect(remarks[0]).toEqual({ sheet: "Squad", cell: "A4", why: "No column is headed “Role”." });
    const nameless = readSquad(typedCells(squadTable, [["Back"]], ["Role"]));
    expect(nameless.squad).toEqual([]);
    expect(nameless.remarks[0]!.why).toBe("No column is headed “Athlete”; no row can be read.");
  });
});

describe("a battery as a coach keeps it", () => {
  const row = (test: string, more: Readonly<Record<number, string | number>> = {}) =>
    Object.assign(Array<string | number | null>(13).fill(null), { 0: test, ...more });

  it("takes what is usual where a cell is empty: by the measure, else higher, one side, one trial, the best", () => {
    const { battery, remarks } = readBattery(
      typedCells(batteryTable, [row("Hop"), row("Drop jump", { 1: "contact time" }), row("Squat", { 1: "Load" })]),
    );
    expect(remarks).toEqual([]);
    expect(battery).toEqual([
      batteryTest("Hop"),
      batteryTest("Drop jump", { measure: "contactTime", unit: "ms", direction: "lower" }),
      batteryTest("Squat", { measure: "load", unit: "kg" }),
    ]);
  });

  it("says what is needed, and leaves out a row whose measure nobody knows", () => {
    const { battery, remarks } = readBattery(
      typedCells(batteryTable, [
        row("Hop", { 4: "hi", 5: 3, 6: 0, 7: "Mean of best two", 8: "low" }),
        row("Hop", { 1: "wobble" }),
      ]),
    );
    expect(battery).toEqual([batteryTest("Hop", { reduction: "meanOfBestTwo" })]);
    expect(remarks.map(({ sheet, cell, why }) => `${sheet}, ${cell}: ${why}`)).toEqual([
      "Battery, E5: “hi” is neither higher nor lower.",
      "Battery, F5: 3 is not from 1 to 2.",
      "Battery, G5: 0 is not from 1 to 20.",
      "Battery, I5: “low” is text; a number is needed.",
      "Battery, B6: “wobble” is no measure we know; leave it empty or choose one. The row was left out.",
    ]);
  });

  it("counts each number once: a test may stand with several measures", () => {
    const { battery, remarks } = readBattery(
      typedCells(batteryTable, [row("Squat", { 1: "load" }), row("Squat", { 1: "reps" }), row("SQUAT", { 1: "Load" })]),
    );
    expect(battery.map(({ measure }) => measure)).toEqual(["load", "repetitions"]);
    expect(remarks[0]!.why).toBe("“SQUAT, load” also stands in A5; only the first row counts.");
  });

  it("offers lists that fit into a rule of the sheet, which holds 255 characters", () => {
    for (const column of Object.values(batteryTable.columns)) {
      expect((column.choices ?? []).join(",").length).toBeLessThanOrEqual(255);
    }
  });
});

describe("weights as a coach keeps them", () => {
  it("take every headed column of numbers as a role, and a column of words as a note", () => {
    const { weights, remarks } = readWeights(
      typedCells(
        weightsTable,
        [
          ["Speed", 2, 0.5, "why not"],
          ["Strength", "much", null, null],
        ],
        ["Quality", "Wing", " Pivot", "My notes"],
      ),
    );
    expect(weights).toEqual([
      { quality: "Speed", role: "Wing", weight: 2 },
      { quality: "Speed", role: "Pivot", weight: 0.5 },
    ]);
    expect(remarks).toEqual([{ sheet: "Weights", cell: "B6", why: "“much” is text; a number is needed." }]);
  });
});
