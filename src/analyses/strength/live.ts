import { strengthEquations } from "../../engine/strength/equations";
import { compareAddresses, placeOf } from "../../reading/address";
import type { MeasureKey } from "../../reading/measures";
import type { TestResult } from "../../reading/testResult";
import { bodiesOf } from "../bodies";
import type { LiveContext, LiveFields } from "../liveFormulas";
import { platesFrom } from "./plates";
import { type LiftedSet, liftedSets, setsThatCount } from "./sets";
import type { StrengthRow, StrengthSettings } from "./strength";
import { plates, rowName } from "./words";

/**
 * The estimate follows the sets it is the highest of, and with it all that is worked out from it, down to the plates.
 * Which set that is, and the answers of the other equations, follow where there is one set only. Body mass is what it was.
 */
export function live({ athlete, row }: StrengthRow, context: LiveContext<StrengthSettings>): LiveFields<StrengthRow> {
  const { settings, background } = context;
  const own = context.results.filter((result) => result.athlete === athlete);
  const { sets } = liftedSets(own, settings.equation);
  const counted = setsThatCount(sets.filter(({ attempt }) => rowName(attempt) === row));
  const lifted = referencesTo(counted, own, context.cells);
  if (lifted === null) return {};
  const { load, repetitions, reserve } = lifted;
  const estimates = (equation: string) =>
    `TAPELINE.ONEREPMAX(${[load, repetitions, `"${equation}"`, ...(reserve ? [reserve] : [])].join(",")})`;
  const isOne = counted.length === 1;
  const maximum = isOne ? estimates(settings.equation) : `MAX(${estimates(settings.equation)})`;
  const all = strengthEquations.map(({ name }) => estimates(name)).join(",");

  const bar = `${settings.bar},{${platesFrom(settings.smallestPlate).join(";")}},"${settings.rounding}"`;
  const planned = `${settings.repetitions},"${settings.equation}",${settings.reserve}`;
  const wanted = `TAPELINE.LOADFORREPS(${maximum},${planned})`;
  const workingLoad = `TAPELINE.BARLOAD(${wanted},${bar})`;
  const { mass } = bodiesOf(own, background)(athlete, counted[0]!.attempt.date);
  return {
    load: isOne ? load : null,
    repetitions: isOne ? (reserve ? `${repetitions}+${reserve}` : repetitions) : null,
    maximum,
    lowest: isOne ? `MIN(${all})` : null,
    highest: isOne ? `MAX(${all})` : null,
    relative: mass === null ? null : `TAPELINE.RELATIVESTRENGTH(${maximum},${mass})`,
    workingLoad,
    share: `100*${workingLoad}/${maximum}`,
    plates: `IF(${workingLoad}=${settings.bar},"${plates([])}",TEXTJOIN(" + ",TRUE,TAPELINE.BARPLATES(${wanted},${bar})))`,
  };
}

const measures = ["load", "repetitions", "repetitionsInReserve"] as const satisfies readonly MeasureKey[];

type References = { readonly load: string; readonly repetitions: string; readonly reserve: string | null };

/**
 * Loads and repetitions of the sets, as two arguments whose cells go together one by one; null where they do not lie
 * alike on the sheet, or a cell holds other than what was used (pounds).
 */
function referencesTo(
  sets: readonly LiftedSet[],
  results: readonly TestResult[],
  cells: LiveContext<StrengthSettings>["cells"],
): References | null {
  const inOrder = [...sets].sort((a, b) => compareAddresses(a.attempt.cells.load!, b.attempt.cells.load!));
  const references = measures.map((measure) => {
    const used = inOrder.flatMap(({ attempt }) => attempt.cells[measure] ?? []);
    if (used.length === 0) return null;
    const found = used.flatMap(
      (cell) => results.find((result) => result.cell === cell && result.measure === measure) ?? [],
    );
    const isAsRead = found.every(({ value }, index) => value === inOrder[index]!.attempt.values[measure]);
    const goTogether =
      isAsRead &&
      areAlike(
        used,
        inOrder.map(({ attempt }) => attempt.cells.load!),
      );
    return goTogether ? cells(found) : undefined;
  });
  const [load, repetitions, reserve] = references;
  if (!load || !repetitions || reserve === undefined) return null;
  return { load, repetitions, reserve };
}

/** Whether two lists of cells are equally many, each as far from the other's as the first. */
function areAlike(one: readonly string[], other: readonly string[]): boolean {
  const distances = one.map((cell, index) => {
    const [a, b] = [placeOf(cell), placeOf(other[index] ?? cell)];
    return `${a.row - b.row}|${a.column - b.column}`;
  });
  return one.length === other.length && new Set(distances).size <= 1;
}
