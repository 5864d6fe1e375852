/** The kitchen's water tests, and the form that adds one. */
import type { JSX } from "preact";
import { useState } from "preact/hooks";
import { failed } from "../../../problem.ts";
import type { Outcome } from "../../../problem.ts";
import type { FormValues, Readings, ShownReport } from "../../protocol.ts";
import { Form } from "../form/form.tsx";
import { noReadings, ReadingsInput } from "../readings/readings-input.tsx";
import type { Session } from "../session.ts";
import { ReportBody } from "../shown-report.tsx";
import { entryText } from "./entry-text.ts";
import { TakeOut } from "./take-out.tsx";
import { testFields } from "./test-fields.ts";

interface TestSectionProps {
  readonly session: Session;
  readonly readings: Readings;
  readonly onReadings: (readings: Readings) => void;
  /** Whether the form is open: it is opened from elsewhere too. */
  readonly open: boolean;
  readonly onOpen: (open: boolean) => void;
}

const labels = { files: "The logger’s files", lines: "Readings" };

const noneChosen = ({ readings }: TestSectionProps): Outcome<never> | null =>
  readings.kind === "files" && readings.files.length === 0
    ? failed("option-missing", { option: "--files", why: "a water test is its readings" })
    : null;

const NewTest = (
  props: TestSectionProps & {
    readonly onNight: (night: ShownReport | null) => void;
  },
): JSX.Element => {
  const { session, readings, onReadings, onOpen, onNight } = props;
  const submit = async (options: FormValues): Promise<Outcome<unknown>> => {
    const none = noneChosen(props);
    if (none !== null) return none;
    onNight(null);
    const added = await session.ask("add", { readings, options });
    if (!added.ok) return added;
    onReadings(noReadings);
    onOpen(false);
    session.take(added.value, null);
    onNight(added.value.night);
    return added;
  };
  return (
    <Form
      id="test-new"
      groups={testFields(session.state.kitchen, readings.kind === "typed")}
      button="Store this water test"
      labels={labels}
      submit={submit}
      busy={session.busy}
      onCancel={() => onOpen(false)}
    >
      {(problem) => (
        <ReadingsInput
          form="test-new"
          readings={readings}
          onChange={onReadings}
          problem={problem}
        />
      )}
    </Form>
  );
};

const TestItem = ({ session, id }: { readonly session: Session; readonly id: string }) => {
  const written = session.state.written["tests"]?.[id] ?? {};
  const missing = session.state.missing.filter(({ test }) => test === id);
  return (
    <li>
      <p class="entry">
        <b>{id}</b>
        <span class="small">{entryText(written, ["files", "file", "sha256", "probes"])}</span>
      </p>
      {missing.length === 0 ? null : (
        <p class="mistake">
          Its readings are not here: open {missing.map(({ path }) => path).join(" and ")} under
          “Files”.
        </p>
      )}
      <TakeOut
        session={session}
        what="water test"
        name={id}
        remove={() => session.ask("remove", { section: "test", id })}
      />
    </li>
  );
};

const notYet = ({ appliances, containers }: Session["state"]["kitchen"]): string | null => {
  if (appliances.length > 0 && containers.length > 0) return null;
  return "Enter an appliance and a container first: a water test is of both.";
};

export const TestSection = (props: TestSectionProps): JSX.Element => {
  const { session, open, onOpen } = props;
  const [night, setNight] = useState<ShownReport | null>(null);
  const { kitchen } = session.state;
  const why = notYet(kitchen);
  return (
    <section class="entries" aria-labelledby="test-title">
      <h2 id="test-title">Water tests</h2>
      <p class="hint">One run of an appliance with water, over a night or longer.</p>
      {kitchen.tests.length === 0 ? null : (
        <ul class="plain-list">
          {kitchen.tests.map(({ id }) => (
            <TestItem key={id} session={session} id={id} />
          ))}
        </ul>
      )}
      {why === null ? null : <p class="small">{why}</p>}
      {why === null && open ? <NewTest {...props} onNight={setNight} /> : null}
      {why === null && !open ? (
        <div class="buttons">
          <button type="button" disabled={session.busy} onClick={() => onOpen(true)}>
            Enter a water test
          </button>
        </div>
      ) : null}
      {night === null ? null : (
        <section class="result" aria-labelledby="test-night">
          <ReportBody report={night} level="h2" id="test-night" />
        </section>
      )}
    </section>
  );
};
