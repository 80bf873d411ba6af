import type { ReactNode } from "react";
import { type ProgrammeFacts, useProgramme } from "../useProgramme";
import { words } from "../words";
import { HostTrouble } from "./HostTrouble";

/** What rests on the workbook's own tables: shown once they are read. */
export function ReadsProgramme({ children }: { readonly children: (facts: ProgrammeFacts) => ReactNode }) {
  const { value: facts, error } = useProgramme();
  if (error !== null) return <HostTrouble error={error} />;
  if (facts) return children(facts);
  return (
    <p className="quiet" role="status">
      {words.reading}
    </p>
  );
}
