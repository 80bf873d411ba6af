import { liveCells, quotedText, sameRows } from "../../src/analyses/liveCells";
import { readResults } from "../../src/reading/readResults";
import { recogniseColumns } from "../../src/reading/recogniseColumns";
import { gridOf } from "../reading/gridOf";

function read(rows: Parameters<typeof gridOf>[0]) {
  const grid = { ...gridOf(rows), sheet: "Hop test" };
  const map = recogniseColumns(grid);
  const { results } = readResults(grid, map);
  const of = (athlete: string, side?: "left" | "right") =>
    results.filter((result) => result.athlete === athlete && (side === undefined || result.side === side));
  return { source: { grid, map }, of };
}

const wide = read([
  ["Athlete", "Left 1 (cm)", "Left 2 (cm)", "Right 1 (cm)", "Left 3 (cm)", "Right 2 (cm)"],
  ["Alva", 150, 152, 160, 151, 161],
  [" Berit ", 140, "DNS", 150, 141, 152],
  ['Kari "K"', "1.82 m", 180, 181, 182, 183],
]);

const long = read([
  ["Athlete", "Side", "Distance (cm)"],
  ["Alva", "left", 150],
  ["Alva", "left", 152],
  ["Alva", "right", 160],
  ["Berit", "left", 140],
  ["Alva", "left", 151],
]);

describe("liveCells(results, source)", () => {
  it("is a range where the cells fill one, across or down, else an array of the cells", () => {
    expect(liveCells(wide.of("Alva", "left").slice(0, 2), wide.source)).toBe("'Hop test'!$B$2:$C$2");
    expect(liveCells(wide.of("Alva", "left"), wide.source)).toBe(
      "CHOOSE({1,2,3},'Hop test'!$B$2,'Hop test'!$C$2,'Hop test'!$E$2)",
    );
    expect(liveCells(long.of("Berit"), long.source)).toBe("'Hop test'!$C$5");
    expect(liveCells(long.of("Alva").slice(0, 3), long.source)).toBe("'Hop test'!$C$2:$C$4");
  });

  it("is nothing for no results, for a cell that holds other than what was used, and for cells elsewhere", () => {
    expect(liveCells([], wide.source)).toBeNull();
    expect(wide.of('Kari "K"', "left")).toHaveLength(3);
    expect(liveCells(wide.of('Kari "K"', "left"), wide.source)).toBeNull();
    expect(liveCells(wide.of('Kari "K"', "right"), wide.source)).toBe("CHOOSE({1,2},'Hop test'!$D$4,'Hop test'!$F$4)");
    expect(liveCells([{ ...wide.of("Alva")[0]!, cell: "Other!B2" }], wide.source)).toBeNull();
    expect(liveCells([{ ...wide.of("Alva")[0]!, cell: "Z99" }], wide.source)).toBeNull();
  });
});

describe("sameRows(results, source)", () => {
  it("asks whether the rows still have the athlete's name, as the reading trims it", () => {
    expect(sameRows(wide.of("Alva"), wide.source)).toBe("TRIM('Hop test'!$A$2)=\"Alva\"");
    expect(sameRows(wide.of("Berit"), wide.source)).toBe("TRIM('Hop test'!$A$3)=\"Berit\"");
    expect(sameRows(wide.of('Kari "K"'), wide.source)).toBe('TRIM(\'Hop test\'!$A$4)="Kari ""K"""');
    expect(sameRows(long.of("Alva"), long.source)).toBe(
      "AND(SUMPRODUCT(--(TRIM('Hop test'!$A$2:$A$4)=\"Alva\"))=3,TRIM('Hop test'!$A$6)=\"Alva\"," +
        "SUMPRODUCT(--(TRIM('Hop test'!$B$2:$B$3)=\"left\"))=2,TRIM('Hop test'!$B$4)=\"right\",TRIM('Hop test'!$B$6)=\"left\")",
    );
  });

  it("asks for the side, the test and the day of each row where columns say them", () => {
    expect(sameRows(long.of("Alva", "left").slice(0, 2), long.source)).toBe(
      "AND(SUMPRODUCT(--(TRIM('Hop test'!$A$2:$A$3)=\"Alva\"))=2,SUMPRODUCT(--(TRIM('Hop test'!$B$2:$B$3)=\"left\"))=2)",
    );
    const dated = read([
      ["Athlete", "Date", "Test", "Distance (cm)"],
      ["Alva", 46245, "Hop", 150],
      ["Alva", 46245, "Jump", 152],
    ]);
    expect(sameRows(dated.of("Alva"), dated.source)).toBe(
      "AND(SUMPRODUCT(--(TRIM('Hop test'!$A$2:$A$3)=\"Alva\"))=2,TRIM('Hop test'!$C$2)=\"Hop\",TRIM('Hop test'!$C$3)=\"Jump\",SUMPRODUCT(--('Hop test'!$B$2:$B$3=46245))=2)",
    );
  });

  it("is nothing where no column says whose row it is", () => {
    const columns = wide.source.map.columns.map((column) => ({ ...column, use: "none" as const }));
    expect(sameRows(wide.of("Alva"), { ...wide.source, map: { ...wide.source.map, columns } })).toBeNull();
    expect(sameRows([], wide.source)).toBeNull();
  });
});

test("quotedText(text) doubles the quotes", () => expect(quotedText('a "b"')).toBe('"a ""b"""'));
