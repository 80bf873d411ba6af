import { inSentence, say } from "../../language/say";
import { listedUpTo } from "../../programme/listed";
import { many } from "./many";

/** What the pane says about what a sport asks for. */
export const demandWords = {
  title: say`What the sport asks for`,
  sport: say`Sport`,
  sportMeaning: say`Fills the table of weights with how much each quality counts for each role. Common practice, no source: change every number as you know your game.`,
  none: say`No template: all count alike`,
  weights: (number: number) => say`${many(number, "weight")} to write.`,
  nothingToWrite: say`The weights stand as the template has them.`,
  unknownRoles: (roles: readonly string[]) =>
    roles.length === 1
      ? say`The template does not know this role of the squad, so all counts 1 for it: ${roles[0]}.`
      : say`The template does not know these roles of the squad, so all counts 1 for them: ${listedUpTo(roles, 5)}.`,
  unknownQualities: (qualities: readonly string[]) =>
    say`The template does not know what ${listedUpTo(qualities, 5)} may be: it counts 1.`,
  untested: (qualities: readonly string[]) =>
    say`Asked for, but no test in the battery stands for it: ${listedUpTo(qualities, 8)}.`,
  own: (number: number) => say`${many(number, "weight")} in the table are your own`,
  keep: say`Keep mine, fill what is empty`,
  replace: say`Replace mine, too`,
  write: (sport: string) => say`Write the weights for ${inSentence(sport)}`,
  written: (sheet: string, number: number) => say`Written: ${many(number, "weight")} on ${sheet}`,
  writtenText: say`A plain table: change any number there.`,
  notWritten: say`Nothing was written`,

  picture: {
    squad: say`What the game asks for, and where the squad is`,
    athlete: (athlete: string) => say`What is asked of ${athlete}, and where she or he stands`,
    quality: say`Quality`,
    asked: say`Asked for`,
    below: say`below`,
    above: say`above`,
    standing: say`Standing`,
    table: say`As a table`,
    squadKey: say`One line for each athlete; dark: stands out by more than noise`,
    athleteKey: say`Dark: for certain. Light: may be, by the noise of the tests`,
    notTested: say`not tested`,
    squadTold: (weak: number, strong: number, tested: number) => say`${weak} below, ${strong} above, of ${tested}`,
    athleteTold: (points: number, reach: number | null, words: string) =>
      say`${points > 0 ? "+" : points < 0 ? "−" : ""}${Math.abs(points)} points${reach === null ? say`, noise not known` : ` ± ${reach}`}: ${words}`,
    points: say`10 points are one standard deviation; 0 is the middle of those compared.`,
  },
} as const;
