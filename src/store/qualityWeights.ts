import { say } from "../language/say";
import { name, number } from "./columnKinds";
import { nameKey } from "./sameName";
import { readStoreTable, type StoreRemark, type StoreTable, type TableCells } from "./storeTable";

/** How much a quality counts for a role, in the coach's judgement: 0 not at all, 1 as any other, 2 twice as much. */
export type QualityWeight = {
  readonly quality: string;
  readonly role: string;
  readonly weight: number;
};

/** A row of the table; its weights stand in one column per role. */
export type WeightsRow = { readonly quality: string };

export const weightsTable: StoreTable<WeightsRow> = {
  id: "weights",
  name: "Tapeline_Weights",
  sheet: say`Weights`,
  title: say`Weights of qualities by role`,
  use: say`0: does not count for the role. 1: counts as any other. 2: counts twice. Your judgement. Add a column for a new role.`,
  columns: {
    quality: { ...name, heading: say`Quality`, meaning: say`Spelled as in the battery.`, width: 24 },
  },
  further: {
    meaning: say`How much each quality counts for this role, from 0 up; empty counts as 1.`,
    ...number("0.0#", 0, 100),
    width: 14,
  },
  once: ({ quality }) => ({ key: nameKey(quality), called: `“${quality}”` }),
};

export function readWeights(cells: TableCells): {
  weights: readonly QualityWeight[];
  remarks: readonly StoreRemark[];
} {
  const { rows, remarks } = readStoreTable(weightsTable, cells);
  const weights = rows.flatMap(({ row, further }) =>
    further.map(({ heading, value }) => ({ quality: row.quality, role: heading, weight: value })),
  );
  return { weights, remarks };
}

const distinct = (names: readonly string[]): string[] => [
  ...new Map(names.map((name) => [nameKey(name), name])).values(),
];

/** The weights as a matrix: a row per quality, a column per role, null where none is given. */
export function weightsMatrix(weights: readonly QualityWeight[]): {
  readonly roles: readonly string[];
  readonly rows: readonly { readonly quality: string; readonly weights: readonly (number | null)[] }[];
} {
  const roles = distinct(weights.map(({ role }) => role));
  const given = new Map(weights.map(({ quality, role, weight }) => [`${nameKey(quality)}|${nameKey(role)}`, weight]));
  return {
    roles,
    rows: distinct(weights.map(({ quality }) => quality)).map((quality) => ({
      quality,
      weights: roles.map((role) => given.get(`${nameKey(quality)}|${nameKey(role)}`) ?? null),
    })),
  };
}

/** All qualities count alike for all roles, until the coach says otherwise. */
export const defaultWeights = (roles: readonly string[], qualities: readonly string[]): QualityWeight[] =>
  qualities.flatMap((quality) => roles.map((role) => ({ quality, role, weight: 1 })));
