/** Seconds that something takes: the least of some rounds, since what else the machine does only adds to it. */
export async function secondsOf(rounds: number, deed: () => unknown): Promise<number> {
  let least = Number.POSITIVE_INFINITY;
  for (let round = 0; round < rounds; round += 1) {
    const start = performance.now();
    await deed();
    least = Math.min(least, (performance.now() - start) / 1000);
  }
  return least;
}

export const ratio = (ours: number, theirs: number): string => (ours / theirs).toFixed(2).padStart(7);

export const milliseconds = (seconds: number): string => `${(seconds * 1000).toFixed(1)} ms`.padStart(13);

/** A result against its goal, for the reader to look along. */
export const verdict = (isMet: boolean, goal: string): string => `${isMet ? "ok  " : "MISS"} (${goal})`;
