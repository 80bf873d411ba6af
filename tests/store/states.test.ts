import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";

/**
 * Whatever we keep in a workbook beside its cells: found by walking the code, so that nothing is kept that these laws do
 * not hold for.
 */
const source = join(__dirname, "../../src");
const filesOf = (room: string) =>
  readdirSync(join(source, room), { recursive: true, encoding: "utf8" })
    .filter((file) => /\.tsx?$/.test(file))
    .map((file) => ({ file: `${room}/${file}`, text: readFileSync(join(source, room, file), "utf8") }));

const declared = filesOf("store").flatMap(({ file, text }) =>
  [...text.matchAll(/export const (\w+Setting) = "(Tapeline\.\w+)"/g)].map(([, constant, key]) => ({
    ...{ file, constant: constant!, key: key! },
    exports: require(join(source, file)) as Readonly<Record<string, unknown>>,
  })),
);

/** A state of each kind as version 1 wrote it; what comes after must go on reading these. */
const early: Readonly<Record<string, unknown>> = {
  "Tapeline.columnMaps": {
    version: 1,
    maps: [
      {
        place: "{1}!A3",
        headings: ["Athlete"],
        map: {
          firstDataRow: 1,
          columns: [{ offset: 0, letters: "A", use: "athlete", test: "", measure: null, unit: null }],
          ...{ date: null, sameAthlete: {}, includeHiddenRows: false },
        },
      },
    ],
  },
  "Tapeline.comparison": { version: 1, with: "role" },
  "Tapeline.entrySheets": {
    version: 1,
    sheets: {
      s: {
        ...{ tableId: "1", date: "2026-08-11" },
        columns: [{ heading: "Hop (cm)", use: "left", test: "Hop", measure: null, unit: "cm" }],
      },
    },
  },
  "Tapeline.marks": {
    version: 1,
    marks: {
      "s!A1": {
        ...{ sheetId: "s", address: "A1", said: "Check: odd." },
        before: {
          ...{ note: null, bold: false, italic: null },
          edges: Object.fromEntries(
            ["top", "bottom", "left", "right"].map((edge) => [
              edge,
              { style: "None", weight: "Thin", color: "#000000" },
            ]),
          ),
        },
      },
    },
  },
  "Tapeline.tables": { version: 1, tables: { squad: { tableId: "1", sheetId: "s" } } },
  "Tapeline.trySample": { version: 1, sheetId: "s", before: { sheetId: "t", address: "A1" }, settings: [] },
  "Tapeline.writtenReports": {
    version: 1,
    reports: {
      key: { tableId: "1", sheetId: "s", headings: ["Athlete"], head: ["A title"], foot: [null], chart: null },
    },
  },
};

test("all states that are kept are known here, each with a sample of its first version", () => {
  expect(declared.map(({ key }) => key).sort()).toEqual(Object.keys(early).sort());
});

test("nothing is kept under a key that is not declared in the store, or the one by which a page is known", () => {
  const kept = ["sheet", "pane", "programme", "analyses", "functions"]
    .flatMap(filesOf)
    .filter(({ file }) => !/^sheet\/(takeBack|removeAthlete|trySample)\.ts$/.test(file))
    .flatMap(({ file, text }) =>
      [...text.matchAll(/(?:settings|customProperties|customXmlParts)\s*\.(?:add|set)\(\s*([^,)]+)/g)].map(
        ([, key]) => ({ file, key: key!.trim() }),
      ),
    );
  const known = [...declared.map(({ constant }) => constant), "pageProperty"];
  expect(kept.filter(({ key }) => !known.includes(key))).toEqual([]);
  expect(kept.length).toBeGreaterThanOrEqual(6);
});

describe.each(declared.map((state) => [state.key, state] as const))("%s", (key, { exports }) => {
  const [, parse] = Object.entries(exports).find(([name]) => name.startsWith("parse"))! as [
    string,
    (stored: unknown) => unknown,
  ];
  /** What a state reads as that must not be touched: nothing, or for a choice its default. */
  const unread = key === "Tapeline.comparison" ? "squad" : null;

  it("is read as its first version wrote it", () => {
    expect(parse(JSON.parse(JSON.stringify(early[key])))).not.toEqual(unread);
  });

  it("is not read where a newer version wrote it, where it says no version, or where it is damaged", () => {
    const state = early[key] as object;
    const [record] = Object.keys(state).filter((name) => name !== "version");
    const others = [
      ...[
        { ...state, version: 2 },
        { ...state, version: "1" },
        { ...state, version: undefined },
      ],
      ...[{ ...state, [record!]: 7 }, { ...state, [record!]: undefined }, {}, [], "", "x", 0, null, undefined],
    ];
    for (const other of others) expect({ other, read: parse(other) }).toEqual({ other, read: unread });
  });
});
