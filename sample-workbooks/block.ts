import type { TestKey } from "./battery";
import { improver, lucky } from "./plantedTruths";
import type { Chance } from "./random";

/** The training block between the two days before it and the retest: eight weeks from Monday to Sunday. */
export const block = { firstDay: "2026-08-31", weeks: 8, lightWeek: 4 } as const;

/** What the block does to true scores, in percent of them, and how much athletes differ in it. Invented. */
const effects: Readonly<Record<TestKey, { readonly mean: number; readonly spread: number }>> = {
  singleLegHop: { mean: 2, spread: 1 },
  countermovementJump: { mean: 1.5, spread: 0.8 },
  dropJumpFlight: { mean: 1.5, spread: 0.8 },
  dropJumpContact: { mean: -2, spread: 1 },
  sprint: { mean: -0.8, spread: 0.4 },
  changeOfDirection: { mean: -1.2, spread: 0.5 },
  medicineBallThrow: { mean: 3, spread: 1.5 },
  shuttleRun: { mean: 8, spread: 4 },
  backSquat: { mean: 6, spread: 2 },
  benchPress: { mean: 4, spread: 1.5 },
  calfRaise: { mean: 6, spread: 3 },
  hamstringBridge: { mean: 7, spread: 3 },
  sidePlank: { mean: 6, spread: 3 },
};

/** The true change of one athlete in one test over the block, in percent of her true score before it. */
export function trueChange(athlete: string, test: TestKey, { deviation }: Chance): number {
  const { mean, spread } = effects[test];
  const drawn = mean + spread * deviation();
  if (athlete === lucky.athlete && test === lucky.test) return 0;
  if (athlete === improver.athlete) return improver.changes[test] ?? drawn;
  return drawn;
}
