import { say } from "../../language/say";
import type { About } from "../analysis";

export const about = {
  id: "asymmetry",
  title: say`Left-right asymmetry`,
  sheet: say`Asymmetry`,
  question: say`Is the difference between left and right bigger than the test's own noise?`,
  part: "understand",
} as const satisfies About;
