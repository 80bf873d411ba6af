import type { Result } from "../../engine/result";
import { type SprintModel, sprintModel } from "../../engine/sprints/sprintModel";
import type { SprintRun } from "./sprintRuns";

/** The mono-exponential curve of a run, residuals in distance; needs at least three gates. */
export const modelOf = ({ splits }: SprintRun): Result<SprintModel> =>
  sprintModel(
    splits.map(({ distance }) => distance),
    splits.map(({ time }) => time),
  );
