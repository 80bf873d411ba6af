import { say } from "../../language/say";
import type { About } from "../analysis";

export const about = {
  id: "jumps",
  title: say`Jumps`,
  sheet: say`Jumps`,
  question: say`What do the jumps say about spring and power?`,
  part: "understand",
} as const satisfies About;
