import { type DiaryEntry, diaryTable } from "../store/diary";
import { type Exercise, exercisesTable } from "../store/exercises";
import { makeMissing, type SetUp } from "./setUp";
import { storeSheet } from "./storeSheet";

/** The rows to begin with; a table that is not named is not made. */
export type ProgrammeToSetUp = {
  readonly exercises?: readonly Exercise[];
  readonly diary?: readonly DiaryEntry[];
};

/** Makes the tables of exercises and diary where they do not stand yet, as `setUp` does. Three round trips. */
export const setUpProgramme = ({ exercises, diary }: ProgrammeToSetUp): Promise<SetUp> =>
  makeMissing([
    ...(exercises ? [storeSheet(exercisesTable, exercises)] : []),
    ...(diary ? [storeSheet(diaryTable, diary)] : []),
  ]);
