import type { About } from "../analysis";

export const about = {
  id: "retest",
  title: "Look again",
  sheet: "Look again",
  question: "Which results should be looked at or tested again?",
  part: "test",
} as const satisfies About;
