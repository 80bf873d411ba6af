import type { About } from "../analysis";

export const about = {
  id: "endurance",
  title: "Endurance",
  sheet: "Endurance",
  question: "How fast and how long can each athlete run, and which intervals follow?",
  part: "understand",
} as const satisfies About;
