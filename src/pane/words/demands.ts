import { listedUpTo } from "../../programme/listed";

const count = (number: number, noun: string): string => `${number} ${noun}${number === 1 ? "" : "s"}`;

/** What the pane says about what a sport asks for. */
export const demandWords = {
  title: "What the sport asks for",
  sport: "Sport",
  sportMeaning:
    "Fills the table of weights with how much each quality counts for each role. Common practice, no source: change every number as you know your game.",
  none: "No template: all count alike",
  weights: (number: number) => `${count(number, "weight")} to write.`,
  nothingToWrite: "The weights stand as the template has them.",
  unknownRoles: (roles: readonly string[]) =>
    `The template does not know ${roles.length === 1 ? "this role" : "these roles"} of the squad, so all counts 1 for ${roles.length === 1 ? "it" : "them"}: ${listedUpTo(roles, 5)}.`,
  unknownQualities: (qualities: readonly string[]) =>
    `The template does not know what ${listedUpTo(qualities, 5)} may be: it counts 1.`,
  untested: (qualities: readonly string[]) =>
    `Asked for, but no test in the battery stands for it: ${listedUpTo(qualities, 8)}.`,
  own: (number: number) => `${count(number, "weight")} in the table are your own`,
  keep: "Keep mine, fill what is empty",
  replace: "Replace mine, too",
  write: (sport: string) => `Write the weights for ${sport.toLowerCase()}`,
  written: (sheet: string, number: number) => `Written: ${count(number, "weight")} on ${sheet}`,
  writtenText: "A plain table: change any number there.",
  notWritten: "Nothing was written",

  picture: {
    squad: "What the game asks for, and where the squad is",
    athlete: (athlete: string) => `What is asked of ${athlete}, and where she or he stands`,
    quality: "Quality",
    asked: "Asked for",
    below: "below",
    above: "above",
    standing: "Standing",
    table: "As a table",
    squadKey: "One line for each athlete; dark: stands out by more than noise",
    athleteKey: "Dark: for certain. Light: may be, by the noise of the tests",
    notTested: "not tested",
    squadTold: (weak: number, strong: number, tested: number) => `${weak} below, ${strong} above, of ${tested}`,
    athleteTold: (points: number, reach: number | null, words: string) =>
      `${points > 0 ? "+" : points < 0 ? "−" : ""}${Math.abs(points)} points${reach === null ? ", noise not known" : ` ± ${reach}`}: ${words}`,
    points: "10 points are one standard deviation; 0 is the middle of those compared.",
  },
} as const;
