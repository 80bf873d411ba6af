import fc from "fast-check";

/**
 * Loaded before each test file: properties meet the same random cases in every run, so that a run can be repeated and
 * what passed here passes elsewhere. Other cases, and more of them: `npm run test:draws`, which sets what is read here.
 * The mutation run asks for few, so that it ends.
 */
const { DRAWS_SEED, DRAWS_RUNS } = process.env;
fc.configureGlobal({
  seed: Number(DRAWS_SEED ?? 20_260_101),
  numRuns: Number(DRAWS_RUNS ?? 50),
});
