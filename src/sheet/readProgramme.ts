import { type DiaryEntry, diaryTable, readDiary } from "../store/diary";
import { type Exercise, exercisesTable, readExercises } from "../store/exercises";
import { type PlanRow, planTable, readPlan } from "../store/planTable";
import { type PriorityRow, prioritiesTable, readPriorities } from "../store/priorityTable";
import type { StoreRemark, StoreTableId } from "../store/storeTable";
import { trapHost } from "./hostRefusal";
import { type Part, readParts } from "./readParts";
import { findStoreTables } from "./storeTables";

type Programme = {
  readonly exercises: readonly Exercise[];
  readonly priorities: readonly PriorityRow[];
  readonly plan: readonly PlanRow[];
  readonly diary: readonly DiaryEntry[];
};

/** Tables that do not stand are empty; `present` tells which do. */
export type ProgrammeReading = Programme & {
  readonly remarks: readonly StoreRemark[];
  readonly present: ReadonlySet<StoreTableId>;
};

const parts: readonly Part<Programme>[] = [
  { table: exercisesTable, read: readExercises },
  { table: prioritiesTable, read: readPriorities },
  { table: planTable, read: readPlan },
  { table: diaryTable, read: readDiary },
];

const nothing: Programme = { exercises: [], priorities: [], plan: [], diary: [] };

/** What the workbook says of exercises, priorities, plan and diary. Two round trips. */
export const readProgramme = (): Promise<ProgrammeReading> =>
  trapHost(() =>
    Excel.run(async (context) => {
      const workbook = await findStoreTables(context);
      const { readings, remarks, present } = await readParts(context, workbook, parts);
      return { ...nothing, ...readings, remarks, present };
    }),
  );
