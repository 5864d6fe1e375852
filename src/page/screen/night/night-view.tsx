/** One night by itself: readings and a culture in, the verdict out. */
import type { JSX } from "preact";
import { useState } from "preact/hooks";
import type { Outcome } from "../../../problem.ts";
import { failed } from "../../../problem.ts";
import type { FormValues, Readings, ShownReport } from "../../protocol.ts";
import { Form } from "../form/form.tsx";
import { ReadingsInput } from "../readings/readings-input.tsx";
import { SaveButton } from "../save-button.tsx";
import type { Session } from "../session.ts";
import { ReportBody } from "../shown-report.tsx";
import { nightFields, nightOptions } from "./night-fields.ts";

interface NightViewProps {
  readonly session: Session;
  readonly readings: Readings;
  readonly onReadings: (readings: Readings) => void;
  /** Takes the readings over into the kitchen. */
  readonly onKeep: () => void;
}

const labels = { files: "The logger’s files", lines: "Readings" };

const Result = ({
  session,
  report,
  typed,
  onKeep,
}: {
  readonly session: Session;
  readonly report: ShownReport;
  readonly typed: boolean;
  readonly onKeep: () => void;
}): JSX.Element => (
  <section aria-labelledby="night-answer" class="result">
    <div class="buttons">
      <SaveButton session={session} what="night-report" main>
        Save this report
      </SaveButton>
      <button type="button" onClick={onKeep}>
        Keep this night in my kitchen
      </button>
      {typed ? (
        <SaveButton session={session} what="night-readings">
          Save the readings as CSV
        </SaveButton>
      ) : null}
      <SaveButton session={session} what="night-data">
        Save the figures as JSON
      </SaveButton>
    </div>
    <ReportBody report={report} level="h2" id="night-answer" />
  </section>
);

export const NightView = (props: NightViewProps): JSX.Element => {
  const { session, readings, onReadings, onKeep } = props;
  const [report, setReport] = useState<ShownReport | null>(null);
  const typed = readings.kind === "typed";
  const submit = async (values: FormValues): Promise<Outcome<unknown>> => {
    if (readings.kind === "files" && readings.files.length === 0) {
      return failed("option-missing", {
        option: "--files",
        why: "a verdict comes from a night's readings",
      });
    }
    setReport(null);
    const answer = await session.ask("check", { readings, options: nightOptions(values) });
    if (answer.ok) {
      setReport(answer.value);
      session.announce(answer.value.summary);
    }
    return answer;
  };
  return (
    <>
      <h1>Does it hold? One night of water</h1>
      <p class="intro">
        Fill the appliance with water, leave a logger or a thermometer where the food would stand,
        and bring the readings here.
      </p>
      <Form
        id="night"
        groups={nightFields(session.state.kitchen, session.state.catalogue, typed)}
        button="Read the night"
        labels={labels}
        submit={submit}
        busy={session.busy}
      >
        {(problem) => (
          <ReadingsInput form="night" readings={readings} onChange={onReadings} problem={problem} />
        )}
      </Form>
      {report === null ? null : (
        <Result session={session} report={report} typed={typed} onKeep={onKeep} />
      )}
    </>
  );
};
