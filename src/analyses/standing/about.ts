import type { About } from "../analysis";

export const about = {
  id: "standing",
  title: "Standing in the squad",
  sheet: "Standing",
  question: "Where does each athlete stand in the squad, and how sure is that?",
  part: "understand",
} as const satisfies About;
