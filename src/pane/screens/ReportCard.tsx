import type { Report } from "../../analyses/report";
import { Answer } from "./Answer";
import { WriteBar } from "./WriteBar";

/** An answer that needs no settings, with the way into the workbook. */
export function ReportCard({ report }: { readonly report: Report }) {
  return (
    <>
      <Answer report={report} />
      <WriteBar report={report} reportKey={`${report.analysis}|kept|`} live={null} sheet={null} onWritten={() => {}} />
    </>
  );
}
