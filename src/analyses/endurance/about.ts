import { say } from "../../language/say";
import type { About } from "../analysis";

export const about = {
  id: "endurance",
  title: say`Endurance`,
  sheet: say`Endurance`,
  question: say`How fast and how long can each athlete run, and which intervals follow?`,
  part: "understand",
} as const satisfies About;
