import { say } from "../../language/say";
import type { About } from "../analysis";

export const about = {
  id: "change",
  title: say`Change since last time`,
  sheet: say`Change`,
  question: say`Was the change from one session to the next real?`,
  part: "review",
} as const satisfies About;
