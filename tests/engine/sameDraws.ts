import fc from "fast-check";

/**
 * Loaded before each test file when faults are planted in the engine (.stryker.mjs), and only then: every mutant meets the
 * same random cases, so that a second run tells the same, and few of them, so that it ends.
 */
fc.configureGlobal({ seed: 20260101, numRuns: 25 });
