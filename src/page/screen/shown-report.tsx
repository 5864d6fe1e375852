/** A report inside the page: its own markup, made by the same functions as the file to save. */
import type { JSX } from "preact";
import { useEffect, useRef } from "preact/hooks";
import type { ShownReport } from "../protocol.ts";

interface ShownReportProps {
  readonly report: ShownReport;
  /** Heading of the part of the page it stands in. */
  readonly level: "h1" | "h2";
  readonly id: string;
}

/**
 * The markup is safe to insert: every name in it was escaped where it was made,
 * and the page's policy runs no script but its own.
 */
export const ReportBody = ({ report, level: Heading, id }: ShownReportProps): JSX.Element => {
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => heading.current?.focus(), [report]);
  return (
    <div class="shown-report">
      <Heading id={id} tabIndex={-1} ref={heading}>
        {report.heading}
      </Heading>
      <div dangerouslySetInnerHTML={{ __html: report.byline }} />
      <div class="report-main" dangerouslySetInnerHTML={{ __html: report.main }} />
    </div>
  );
};
