import type { Catalogue, Language } from "../say";
import { germanTableWords } from "../tableWords";
import { analyses } from "./analyses";
import { engine } from "./engine";
import { functions } from "./functions";
import { pane } from "./pane";
import { programme } from "./programme";
import { reading } from "./reading";
import { sheet } from "./sheet";
import { store } from "./store";

/**
 * German, room by room. A sentence stands once: a word of the tables in `tableWords.ts`, any other with the room that
 * says it first.
 */
export const rooms: Readonly<Record<string, Catalogue>> = {
  tableWords: germanTableWords,
  engine,
  reading,
  store,
  analyses,
  programme,
  functions,
  sheet,
  pane,
};

export const german: Language = {
  tag: "de",
  catalogue: Object.assign({}, ...Object.values(rooms)),
  decimalMark: ",",
  capitalNouns: true,
};
