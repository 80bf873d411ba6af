import type { ReactNode } from "react";
import type { Report } from "../../analyses/report";
import { Answer } from "./Answer";
import { WriteBar } from "./WriteBar";

/** An answer that needs no settings, with the way into the workbook. */
export function ReportCard(props: { readonly report: Report; readonly picture?: ReactNode }) {
  const { report } = props;
  return (
    <>
      <Answer {...props} />
      <WriteBar report={report} reportKey={`${report.analysis}|kept|`} live={null} sheet={null} onWritten={() => {}} />
    </>
  );
}
