import { type ReactNode, useMemo } from "react";
import { priorities } from "../../programme/priorities";
import { prioritiesStand } from "../../programme/prioritiesStand";
import type { ProgrammeFacts } from "../useProgramme";
import { useProfiles, useResults, useWeakerSides } from "../useStandings";
import { useWorkbook } from "../workbook";

/** Tells whether the priorities in the workbook are those that follow from the retest. */
export default function AfterRetest(props: {
  readonly facts: ProgrammeFacts;
  readonly children: (arePrioritiesNew: boolean) => ReactNode;
}) {
  const { facts, children } = props;
  const { background } = useWorkbook();
  const results = useResults(facts);
  const profiles = useProfiles(results);
  const sides = useWeakerSides(results);
  const areNew = useMemo(() => {
    // The first of each athlete are the same, however many are proposed.
    const { priorities: fresh } = priorities(profiles, sides, background, { most: 1 });
    return prioritiesStand(facts.programme.priorities, fresh);
  }, [facts, profiles, sides, background]);
  return children(areNew);
}
