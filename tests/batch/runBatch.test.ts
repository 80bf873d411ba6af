import { copyFileSync, existsSync, mkdirSync, readdirSync, readFileSync, symlinkSync, writeFileSync } from "node:fs";
import { hopTest } from "../../sample-workbooks/hopTest";
import { plantedAsymmetries } from "../../sample-workbooks/plantedTruths";
import { openWorkbook } from "../../src/batch/openWorkbook";
import { runBatch } from "../../src/batch/runBatch";
import { asymmetry } from "../../src/engine/asymmetry/asymmetry";
import { unwrap } from "../../src/engine/result";
import { keepResults } from "../../src/sheet/keepResults";
import { setUp } from "../../src/sheet/setUp";
import { batteryTest } from "../analyses/batteryTest";
import { folderOfOwn, hopTestsAlone, listen, readWith, writeWorkbook } from "./folder";

const at = folderOfOwn();
const sample = hopTestsAlone();

const copySample = (to: string): string => {
  copyFileSync(sample(), to);
  return to;
};

/** Runs a batch on the hop test; `words` come last, so that they may say otherwise. */
async function run(words: readonly string[], asked = ["--analysis", "asymmetry", "--range", "Hop test!A3:H29"]) {
  const ear = listen();
  const code = await runBatch([...asked, ...words], ear.voice);
  return { code, ...ear };
}

/** The written table, a record a row, read by an independent library. */
async function tableIn(path: string, sheet = "Asymmetry"): Promise<Record<string, unknown>[]> {
  const rows = ((await readWith(path)).getWorksheet(sheet)?.getSheetValues() ?? []) as unknown[][];
  const header = rows.findIndex((row) => row?.[1] === "Athlete");
  const headings = rows[header] ?? [];
  const end = rows.findIndex((row, place) => place > header && !row?.[1]);
  return rows
    .slice(header + 1, end < 0 ? undefined : end)
    .map((row) => Object.fromEntries(headings.flatMap((heading, column) => [[String(heading), row[column]]])));
}

describe("one workbook", () => {
  it("gets the answer the engine gives, with what was planted, and stays as it was", async () => {
    const before = readFileSync(sample());
    const { code, said, complained } = await run(["--workbook", sample(), "--out", at("new", "answer.xlsx")]);
    expect(complained).toEqual([]);
    expect(code).toBe(0);
    expect(said).toContain("   'Hop test'!A3:H29: 26 athletes, 156 results, 0 cells left out.");
    expect(said.at(-1)).toBe("1 workbook written, 0 not done.");
    expect(readFileSync(sample()).equals(before)).toBe(true);

    const rows = await tableIn(at("new", "answer.xlsx"));
    expect(rows).toHaveLength(26);
    for (const { athlete, left, right } of hopTest()) {
      const row = rows.find((each) => each.Athlete === athlete.name)!;
      expect(row["Asymmetry (%)"]).toBeCloseTo(
        unwrap(asymmetry(Math.max(...left), Math.max(...right), "percentDifference")),
        10,
      );
    }
    const beyond = rows.filter((row) => typeof row["Beyond (%)"] === "number").map((row) => row.Athlete);
    for (const { athlete, strongerSide } of plantedAsymmetries) {
      expect(beyond.includes(athlete)).toBe(strongerSide !== "neither");
    }
    expect(readdirSync(at("new"))).toEqual(["answer.xlsx"]);
  });

  it("may say the sheet in quotes, whole columns, one cell of the block, or areas", async () => {
    for (const range of ["'Hop test'!A3:H29", "Hop test!A:H", "hop test!B7", "Hop test!A3:A29,C3:H29"]) {
      const { code, said } = await run(["--workbook", sample(), "--range", range, "--replace", "--out", at("a.xlsx")]);
      expect([range, code, said[1]]).toEqual([range, 0, expect.stringContaining("26 athletes, 156 results")]);
    }
  });

  it("follows settings and corrected columns", async () => {
    const options = { settings: { reduction: "mean" }, columns: { E: "none", H: "none" }, unit: "cm" };
    writeFileSync(at("options.json"), JSON.stringify(options));
    for (const given of [JSON.stringify(options), at("options.json")]) {
      const words = ["--workbook", sample(), "--options", given, "--replace", "--out", at("a.xlsx")];
      expect((await run(words)).code).toBe(0);
      const rows = await tableIn(at("a.xlsx"));
      const { athlete, left, right } = hopTest()[0]!;
      const mean = (trials: readonly number[]) => (trials[0]! + trials[1]!) / 2;
      expect(rows.find((row) => row.Athlete === athlete.name)).toMatchObject({
        "Left (cm)": mean(left),
        "Right (cm)": mean(right),
        "Left trials": 2,
      });
    }
  });

  it("names the cells that were left out of a messy sheet, in the copy", async () => {
    const { code, said } = await run([
      "--workbook",
      sample(),
      "--range",
      "Hop test dirty!A3:H23",
      "--out",
      at("a.xlsx"),
    ]);
    expect(code).toBe(0);
    const leftOut = Number(/(\d+) cells left out/.exec(said[1]!)![1]);
    const lines = (await readWith(at("a.xlsx"))).getWorksheet("Asymmetry")!.getColumn(1).values;
    const from = lines.indexOf(`Left out (${leftOut})`);
    expect(from).toBeGreaterThan(0);
    expect(lines.slice(from).join("\n")).toContain("E7: “DNS”");
  });

  it("renews the table of an earlier run, or writes beside it when asked", async () => {
    await run(["--workbook", sample(), "--out", at("first.xlsx")]);
    const renewed = await run(["--workbook", at("first.xlsx"), "--out", at("second.xlsx")]);
    expect(renewed.said[2]).toMatch(/^ {3}Renewed: .*second\.xlsx, sheet "Asymmetry"/);
    const beside = await run(["--workbook", at("first.xlsx"), "--new-sheet", "--out", at("third.xlsx")]);
    expect(beside.said[2]).toMatch(/^ {3}Written: .*sheet "Asymmetry 2"/);
    expect(await tableIn(at("third.xlsx"), "Asymmetry 2")).toEqual(await tableIn(at("second.xlsx")));
  });

  it("leaves a table whose headings the coach changed, says so, and writes no file", async () => {
    await run(["--workbook", sample(), "--out", at("first.xlsx")]);
    const workbook = await openWorkbook(at("first.xlsx"));
    const names = (await readWith(at("first.xlsx"))).getWorksheet("Asymmetry")!.getColumn(1).values;
    await workbook.host.type(`Asymmetry!C${names.indexOf("Athlete")}`, "Mine");
    writeFileSync(at("changed.xlsx"), workbook.save().bytes);
    workbook.close();
    const { code, complained } = await run(["--workbook", at("changed.xlsx"), "--out", at("second.xlsx")]);
    expect(code).toBe(1);
    expect(complained[0]).toContain('The table on "Asymmetry" was not changed. Its headings were changed');
    expect(complained[0]).toContain("--new-sheet");
    expect(existsSync(at("second.xlsx"))).toBe(false);
  });
});

