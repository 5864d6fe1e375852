/** The kitchen's report, made anew whenever the kitchen has changed. */
import type { JSX } from "preact";
import { useEffect, useRef, useState } from "preact/hooks";
import { problemText } from "../../../problem.ts";
import type { ShownReport } from "../../protocol.ts";
import { SaveButton } from "../save-button.tsx";
import type { Session } from "../session.ts";
import { ReportBody } from "../shown-report.tsx";

interface ReportViewProps {
  readonly session: Session;
  /** Whether the view is the one being looked at. */
  readonly open: boolean;
}

type Made =
  | { readonly kind: "report"; readonly report: ShownReport }
  | { readonly kind: "problem"; readonly text: string }
  | null;

export const ReportView = ({ session, open }: ReportViewProps): JSX.Element => {
  const [made, setMade] = useState<Made>(null);
  const madeOf = useRef<string | null>(null);
  const { text, missing } = session.state;
  // Readings that were missing and now are here change the answer too.
  const version = `${missing.length} ${text}`;
  const make = async (): Promise<void> => {
    madeOf.current = version;
    setMade(null);
    const answer = await session.ask("report", null);
    if (madeOf.current !== version) return;
    setMade(
      answer.ok
        ? { kind: "report", report: answer.value }
        : { kind: "problem", text: problemText(answer.problem) },
    );
    if (answer.ok) session.announce(answer.value.summary);
  };
  useEffect(() => {
    if (open && !session.busy && madeOf.current !== version) void make();
  }, [open, version, session.busy]);
  if (made?.kind === "report") {
    return (
      <>
        <ReportBody report={made.report} level="h1" id="kitchen-answer" />
        <div class="buttons">
          <SaveButton session={session} what="kitchen-report" main>
            Save this report
          </SaveButton>
          <SaveButton session={session} what="kitchen-data">
            Save the figures as JSON
          </SaveButton>
        </div>
      </>
    );
  }
  return (
    <>
      <h1>Which set-up holds which culture</h1>
      {made === null ? (
        <p>The kitchen’s tests are being read.</p>
      ) : (
        <>
          <p class="mistake" role="alert">
            {made.text}
          </p>
          <div class="buttons">
            <button type="button" class="main" onClick={() => void make()}>
              Try again
            </button>
          </div>
        </>
      )}
    </>
  );
};
