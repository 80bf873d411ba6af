import { useState } from "react";
import type { Report } from "../../analyses/report";
import { clearMarks, markCells } from "../../sheet/marks";
import { HostTrouble } from "../parts/HostTrouble";
import { words } from "../words";
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
    return words.marks.marked(marked, missing);
  };
  const clear = async () => {
    const { cleared, deed } = await clearMarks();
    if (cleared > 0) remember(deed);
    return words.marks.cleared(cleared);
  };

  return (
    <div className="marks">
      <button type="button" className="button" onClick={() => void run(mark)}>
        {words.marks.mark(marks.length)}
      </button>
      <button type="button" className="link" onClick={() => void run(clear)}>
        {words.marks.clear}
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
