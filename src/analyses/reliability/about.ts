import type { About } from "../analysis";

export const about = {
  id: "reliability",
  title: "Reliability of a test",
  sheet: "Reliability",
  question: "How much does this test vary by itself, and what can it show?",
  part: "understand",
} as const satisfies About;
