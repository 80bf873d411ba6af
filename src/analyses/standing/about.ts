import { say } from "../../language/say";
import type { About } from "../analysis";

export const about = {
  id: "standing",
  title: say`Standing in the squad`,
  sheet: say`Standing`,
  question: say`Where does each athlete stand in the squad, and how sure is that?`,
  part: "understand",
} as const satisfies About;
