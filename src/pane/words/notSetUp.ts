import { say } from "../../language/say";

/** What the pane says of athletes and tests that the workbook's own tables do not know. */
export const notSetUpWords = {
  title: say`Not in squad or battery`,
  athletes: (names: readonly string[]) =>
    say`${names.slice(0, 4).join(", ")}${names.length > 4 ? say` and ${names.length - 4} more` : ""}: not in the squad. Their results count all the same, without a role.`,
  test: (name: string) => say`“${name}” is not in the battery: without quality, range and retest.`,
  readAs: (test: string) => say`Read as “${test}”`,
  isReadAs: (name: string, test: string) => say`“${name}” is read as “${test}”.`,
  readAsItStands: say`Read as it stands`,
  /** Of kept results, which are renamed where they stand. */
  mayBe: (test: string) => say`If it is “${test}”, give both tables the same name.`,
} as const;
