import type { About } from "../analysis";

export const about = {
  id: "sprints",
  title: "Sprints by their sections",
  sheet: "Sprints",
  question: "Where in the sprint is time won or lost?",
  part: "understand",
} as const satisfies About;
