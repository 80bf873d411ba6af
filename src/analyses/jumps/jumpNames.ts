/** Vertical jumps that the formulas tell apart. */
export type JumpKind = "countermovement" | "squat" | "drop";

/**
 * What coaches call them, English and German, lower case, words apart by one blank. A jump "reach" or with a run-up is
 * none of these, and neither is a hop for distance.
 */
export const jumpNames: Readonly<Record<JumpKind, readonly string[]>> = {
  countermovement: [
    "cmj",
    "countermovement jump",
    "counter movement jump",
    "countermovementjump",
    "sprung mit ausholbewegung",
    "strecksprung mit ausholbewegung",
  ],
  squat: ["sj", "squat jump", "squatjump", "strecksprung aus der hocke", "sprung aus der hocke", "kniebeugesprung"],
  drop: ["dj", "drop jump", "dropjump", "depth jump", "rebound jump", "tiefsprung", "tief hoch sprung", "niedersprung"],
};

/** The jump a test's name means ("CMJ, hands on hips", "Drop-Jump 30 cm"); null where it names none, or several. */
export function jumpNamed(test: string): JumpKind | null {
  const words = ` ${(test.toLowerCase().match(/\p{L}+|\p{N}+/gu) ?? []).join(" ")} `;
  const named = (Object.keys(jumpNames) as JumpKind[]).filter((kind) =>
    jumpNames[kind].some((name) => words.includes(` ${name} `)),
  );
  return named.length === 1 ? named[0]! : null;
}
