import { withUse } from "../../src/reading/columns";
import { recogniseColumns } from "../../src/reading/recogniseColumns";
import { columnMapAt, mostColumnMaps, noColumnMaps, parseColumnMaps, withColumnMap } from "../../src/store/columnMaps";
import { gridOf } from "../reading/gridOf";

const map = {
  ...recogniseColumns(
    gridOf([
      ["Athlete", "Squat load (kg)", "Squat reps"],
      ["A", 80, 5],
    ]),
  ),
  date: "2026-08-11",
  sameAthlete: { "J Moe": "J. Moe" },
};
const headings = map.columns.map(({ heading }) => heading);

describe("withColumnMap and columnMapAt", () => {
  const stored = withColumnMap(noColumnMaps, "s1!A3", headings, map);

  it("give back the map as it was, also through the setting's JSON", () => {
    expect(columnMapAt(stored, "s1!A3", headings)).toEqual(map);
    expect(columnMapAt(parseColumnMaps(JSON.parse(JSON.stringify(stored)))!, "s1!A3", headings)).toEqual(map);
  });

  it("give nothing for another place or other headings", () => {
    expect(columnMapAt(stored, "s1!A4", headings)).toBeNull();
    expect(columnMapAt(stored, "s1!A3", [...headings, "Note"])).toBeNull();
    expect(columnMapAt(stored, "s1!A3", ["Athlete", "Squat reps", "Squat load (kg)"])).toBeNull();
  });

  it("keep one map of a place, the last", () => {
    const again = withColumnMap(stored, "s1!A3", headings, withUse(map, 2, "none"));
    expect(again.maps).toHaveLength(1);
    expect(columnMapAt(again, "s1!A3", headings)!.columns[2]!.use).toBe("none");
  });

  it("let the place longest not used make room", () => {
    let many = stored;
    for (let row = 0; row < mostColumnMaps - 1; row++) many = withColumnMap(many, `s2!A${row}`, headings, map);
    many = withColumnMap(many, "s1!A3", headings, map);
    many = withColumnMap(many, "s3!A1", headings, map);
    expect(many.maps).toHaveLength(mostColumnMaps);
    expect(columnMapAt(many, "s1!A3", headings)).not.toBeNull();
    expect(columnMapAt(many, "s2!A0", headings)).toBeNull();
    expect(columnMapAt(many, "s2!A1", headings)).not.toBeNull();
  });
});

describe("parseColumnMaps(stored)", () => {
  const stored = withColumnMap(noColumnMaps, "s1!A3", headings, map);

  it.each([
    ["a newer version", { ...stored, version: 2 }],
    ["text", "{}"],
    ["nothing", null],
    ["a use we do not know", JSON.parse(JSON.stringify(stored).replace('"athlete"', '"coach"'))],
    ["a measure we do not know", JSON.parse(JSON.stringify(stored).replace('"load"', '"mood"'))],
    ["a map without its columns", { ...stored, maps: [{ place: "s1!A3", headings, map: { firstDataRow: 1 } }] }],
  ])("gives null for %s", (_, damaged) => expect(parseColumnMaps(damaged)).toBeNull());
});
