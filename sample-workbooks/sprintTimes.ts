import { gates } from "./battery";

/**
 * Times at the gates of a run whose speed grows towards its maximum as 1 - exp(-t / T), with T the time constant: the usual
 * model of a sprint. `time30` and T in seconds.
 */
export function sprintTimes(time30: number, timeConstant: number): number[] {
  const ground = (time: number): number => time - timeConstant * (1 - Math.exp(-time / timeConstant));
  const maximalSpeed = 30 / ground(time30);
  return gates.map((distance) => {
    let [early, late] = [0, time30];
    for (let halving = 0; halving < 40; halving++) {
      const middle = (early + late) / 2;
      if (maximalSpeed * ground(middle) < distance) early = middle;
      else late = middle;
    }
    return late;
  });
}
