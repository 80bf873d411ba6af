import { say } from "../../language/say";
import type { About } from "../analysis";

export const about = {
  id: "capacity",
  title: say`Capacity of each side`,
  sheet: say`Capacity`,
  question: say`How long does each side last, and is the difference more than a retest brings?`,
  part: "understand",
} as const satisfies About;
