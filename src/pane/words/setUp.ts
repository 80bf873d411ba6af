import { say } from "../../language/say";

/** What the pane says about setting up, beside the words that other screens share. */
export const setUpWords = {
  caution: say`Maximal tests are for those who are well, warmed up and used to them; under-18s only under qualified supervision. Pain, or back from an injury: whoever treats the athlete says what may be tested. Each test's own caution stands in its row of the table.`,
} as const;
