import { say } from "../../language/say";
import { many } from "./many";

/** What the pane says of a sheet for a test day. */
export const testDayWords = {
  notReady: say`Squad and tests first`,
  notReadyText: say`A sheet for a test day is made from the squad and the tests of this workbook.`,
  when: say`When`,
  day: say`Day of the test`,
  which: say`Which tests`,
  noQuality: say`Other`,
  who: (count: number) => say`Who: ${many(count, "athlete")}`,
  noRole: say`No role`,
  again: (athletes: number) => say`Make a sheet to test ${many(athletes, "athlete")} again`,
  onlyWished: say`Only the athletes who are to be tested again.`,
  noRange: (tests: readonly string[]) =>
    say`No number typed for ${tests.join(", ")} will be questioned: the battery gives no lowest and highest plausible value.`,
  chooseTests: say`Choose at least one test`,
  make: (sheet: string, athletes: number) => say`Make “${sheet}” for ${many(athletes, "athlete")}`,
  made: (sheet: string) => say`Made: ${sheet}`,
  madeText: say`Type results there, or print it and take a pencil. Afterwards:`,
  notRemembered: say`This workbook was last used with a newer Tapeline, so the sheet will not be listed under “Keep results”: select its cells there.`,
} as const;
