import { spawnSync } from "node:child_process";
import normal from "@stdlib/stats-base-dists-normal-quantile";
import * as simple from "simple-statistics";
import { normalQuantile } from "../../src/engine/distributions/normal";
import { mean, median, standardDeviation } from "../../src/engine/moments";
import { leastSquaresLine } from "../../src/engine/regression/leastSquaresLine";
import { quantile } from "../../src/engine/standing/quantile";
import { milliseconds, ratio, secondsOf, verdict } from "./time";

const values = Array.from({ length: 100_000 }, (_, index) => 150 + ((index * 7919) % 10_007) / 100);
const residues = values.map((_, index) => index % 997);
const points = values.map((value, index): [number, number] => [value, residues[index]!]);

/** The same question to the engine and to a library that is in general use, on the same data. */
const questions: readonly {
  readonly what: string;
  readonly ours: () => unknown;
  readonly theirs: () => unknown;
  readonly r?: string;
}[] = [
  { what: "mean", ours: () => mean(values), theirs: () => simple.mean(values), r: "mean(x)" },
  {
    what: "standard deviation",
    ours: () => standardDeviation(values),
    theirs: () => simple.sampleStandardDeviation(values),
    r: "sd(x)",
  },
  { what: "median", ours: () => median(values), theirs: () => simple.median(values), r: "median(x)" },
  {
    what: "quantile",
    ours: () => quantile(values, 0.9),
    theirs: () => simple.quantile(values, 0.9),
    r: "quantile(x, 0.9)",
  },
  {
    what: "least squares line",
    ours: () => leastSquaresLine(values, residues),
    theirs: () => simple.linearRegression(points),
    r: "lm(y ~ x)",
  },
  {
    what: "normal quantile, 1,000 times",
    ours: () => {
      for (let i = 1; i <= 1000; i += 1) normalQuantile(i / 1001);
    },
    theirs: () => {
      for (let i = 1; i <= 1000; i += 1) normal(i / 1001, 0, 1);
    },
    r: "for (i in 1:1000) qnorm(i / 1001)",
  },
];

/** (b): the engine against simple-statistics, stdlib and, where it is installed, R, each timed inside its own program. */
export async function libraries(): Promise<void> {
  console.log(`(b) the engine against libraries, ${values.length} values`);
  const byR = secondsInR();
  for (const [index, { what, ours, theirs }] of questions.entries()) {
    const [own, other] = [await secondsOf(15, ours), await secondsOf(15, theirs)];
    const r = byR[index];
    const beside = r === undefined ? "R is not installed" : `R ${milliseconds(r)}  ratio${ratio(own, r)}`;
    console.log(
      `  ${what.padEnd(30)}${milliseconds(own)}; library ${milliseconds(other)}  ratio${ratio(own, other)} ${verdict(own <= other * 1.05, "faster")}; ${beside}`,
    );
  }
}

function secondsInR(): number[] {
  const script = [
    "i <- 0:99999; x <- 150 + ((i * 7919) %% 10007) / 100; y <- i %% 997",
    "least <- function(f) min(replicate(15, { s <- proc.time()[[3]]; for (k in 1:5) f(); (proc.time()[[3]] - s) / 5 }))",
    ...questions.map(({ r }) => `cat(least(function() { ${r} }), "\\n")`),
  ].join("\n");
  const { stdout, status } = spawnSync("Rscript", ["-e", script], { encoding: "utf8" });
  return status === 0 ? stdout.trim().split(/\s+/).map(Number) : [];
}
