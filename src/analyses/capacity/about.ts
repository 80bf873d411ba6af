import type { About } from "../analysis";

export const about = {
  id: "capacity",
  title: "Capacity of each side",
  sheet: "Capacity",
  question: "How long does each side last, and is the difference more than a retest brings?",
  part: "understand",
} as const satisfies About;
