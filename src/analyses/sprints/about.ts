import { say } from "../../language/say";
import type { About } from "../analysis";

export const about = {
  id: "sprints",
  title: say`Sprints by their sections`,
  sheet: say`Sprints`,
  question: say`Where in the sprint is time won or lost?`,
  part: "understand",
} as const satisfies About;
