import { many } from "../words";

/** What the pane says of a sheet for a test day. */
export const testDayWords = {
  notReady: "Squad and tests first",
  notReadyText: "A sheet for a test day is made from the squad and the tests of this workbook.",
  when: "When",
  day: "Day of the test",
  which: "Which tests",
  noQuality: "Other",
  who: (count: number) => `Who: ${many(count, "athlete")}`,
  noRole: "No role",
  again: (athletes: number) => `Make a sheet to test ${many(athletes, "athlete")} again`,
  onlyWished: "Only the athletes who are to be tested again.",
  noRange: (tests: readonly string[]) =>
    `No number typed for ${tests.join(", ")} will be questioned: the battery gives no lowest and highest plausible value.`,
  chooseTests: "Choose at least one test",
  make: (sheet: string, athletes: number) => `Make “${sheet}” for ${many(athletes, "athlete")}`,
  made: (sheet: string) => `Made: ${sheet}`,
  madeText: "Type results there, or print it and take a pencil. Afterwards:",
  notRemembered:
    "This workbook was last used with a newer Tapeline, so the sheet will not be listed under “Keep results”: select its cells there.",
} as const;