describe("the workbook's own tables", () => {
  const member = { group: null, dominantSide: null, birthYear: null, bodyMass: null, stature: null, notes: null };

  /** The hop tests with a squad, a battery in which less is better, and three athletes' results of two days. */
  async function workbookWithTables(): Promise<string> {
    const path = at("tables.xlsx");
    const workbook = await openWorkbook(sample());
    const athletes = hopTest().map(({ athlete }) => ({ ...member, athlete: athlete.name, role: "Any" }));
    await setUp({ squad: athletes, battery: [batteryTest({ test: "Crawl", direction: "lower", reduction: "best" })] });
    const kept = ["2026-08-11", "2026-09-11"].flatMap((date, day) =>
      ["A", "B", "C"].flatMap((athlete, index) =>
        [1, 2].map((trial) => ({
          ...{ date, athlete, test: "Crawl", measure: null, side: null, trial, unit: "s", source: null },
          value: 10 + index + trial + day,
        })),
      ),
    );
    await keepResults([...kept, { ...kept[0]!, test: "Run" }]);
    writeFileSync(path, workbook.save().bytes);
    workbook.close();
    return path;
  }

  it("say roles, which way is better, and hold the results that are asked about by --kept", async () => {
    const words = ["--workbook", await workbookWithTables(), "--kept", "--analysis", "standing"];
    const unnamed = await run([...words, "--out", at("a.xlsx")], []);
    expect(unnamed.complained[0]).toContain('There are several tests: "Crawl", "Run". Name one');
    const { code, said } = await run([...words, "--options", '{"test":"crawl"}', "--out", at("a.xlsx")], []);
    expect([code, said[1]]).toEqual([
      0,
      "   the table Tapeline_Results: 3 athletes, 6 of 12 results, those of the days that count, 0 cells left out.",
    ]);
    const rows = await tableIn(at("a.xlsx"), "Standing");
    // The latest day's best of two trials, by hand; the shortest first.
    expect(rows.slice(0, 3).map((row) => [row.Athlete, row["Score (s)"]])).toEqual([
      ["A", 12],
      ["B", 13],
      ["C", 14],
    ]);
  });

  it("give roles to results of a range, too", async () => {
    const path = await workbookWithTables();
    const words = ["--workbook", path, "--analysis", "standing", "--range", "Hop test!A3:H29"];
    const { code } = await run([...words, "--options", '{"columns":{"B":"none"}}', "--out", at("a.xlsx")], []);
    expect(code).toBe(0);
    expect((await tableIn(at("a.xlsx"), "Standing")).slice(0, 26).map((row) => row.Role)).toEqual(
      Array(26).fill("Any"),
    );
  });

  it("are missed where no results are kept, and need no corrections of columns", async () => {
    const words = ["--workbook", sample(), "--kept", "--analysis", "standing", "--out", at("a.xlsx")];
    expect((await run(words, [])).complained[0]).toContain("No results are kept in this workbook.");
    const corrected = await run([...words, "--options", '{"unit":"cm"}'], []);
    expect([corrected.code, corrected.complained[0]]).toEqual([2, expect.stringContaining("are for --range")]);
  });
});

