import { say } from "../../language/say";

/** What the pane says while results are kept, which may take long. */
export const keepWords = {
  progress: (done: number, of: number) => (of === 1 ? say`${done} of 1 result` : say`${done} of ${of} results`),
  stop: say`Stop`,
  cancelled: say`Stopped: nothing was kept`,
  cancelledText: say`What had been written was taken back. The table is as it was before.`,
} as const;
