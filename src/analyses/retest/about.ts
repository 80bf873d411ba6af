import { say } from "../../language/say";
import type { About } from "../analysis";

export const about = {
  id: "retest",
  title: say`Look again`,
  sheet: say`Look again`,
  question: say`Which results should be looked at or tested again?`,
  part: "test",
} as const satisfies About;
