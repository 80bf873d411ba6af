import { say } from "../../language/say";
import { many } from "../words";

/** What the pane says while results are kept, which may take long. */
export const keepWords = {
  progress: (done: number, of: number) => `${done} of ${many(of, "result")}`,
  stop: say`Stop`,
  cancelled: say`Stopped: nothing was kept`,
  cancelledText: say`What had been written was taken back. The table is as it was before.`,
} as const;
