import { say } from "../../language/say";
import type { About } from "../analysis";

export const about = {
  id: "strength",
  title: say`Estimated strength and loads`,
  sheet: say`Strength`,
  question: say`How strong is each athlete, and which loads follow?`,
  part: "understand",
} as const satisfies About;
