import type { About } from "../analysis";

export const about = {
  id: "change",
  title: "Change since last time",
  sheet: "Change",
  question: "Was the change from one session to the next real?",
  part: "review",
} as const satisfies About;
