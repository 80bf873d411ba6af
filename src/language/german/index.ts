import type { Language } from "../say";
import { germanTableWords } from "../tableWords";
import { analyses } from "./analyses";
import { engine } from "./engine";
import { functions } from "./functions";
import { pane } from "./pane";
import { programme } from "./programme";
import { reading } from "./reading";
import { sheet } from "./sheet";
import { store } from "./store";

/** German, room by room; a sentence stands with the room that says it first. */
export const german: Language = {
  tag: "de",
  catalogue: {
    ...germanTableWords,
    ...engine,
    ...reading,
    ...store,
    ...analyses,
    ...programme,
    ...functions,
    ...sheet,
    ...pane,
  },
  decimalMark: ",",
  capitalNouns: true,
};
