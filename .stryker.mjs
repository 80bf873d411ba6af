// Mutation testing of the engine (`npm run mutation`): each mutant is a small fault planted in a copy, and a test must fail.
// A part only: `npm run mutation -- --mutate 'src/engine/strength/**'`. Results are kept, so that a second run does only
// what changed; the report is reports/mutation.html.
import { readFileSync } from "node:fs";

const { jest } = JSON.parse(readFileSync(new URL("package.json", import.meta.url), "utf8"));
const pure = jest.projects.find((project) => project.displayName === "pure");

// Few random cases for each mutant: see tests/draws.ts.
process.env.DRAWS_RUNS = "25";

/** @type {import("@stryker-mutator/api/core").PartialStrykerOptions} */
export default {
  mutate: ["src/engine/**/*.ts"],
  testRunner: "jest",
  jest: {
    config: {
      ...pure,
      rootDir: ".",
      // Said though empty: left out, Jest takes ten times as long for each mutant.
      projects: [],
      testMatch: ["<rootDir>/tests/engine/**/*.test.ts"],
      testTimeout: jest.testTimeout,
    },
  },
  coverageAnalysis: "perTest",
  concurrency: 1,
  // Long: on a busy machine a slow run is no endless one. Loops without end are counted, not timed, in most cases.
  timeoutMS: 20_000,
  incremental: true,
  incrementalFile: ".cache/mutation/results.json",
  tempDirName: ".cache/mutation/copies",
  // The copy holds no more than the engine, the words it speaks with, and its tests.
  ignorePatterns: [
    "**",
    "!src/engine/**",
    "!src/language/**",
    "!tests/engine/**",
    "!tests/reference/**",
    "!tests/jest-preset.json",
    "!tests/draws.ts",
  ],
  reporters: ["clear-text", "html"],
  clearTextReporter: { reportTests: false, allowColor: false },
  htmlReporter: { fileName: "reports/mutation.html" },
  thresholds: { high: 95, low: 90, break: 0 },
};