describe("several workbooks", () => {
  it("are all tried; the summary names the one that failed and why", async () => {
    mkdirSync(at("squads"));
    copySample(at("squads", "a.xlsx"));
    writeFileSync(at("squads", "b.xlsx"), "no workbook at all");
    copySample(at("squads", "c.xlsx"));
    writeFileSync(at("squads", "~$c.xlsx"), "a program's own file");
    const { code, said, complained } = await run(["--workbook", at("squads", "*.xlsx"), "--out", at("out")]);
    expect(code).toBe(1);
    expect(said.filter((line) => / of 3: /.test(line))).toHaveLength(3);
    expect(said.at(-1)).toBe("2 workbooks written, 1 not done.");
    expect(complained.at(-1)).toMatch(/b\.xlsx: This is not an \.xlsx workbook\./);
    expect(readdirSync(at("out"))).toEqual(["a.xlsx", "c.xlsx"]);
    expect(await tableIn(at("out", "c.xlsx"))).toHaveLength(26);
  });

  it("are named one by one too, and need a folder", async () => {
    const both = ["--workbook", copySample(at("a.xlsx")), "--workbook", copySample(at("b.xlsx"))];
    expect((await run([...both, "--out", at("both.xlsx")])).complained[0]).toContain("--out must be a folder");
    expect((await run([...both, "--out", at("out")])).code).toBe(0);
    expect(readdirSync(at("out"))).toEqual(["a.xlsx", "b.xlsx"]);
  });

  it("of one name are refused before anything is written", async () => {
    for (const folder of ["u16", "u18"]) mkdirSync(at(folder));
    const both = ["u16", "u18"].flatMap((folder) => ["--workbook", copySample(at(folder, "squad.xlsx"))]);
    const { code, complained } = await run([...both, "--out", at("out")]);
    expect([code, complained[0]]).toEqual([2, expect.stringContaining("Two workbooks of one name")]);
    expect(existsSync(at("out"))).toBe(false);
  });
});

describe("no file is lost", () => {
  it("neither the workbook itself, by its name or by a link to it", async () => {
    const path = copySample(at("squad.xlsx"));
    symlinkSync(path, at("link.xlsx"));
    for (const out of [path, at("link.xlsx"), at("other", "..", "squad.xlsx"), at()]) {
      const { code, complained } = await run(["--workbook", path, "--replace", "--out", out]);
      expect([code, complained[0]]).toEqual([2, expect.stringContaining("--out would overwrite a workbook")]);
    }
    expect(readFileSync(path).equals(readFileSync(sample()))).toBe(true);
  });

  it("nor one that stands where the copy goes, unless it may be replaced", async () => {
    writeFileSync(at("mine.xlsx"), "mine");
    const { code, complained } = await run(["--workbook", sample(), "--out", at("mine.xlsx")]);
    expect([code, complained[0]]).toEqual([1, expect.stringContaining("is there already. Add --replace")]);
    expect(readFileSync(at("mine.xlsx"), "utf8")).toBe("mine");
    expect((await run(["--workbook", sample(), "--replace", "--out", at("mine.xlsx")])).code).toBe(0);
  });

  it("nor left half-written where it cannot be written", async () => {
    writeFileSync(at("file"), "");
    const { code, complained } = await run(["--workbook", sample(), "--out", at("file", "answer.xlsx")]);
    expect([code, complained[0]]).toEqual([1, expect.stringContaining("could not be written")]);
    expect(readdirSync(at())).toEqual(["file"]);
  });
});

