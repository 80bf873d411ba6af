import { say } from "../../language/say";

/** What the pane says where the numbers of an answer are explained. */
export const numbersWords = {
  title: say`What the numbers mean`,
  method: say`How it is worked out, and by whose method`,
} as const;
