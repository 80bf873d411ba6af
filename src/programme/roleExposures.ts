import { wordingKey } from "../store/sameName";
import type { Exposure } from "./loadWeeks";

/** What is worth counting for a role, the most telling first, by the roles of our templates. Common practice, no source. */
const byRole: Readonly<Record<string, readonly Exposure[]>> = {
  goalkeeper: ["jumps"],
  keeper: ["jumps"],
  wing: ["throws", "jumps", "sprints"],
  back: ["throws", "jumps"],
  pivot: ["throws", "jumps"],
  defender: ["sprints", "jumps"],
  midfielder: ["sprints"],
  forward: ["sprints", "jumps"],
  "back row": ["sprints"],
  "half back": ["sprints"],
  "outside back": ["sprints"],
  shooter: ["jumps"],
  "centre court": ["jumps", "sprints"],
  "fast bowler": ["deliveries", "sprints"],
  "spin bowler": ["deliveries"],
  batter: ["sprints"],
};

/** Nothing for a role we do not know: the coach knows what it does much of. */
export const exposuresOf = (role: string | null): readonly Exposure[] => byRole[wordingKey(role ?? "")] ?? [];
