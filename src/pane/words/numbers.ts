/** What the pane says where the numbers of an answer are explained. */
export const numbersWords = {
  title: "What the numbers mean",
  method: "How it is worked out, and by whose method",
} as const;
