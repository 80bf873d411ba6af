import type { About } from "../analysis";

export const about = {
  id: "asymmetry",
  title: "Left-right asymmetry",
  sheet: "Asymmetry",
  question: "Is the difference between left and right bigger than the test's own noise?",
  part: "understand",
} as const satisfies About;
