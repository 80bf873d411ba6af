/** What the pane says about pages to print. */
export const pageWords = {
  paper: "Paper",
  papers: [
    ["a4", "A4"],
    ["letter", "Letter"],
  ],
  who: "For whom",
  forWhom: [
    ["athletes", "A page for each athlete"],
    ["coach", "One page for the head coach"],
  ],
  about: "About",
  wholeSquad: "The whole squad",
  coachTitle: "A page for the head coach",
  coachText:
    "What the game asks for and who stands out, who has changed for real, who was there, who is away or back, and what is next.",
  coachCaution:
    "Personal data: for the coaching staff, not for the notice board. It says who is away, never why; return from an injury is decided by those who treat the athlete.",
  make: "Make the page",
} as const;