describe("what cannot be answered", () => {
  it.each([
    ["Hop tst!A3:H29", 'There is no sheet "Hop tst" in it. Its sheets: Hop test, Hop test long'],
    ["A3:H29", "does not say the sheet"],
    ["Hop test!A3:H2x9", '"A3:H2x9" is no range of this workbook'],
    ["Hop test!M40:P50", "Hop test, M40:P50 holds no values. Check --range."],
    ["Hop test!A3:B29", "Say which column holds the left results, the right results."],
  ])("%s: %s", async (range, reason) => {
    const { code, complained } = await run(["--workbook", sample(), "--range", range, "--out", at("a.xlsx")]);
    expect(complained.join("\n")).toContain(reason);
    expect(code).toBe(1);
    expect(readdirSync(at())).toEqual([]);
  });

  it("shows how the columns were understood, and how to correct them", async () => {
    const { complained } = await run(["--workbook", sample(), "--range", "Hop test!A3:E29", "--out", at("a.xlsx")]);
    expect(complained).toContain('   Column C, "Left 1 (cm)": left');
    expect(complained.join()).toContain('--options \'{"columns":');
  });

  it("names the cells that hold no result", async () => {
    const rows = [["Athlete", "Left 1 (cm)", "Right 1 (cm)"], ...["A", "B"].map((name) => [name, "DNS", "inj"])];
    const path = await writeWorkbook(at("squad.xlsx"), "Hops", rows);
    const { code, complained } = await run(["--workbook", path, "--range", "Hops!A1:C3", "--out", at("a.xlsx")]);
    expect(code).toBe(1);
    expect(complained).toContain("   B2: “DNS” stands for did not start: no trial.");
  });

  it("asks which of several tests is meant, and takes the one named", async () => {
    const rows = ["Hop", "Jump"].flatMap((test, shift) =>
      ["A", "B", "C"].flatMap((name, athlete) =>
        [0, 1, 2].flatMap((trial) =>
          ["Left", "Right"].map((side) => [name, test, side, 150 + athlete * 3 + trial * 2 + shift * 40 + side.length]),
        ),
      ),
    );
    const path = await writeWorkbook(at("squad.xlsx"), "Tests", [["Athlete", "Test", "Leg", "Distance (cm)"], ...rows]);
    const words = ["--workbook", path, "--range", "Tests!A:D", "--out", at("a.xlsx")];
    const { complained } = await run(words);
    expect(complained[0]).toContain('There are several tests: "Hop", "Jump". Name one');
    expect((await run([...words, "--options", '{"test":"Swim"}'])).complained[0]).toContain('no test "Swim"');
    const { said } = await run([...words, "--options", '{"test":"jump"}']);
    expect(said[1]).toContain("3 athletes, 18 results");
    expect((await readWith(at("a.xlsx"))).getWorksheet("Asymmetry")!.getCell("A1").value).toContain("Jump");
  });
});

describe("an order that cannot be followed", () => {
  const words = () => ["--workbook", sample(), "--out", at("a.xlsx")];

  it.each([
    ["an analysis nobody knows", ["--analysis", "speed"], 'There is no analysis "speed". There are:'],
    ["options that are no JSON", ["--options", "{settings:12}"], "--options is not JSON"],
    ["options in a file that is not there", ["--options", "nowhere.json"], "neither JSON in braces nor a file"],
    ["an option nobody knows", ["--options", '{"tets":"Hop"}'], 'Unrecognized key: "tets"'],
    ["a setting nobody knows", ["--options", '{"settings":{"treshold":12}}'], 'settings: Unrecognized key: "treshold"'],
    ["a setting out of its range", ["--options", '{"settings":{"threshold":-5}}'], "settings.threshold: "],
    ["a choice that is none", ["--options", '{"settings":{"reduction":"bst"}}'], '"best"|"mean"'],
    ["a use that is none", ["--options", '{"columns":{"C":"lft"}}'], "columns.C: "],
    ["cells and kept results at once", ["--kept"], "leave one of them out"],
    ["a unit nobody knows", ["--options", '{"unit":"parsec"}'], '"parsec" is no unit known here'],
    ["a word nobody knows", ["--squad", "u16"], "--squad"],
    ["a pattern that matches nothing", ["--workbook", "nowhere/*.xlsx", "--out", "out"], "No workbook matches"],
  ])("%s", async (_, more, reason) => {
    const { code, heard, said } = await run([...words(), ...more]);
    expect(heard()).toContain(reason);
    expect(code).toBe(2);
    expect(said).toEqual([]);
    expect(readdirSync(at())).toEqual([]);
  });

  it("says what is missing, and --help how to write it", async () => {
    expect((await run([], [])).complained[0]).toContain("Missing: --workbook, --analysis, --range or --kept, --out.");
    const { code, said } = await run(["--help"], []);
    expect(code).toBe(0);
    expect(said[0]).toContain("threshold    10");
  });

  it("tells a column outside the range with the workbook", async () => {
    const { code, complained } = await run([...words(), "--options", '{"columns":{"Z":"left"}}']);
    expect([code, complained[0]]).toEqual([1, expect.stringContaining("column Z is not in the range")]);
  });
});
