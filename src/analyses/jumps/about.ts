import type { About } from "../analysis";

export const about = {
  id: "jumps",
  title: "Jumps",
  sheet: "Jumps",
  question: "What do the jumps say about spring and power?",
  part: "understand",
} as const satisfies About;
