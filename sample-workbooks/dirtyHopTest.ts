import { type HopResult, hopTest } from "./hopTest";

/** What a cell of the dirty sheet holds; `formula` gives a cell whose error comes from a calculation. */
export type DirtyCell = number | string | null | { readonly formula: string; readonly error: string };

export type DirtyRow = { readonly athlete: string; readonly role: string; readonly trials: DirtyCell[] };

/** Row of the sheet (1-based) on which the first athlete stands. */
export const firstDirtyRow = 4;
/** Two trials typed once into a merged cell, and a row the coach hid. */
export const mergedTrials = "C8:D8";
export const hiddenRow = 12;

const trialColumns = ["C", "D", "E", "F", "G", "H"];

/** Each cell that was spoilt. Columns C to E are the left trials, F to H the right ones. */
const spoiltCells: readonly { cell: string; holds: DirtyCell; what: string }[] = [
  { cell: "C5", holds: "1.82 m", what: "text with a unit, in metres on a sheet of centimetres" },
  { cell: "F6", holds: "1,82", what: "text with a decimal comma, in metres" },
  { cell: "E7", holds: "DNS", what: "did not start" },
  { cell: "G9", holds: "inj", what: "injured" },
  { cell: "H9", holds: "-", what: "a dash for no trial" },
  { cell: "D10", holds: null, what: "blank" },
  {
    cell: "H11",
    holds: { formula: "AVERAGE(J11:L11)", error: "#DIV/0!" },
    what: "a calculation over blank cells: #DIV/0!",
  },
  { cell: "F13", holds: null, what: "the right side is missing" },
  { cell: "G13", holds: null, what: "the right side is missing" },
  { cell: "H13", holds: null, what: "the right side is missing" },
  { cell: "E15", holds: 1.62, what: "a number typed in metres" },
];

/** Twenty of the squad as a hurried helper might have typed them. */
export function dirtyHopTest(): readonly DirtyRow[] {
  const rows = hopTest()
    .slice(3, 23)
    .map((result) => ({ athlete: result.athlete.name, role: result.athlete.role as string, trials: trialsOf(result) }));
  const row = (number: number) => rows[number - firstDirtyRow] as (typeof rows)[number];

  for (const { cell, holds } of spoiltCells) {
    row(Number(cell.slice(1))).trials[trialColumns.indexOf(cell.slice(0, 1))] = holds;
  }
  row(8).trials[1] = null;
  row(16).athlete = row(14).athlete;
  row(18).athlete = `${row(17).athlete} `;
  const swapped = row(22).trials;
  row(22).trials = [...swapped.slice(3), ...swapped.slice(0, 3)];
  return rows;
}

/** What is wrong on the sheet "Hop test dirty", cell by cell, for people and for tests. */
export const plantedDirt: readonly { readonly cells: string; readonly what: string }[] = [
  ...spoiltCells.map(({ cell, what }) => ({ cells: cell, what })),
  { cells: mergedTrials, what: "two trials merged into one cell" },
  { cells: `A${hiddenRow}:H${hiddenRow}`, what: "a hidden row" },
  { cells: "A14, A16", what: "two rows with the same name" },
  { cells: "A17, A18", what: "two names that differ by a blank at the end only" },
  { cells: "C22:H22", what: "left and right swapped: the sheet Hop test has this athlete the other way round" },
];

const trialsOf = ({ left, right }: HopResult): DirtyCell[] => [...left, ...right];
