import { say } from "../../language/say";
import type { About } from "../analysis";

export const about = {
  id: "loadVelocity",
  title: say`Load-velocity profile`,
  sheet: say`Load and velocity`,
  question: say`How heavy could each athlete lift, going by the speed of the bar?`,
  part: "understand",
} as const satisfies About;
