import { useState } from "react";
import type { Report } from "../../analyses/report";
import { clearMarks, markCells } from "../../sheet/marks";
import { HostTrouble } from "../parts/HostTrouble";
import { marksWords } from "../words/marks";
import { useWorkbook } from "../workbook";

/** Marks the results to look at again on the coach's own sheet, and takes all marks away again. */
export function MarkCells(props: { readonly marks: Report["marks"]; readonly sheet: string | null }) {
  const { marks, sheet } = props;
  const { remember } = useWorkbook();
  const [told, setTold] = useState<string | null>(null);
  const [error, setError] = useState<unknown>(null);

  async function run(work: () => Promise<string>) {
    setError(null);
    try {
      setTold(await work());
    } catch (trouble) {
      setError(trouble);
    }
  }
  const mark = async () => {
    const { marked, missing, deed } = await markCells(marks, sheet ?? "");
    remember(deed);
    return marksWords.marked(marked, missing);
  };
  const clear = async () => {
    const { cleared, keptNotes, lost, deed } = await clearMarks();
    if (deed.steps.length > 0 && cleared + lost.length > 0) remember(deed);
    return [
      ...(cleared > 0 || lost.length === 0 ? [marksWords.cleared(cleared)] : []),
      ...(keptNotes.length > 0 ? [marksWords.keptNotes(keptNotes)] : []),
      ...(lost.length > 0 ? [marksWords.lost(lost)] : []),
    ].join(" ");
  };

  return (
    <div className="marks">
      <button type="button" className="button" onClick={() => void run(mark)}>
        {marksWords.mark(marks.length)}
      </button>
      <button type="button" className="link" onClick={() => void run(clear)}>
        {marksWords.clear}
      </button>
      {told !== null && (
        <p className="quiet" role="status">
          {told}
        </p>
      )}
      {error !== null && <HostTrouble error={error} />}
    </div>
  );
}
