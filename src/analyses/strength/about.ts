import type { About } from "../analysis";

export const about = {
  id: "strength",
  title: "Estimated strength and loads",
  sheet: "Strength",
  question: "How strong is each athlete, and which loads follow?",
  part: "understand",
} as const satisfies About;
