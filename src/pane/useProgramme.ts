import { useEffect, useMemo, useState } from "react";
import { keptSeries } from "../programme/keptSeries";
import { type QualityProfile, qualityProfiles } from "../programme/qualityProfile";
import { type WeakerSide, weakerSides } from "../programme/weakerSides";
import type { TestResult } from "../reading/testResult";
import { readKeptResults } from "../sheet/readKeptResults";
import { type ProgrammeReading, readProgramme } from "../sheet/readProgramme";
import type { StandingResult } from "../store/keptResults";
import { useWorkbook } from "./workbook";

/** What planning rests on: kept results with what follows from them, and the tables of the programme. */
export type ProgrammeFacts = {
  readonly kept: readonly StandingResult[];
  readonly results: readonly TestResult[];
  readonly profiles: readonly QualityProfile[];
  readonly sides: readonly WeakerSide[];
  readonly programme: ProgrammeReading;
};

/** Null while it is being read. Read anew whenever the workbook has changed. */
export function useProgramme(): { readonly facts: ProgrammeFacts | null; readonly error: unknown } {
  const { background, edition, state } = useWorkbook();
  const [read, setRead] = useState<{ kept: readonly StandingResult[]; programme: ProgrammeReading } | null>(null);
  const [error, setError] = useState<unknown>(null);

  // biome-ignore lint/correctness/useExhaustiveDependencies: the edition is the signal to read again, not an input
  useEffect(() => {
    let current = true;
    Promise.all([readKeptResults(), readProgramme()]).then(
      ([kept, programme]) => current && setRead({ kept: kept?.results ?? [], programme }),
      (trouble) => current && setError(trouble),
    );
    return () => {
      current = false;
    };
  }, [edition]);

  const facts = useMemo((): ProgrammeFacts | null => {
    if (!read || state === "reading") return null;
    const { results } = keptSeries(read.kept, background);
    return {
      ...read,
      results,
      profiles: qualityProfiles(results, background),
      sides: weakerSides(results, background),
    };
  }, [read, background, state]);
  return { facts, error };
}
