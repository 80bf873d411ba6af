import { say } from "../../language/say";
import type { About } from "../analysis";

export const about = {
  id: "reliability",
  title: say`Reliability of a test`,
  sheet: say`Reliability`,
  question: say`How much does this test vary by itself, and what can it show?`,
  part: "understand",
} as const satisfies About;
