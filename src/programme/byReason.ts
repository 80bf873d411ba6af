import { groupBy } from "../analyses/groupBy";
import { atStart, say } from "../language/say";

/**
 * Sentences such as "Ane Berg: never tested." told once for each reason: "Never tested: Ane Berg, Kari Dahl." Sentences
 * that name nobody stay as they are.
 *
 * @param most names told of one reason; of more, only how many.
 */
export function byReason(sentences: readonly string[], most = Number.POSITIVE_INFINITY): string[] {
  const split = sentences.map(
    (sentence) => /^(?<who>[^:]+): (?<why>.+)\.$/.exec(sentence)?.groups ?? { why: sentence },
  );
  return [...groupBy(split, ({ why }) => why)].map(([why, alike]) => {
    const names = alike.flatMap(({ who }) => who ?? []);
    if (names.length === 0) return why!;
    const more = names.length > most ? say` and ${names.length - most} more` : "";
    return `${atStart(why!)}: ${names.slice(0, most).join(", ")}${more}.`;
  });
}
