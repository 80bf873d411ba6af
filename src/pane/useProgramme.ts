import { readKeptResults } from "../sheet/readKeptResults";
import { type ProgrammeReading, readProgramme } from "../sheet/readProgramme";
import type { StandingResult } from "../store/keptResults";
import { useReading } from "./useReading";

/** What the workbook holds of results and of the programme. */
export type ProgrammeFacts = {
  readonly kept: readonly StandingResult[];
  readonly programme: ProgrammeReading;
};

/** Null until it has been read; read anew whenever the workbook has changed. */
export const useProgramme = () => useReading(readFacts);

async function readFacts(): Promise<ProgrammeFacts> {
  const [kept, programme] = await Promise.all([readKeptResults(), readProgramme()]);
  return { kept: kept?.results ?? [], programme };
}
