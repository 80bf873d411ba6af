import { german } from "../../src/language/german";
import { english, speak } from "../../src/language/say";
import type { TableCells } from "../../src/store/storeTable";

/** A table made in one language is read in the other: clubs share workbooks, and programs change their language. */

const cells = (headings: readonly string[], ...body: TableCells["body"]): TableCells => ({
  ...{ sheet: "Tests", headings, firstRow: 4, firstColumn: 0, body },
});

const inGerman = cells(
  ["Test", "Messwert", "Fähigkeit", "Einheit", "Besser", "Seiten", "Versuche", "Wert"],
  ["Sprint", "10 m", "Geschwindigkeit", "s", "niedriger", 1, 3, "Mittel der besten zwei"],
);
const inEnglish = cells(
  ["Test", "Measure", "Quality", "Unit", "Better", "Sides", "Trials", "Score"],
  ["Sprint", "10 m", "Speed", "s", "lower", 1, 3, "mean of best two"],
);

afterEach(() => {
  speak(english);
  jest.resetModules();
});

// What tables are called is said when their files are loaded, so each language loads them anew.
describe.each([english, german])("with the language $tag", (language) => {
  async function battery(table: TableCells) {
    jest.resetModules();
    (await import("../../src/language/say")).speak(language);
    return (await import("../../src/store/battery")).readBattery(table).battery;
  }

  it.each([inEnglish, inGerman])("a battery is read, whichever language it was made in", async (table) => {
    expect(await battery(table)).toMatchObject([
      { test: "Sprint", measure: "time10", unit: "s", direction: "lower", trials: 3, reduction: "meanOfBestTwo" },
    ]);
  });
});
