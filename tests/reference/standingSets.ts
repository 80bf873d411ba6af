import type { Direction } from "../../src/engine/trials/reduction";
import { column, expected, labels } from "./reference";

const events = ["hurdles", "highjump", "shot", "run200m", "longjump", "javelin", "run800m"];

/** Which heptathlon events are times. */
export const eventDirection = (event: string): Direction =>
  event === "hurdles" || event.startsWith("run") ? "lower" : "higher";

/** Every squad of scores, with its standing as R computes it; `inOrder` takes a named list back to the squad's order. */
export const standingSets = [
  ...events.map((event) =>
    set("heptathlon", "athlete", event, eventDirection(event), expected("heptathlon").standing[event]),
  ),
  set("singer_alto1", "id", "height_in", "higher", expected("singer_alto1")),
  set("sleepstudy_day0_2", "id", "day0", "lower", expected("sleepstudy_day0_2").standing_day0),
];

// biome-ignore lint/suspicious/noExplicitAny: reference files have shapes of their own
function set(dataset: string, label: string, name: string, direction: Direction, reference: any) {
  const names = labels(dataset, label);
  return {
    name: `${dataset} ${name}`,
    scores: column(dataset, name),
    direction,
    reference,
    inOrder: (key: string): number[] => names.map((athlete) => reference[key][athlete]),
  };
}
