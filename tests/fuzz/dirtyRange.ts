import { areaAddress } from "../../src/reading/address";
import type { Cell, Grid } from "../../src/reading/grid";
import type { Random } from "./random";

/** A selection as a coach's sheet might hold it on its worst day: a plausible layout with dirt of every kind in it. */
export function dirtyRange(random: Random): Grid {
  const columns = layoutOf(random);
  const rowCount = random.below(random.happens(0.05) ? 200 : 18);
  const dirt = random.oneOf([0, 0.05, 0.2, 0.6]);
  const spoilt = (cell: Cell, likely = dirt): Cell => (random.happens(likely) ? dirtyCell(random) : cell);
  const rows: Cell[][] = [
    ...Array.from({ length: random.below(3) }, () =>
      columns.map((_, index): Cell => (index === 0 ? random.oneOf(titles) : spoilt(null, dirt / 4))),
    ),
    ...(random.happens(0.9) ? [columns.map(({ heading }) => spoilt(heading, dirt / 4))] : []),
    ...Array.from({ length: rowCount }, (_, row) =>
      random.happens(0.03) ? columns.map(() => null) : columns.map(({ cell }) => spoilt(cell(row))),
    ),
  ];
  const cells = rows.length === 0 ? [[null]] : rows;
  const [firstRow, firstColumn] = [random.below(40), random.below(30)];
  const some = (count: number) => Array.from({ length: count }, (_, at) => at).filter(() => random.happens(0.08));
  return {
    ...{ sheet: random.oneOf(["Test", "Hop's", "=1+1", "A1"]), firstRow, firstColumn, cells },
    hiddenRows: random.happens(0.2) ? some(cells.length) : [],
    unselectedRows: random.happens(0.1) ? some(cells.length) : [],
    unselectedColumns: random.happens(0.05) ? some(columns.length) : [],
    mergedAreas: random.happens(0.1) ? [mergedArea(random, firstRow, firstColumn, cells)] : [],
  };
}

type DirtyColumn = { readonly heading: Cell; readonly cell: (row: number) => Cell };

function layoutOf(random: Random): DirtyColumn[] {
  const names: DirtyColumn = {
    heading: random.oneOf(["Athlete", "Name", "Player", "athlete "]),
    cell: (row) => random.oneOf([`Ane ${row}`, `Bo ${row % 5}`, `  Cia ${row % 3}`]),
  };
  const middle = random.oneOf([0.3, 5, 40, 180, 1900]);
  const number = (): Cell => Math.round(middle * (0.7 + random.share() * 0.6) * 1000) / 1000;
  const results = (heading: string): DirtyColumn => ({ heading, cell: number });
  const words = (heading: string, list: readonly Cell[]): DirtyColumn => ({ heading, cell: () => random.oneOf(list) });
  const wide = [names, ...Array.from({ length: 1 + random.below(6) }, () => results(random.oneOf(resultHeadings)))];
  const long = [
    names,
    words("Test", ["Hop", "Jump", "Sprint 10 m"]),
    words("Side", ["left", "right", "L", "R", "venstre"]),
    words("Date", [46245, "2026-08-11", "11.08.2026", "soon"]),
    words("Trial", [1, 2, 3, "No. 2"]),
    results(random.oneOf(["Result", "Result (cm)", "Value"])),
    words("Unit", ["cm", "m", "s", "stone"]),
  ].filter((_, index) => index === 0 || index === 5 || random.happens(0.6));
  const more = [
    words("Role", ["Wing", "Back", null]),
    words("Measure", ["Jump height", "Load", "Whatever"]),
    words("Body mass (kg)", [61, "72,5", 6400, null]),
    words("Stature (m)", [1.7, 171, "1,82 m"]),
    words("", [null, "note"]),
  ].filter(() => random.happens(0.2));
  const columns = [...(random.happens(0.5) ? wide : long), ...more];
  return random.happens(0.2) ? shuffled(random, columns) : columns;
}

const resultHeadings = [
  ...["Left 1 (cm)", "Left 2 (cm)", "Right 1 (cm)", "Right 2", "Hop left (m)", "Hop right (cm)", "Jump height (cm)"],
  ...["Sprint 10 m (s)", "Load (kg)", "Reps", "Result", "20 m", "Flight time (ms)", "Grip (kg)", "Left", "Right"],
];

const titles: readonly Cell[] = ["Hop test", "11 August 2026", "Squad: first team", 46245, null];

const dirtyCell = (random: Random): Cell => (random.happens(0.7) ? random.oneOf(dirtyCells) : noise(random));

/** A text of any letters, control characters and half surrogates among them. */
const noise = (random: Random): string =>
  String.fromCharCode(
    ...Array.from({ length: random.below(12) }, () => random.below(random.oneOf([128, 1024, 65536]))),
  );

const dirtyCells: readonly Cell[] = [
  ...[null, null, "", " ", "\u00a0", "\t", "\n", "\u200b", "-", "–", "x", "DNS", "n/a", "injured", "?", "abs"],
  ...["182 cm", "1.82 m", "182,5", "1,234", "1.234,5", "1 234", "1e3", "0x10", "12;13", "12/13", "7-8", "~5", "<3"],
  ...["5\u00a0m", "12 stone", "3 %", "1:02", "1:02.5", "½", "١٢", "１２", "+5", "-5", "(5)", "5*", "5 (PB)"],
  ...["=1+1", "+A1", "-A1", "@SUM(A1)", '=HYPERLINK("x")', "'5", "\t=1", "<b>5</b>", "<script>alert(1)</script>"],
  ...["\u202e5.1", "\u2066Ane\u2069", "__proto__", "constructor", "toString", "hasOwnProperty", "|", "a|b", "🏃"],
  ...[0, -0, -1, -180, 1e-12, 1e9, 1e15, 1e300, Number.MAX_VALUE, Number.MIN_VALUE, 46245, 1800, 18, 1.8, 0.018],
  ...[true, false, { error: "#N/A" }, { error: "#DIV/0!" }, { error: "#SPILL!" }],
  ...["a".repeat(32_767), "9".repeat(400), "5 ".repeat(500)],
];

function mergedArea(random: Random, row: number, column: number, cells: readonly (readonly Cell[])[]): string {
  const [height, width] = [1 + random.below(4), 1 + random.below(2)];
  return areaAddress(row + random.below(cells.length), column + random.below(cells[0]!.length), height, width);
}

function shuffled<T>(random: Random, list: readonly T[]): T[] {
  const left = [...list];
  return list.map(() => left.splice(random.below(left.length), 1)[0]!);
}
