import type { About } from "../analysis";

export const about = {
  id: "loadVelocity",
  title: "Load-velocity profile",
  sheet: "Load and velocity",
  question: "How heavy could each athlete lift, going by the speed of the bar?",
  part: "understand",
} as const satisfies About;
