import { runBatch } from "./runBatch";
import { runEvaluate } from "./runEvaluate";
import type { Voice } from "./voice";

const voice: Voice = {
  say: (line) => void process.stdout.write(`${line}\n`),
  complain: (line) => void process.stderr.write(`${line}\n`),
};

const runs = { batch: runBatch, evaluate: runEvaluate } as const;

/** Runs what the command line names first with the words behind it; gives the exit code. */
export const main = ([name, ...words]: readonly string[]): Promise<number> =>
  runs[name as keyof typeof runs](words, voice);
