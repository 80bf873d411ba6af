import { say } from "../../language/say";
import type { About } from "../analysis";

export const about = {
  id: "ranking",
  title: say`Squad ranking`,
  sheet: say`Ranking`,
  question: say`Who stands where over all tests, by quality and by role?`,
  part: "understand",
} as const satisfies About;
