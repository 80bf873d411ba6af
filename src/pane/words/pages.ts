import { say } from "../../language/say";

/** What the pane says about pages to print. */
export const pageWords = {
  paper: say`Paper`,
  papers: [
    ["a4", "A4"],
    ["letter", say`Letter`],
  ],
  who: say`For whom`,
  forWhom: [
    ["athletes", say`A page for each athlete`],
    ["coach", say`One page for the head coach`],
  ],
  about: say`About`,
  wholeSquad: say`The whole squad`,
  coachTitle: say`A page for the head coach`,
  coachText: say`What the game asks for and who stands out, who has changed for real, who was there, who is away or back, and what is next.`,
  coachCaution: say`Personal data: for the coaching staff, not for the notice board. It says who is away, never why; return from an injury is decided by those who treat the athlete.`,
  make: say`Make the page`,
} as const;
