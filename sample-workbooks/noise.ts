import type { TestKey } from "./battery";
import { trialVariation } from "./plantedTruths";

/**
 * How much a result varies about the athlete's true score, as coefficients of variation in percent: `trial` from trial to
 * trial on one day, `session` with her form from day to day (shared by all trials and both sides of that day). Invented;
 * of the size that practitioners meet.
 */
export type Noise = { readonly trial: number; readonly session: number };

export const noise: Readonly<Record<TestKey, Noise>> = {
  singleLegHop: { trial: trialVariation, session: 1.5 },
  countermovementJump: { trial: 2, session: 1.25 },
  dropJumpFlight: { trial: 2.5, session: 1.5 },
  dropJumpContact: { trial: 5, session: 3 },
  sprint: { trial: 0.8, session: 0.6 },
  changeOfDirection: { trial: 1.4, session: 0.8 },
  medicineBallThrow: { trial: 3, session: 1.5 },
  // One trial a day: what varies within the day and between days cannot be told apart.
  backSquat: { trial: 0, session: 3 },
  benchPress: { trial: 0, session: 3 },
  calfRaise: { trial: 5, session: 5 },
  hamstringBridge: { trial: 5, session: 6 },
  sidePlank: { trial: 6, session: 7 },
  shuttleRun: { trial: 0, session: 5 },
};

/** Each timing gate adds this standard deviation, in seconds, of its own to a split. */
export const gateError = 0.006;

/** Noise in percent of the mean of so many trials, from one day to another. */
export const noiseOfMean = ({ trial, session }: Noise, trials: number): number =>
  Math.sqrt(session ** 2 + trial ** 2 / trials);
