import { type ReactNode, useRef } from "react";
import type { Report } from "../../analyses/report";
import { Answer } from "./Answer";
import { WriteBar } from "./WriteBar";

/** An answer that needs no settings, with the way into the workbook. */
export function ReportCard(props: { readonly report: Report; readonly picture?: ReactNode }) {
  // Writing it changes the workbook, which is read again: an answer that says the same is the same, and what was told of
  // the writing stays.
  const held = useRef(props.report);
  if (JSON.stringify(held.current) !== JSON.stringify(props.report)) held.current = props.report;
  const report = held.current;
  return (
    <>
      <Answer {...props} report={report} />
      <WriteBar report={report} reportKey={`${report.analysis}|kept|`} live={null} sheet={null} onWritten={() => {}} />
    </>
  );
}
