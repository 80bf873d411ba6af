import type { Background } from "../store/background";
import { nameKey } from "../store/sameName";

/** Names as the squad spells them, found once for all results; who is not in it keeps their own. */
export function squadNames({ squad }: Background): (athlete: string) => string {
  const names = new Map(squad.map(({ athlete }) => [nameKey(athlete), athlete]));
  return (athlete) => names.get(nameKey(athlete)) ?? athlete;
}
