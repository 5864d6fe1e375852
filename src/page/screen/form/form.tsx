/** A form of any command: its fields in groups, one button, and each mistake where it was made. */
import type { ComponentChildren, JSX } from "preact";
import { useEffect, useRef, useState } from "preact/hooks";
import type { Outcome } from "../../../problem.ts";
import type { FormValues } from "../../protocol.ts";
import { fieldId, FieldView } from "./field.tsx";
import type { Entered, FieldGroup } from "./field-types.ts";
import { shownProblem } from "./field-problem.ts";
import type { ShownProblem } from "./field-problem.ts";
import { changedValues, fieldsOf, formValues } from "./form-values.ts";

interface FormProps {
  /** Begins the ids of its fields. */
  readonly id: string;
  readonly groups: (entered: Entered) => readonly FieldGroup[];
  /** What stands in it at first; only what is changed of it is handed on. */
  readonly before?: Entered;
  readonly button: string;
  /** Names of fields that `children` draw, by key. */
  readonly labels?: Readonly<Record<string, string>>;
  readonly submit: (values: FormValues) => Promise<Outcome<unknown>>;
  /** Above the fields; they show the problems of their own keys. */
  readonly children?: (problem: ShownProblem | null) => ComponentChildren;
  readonly busy: boolean;
  readonly onCancel?: () => void;
}

const Group = ({
  group,
  open,
  children,
}: {
  readonly group: FieldGroup;
  readonly open: boolean;
  readonly children: ComponentChildren;
}): JSX.Element => {
  const note = group.note === undefined ? null : <p class="hint">{group.note}</p>;
  if (group.folded === true) {
    return (
      <details class="group" open={open}>
        <summary>{group.title}</summary>
        {note}
        <div class="fields">{children}</div>
      </details>
    );
  }
  if (group.title === null) return <div class="fields">{children}</div>;
  return (
    <fieldset class="group">
      <legend>{group.title}</legend>
      {note}
      <div class="fields">{children}</div>
    </fieldset>
  );
};

/** The first mistake gets the keyboard, so that it is read out and seen. */
const focusOn = (form: string, key: string | null): void => {
  const at = document.getElementById(key === null ? `${form}-problem` : fieldId(form, key));
  at?.focus();
  at?.scrollIntoView({ block: "center" });
};

export const Form = (props: FormProps): JSX.Element => {
  const { id, button, labels, submit, children, busy, onCancel } = props;
  const before = props.before ?? {};
  const [entered, setEntered] = useState<Entered>(before);
  const [problem, setProblem] = useState<ShownProblem | null>(null);
  const alive = useRef(true);
  useEffect(() => () => void (alive.current = false), []);
  useEffect(() => {
    if (problem !== null) focusOn(id, problem.key);
  }, [problem]);
  const groups = props.groups(entered);
  const send = async (event: Event): Promise<void> => {
    event.preventDefault();
    setProblem(null);
    const shown = props.groups(entered);
    const values = changedValues(formValues(shown, entered), formValues(shown, before));
    const outcome = await submit(values);
    if (outcome.ok || !alive.current) return;
    setProblem(shownProblem(outcome.problem, fieldsOf(shown), labels));
  };
  return (
    <form class="form" onSubmit={(event) => void send(event)} noValidate>
      {children?.(problem)}
      {groups.map((group) => (
        <Group
          key={group.title ?? "first"}
          group={group}
          open={group.fields.some(({ key }) => key === problem?.key)}
        >
          {group.fields.map((field) => (
            <FieldView
              key={field.key}
              form={id}
              field={field}
              value={entered[field.key]}
              problem={problem?.key === field.key ? problem.text : null}
              onChange={(value) => setEntered((all) => ({ ...all, [field.key]: value }))}
            />
          ))}
        </Group>
      ))}
      {problem !== null && problem.key === null ? (
        <p class="mistake" role="alert" tabIndex={-1} id={`${id}-problem`}>
          {problem.text}
        </p>
      ) : null}
      <div class="buttons">
        <button type="submit" class="main" disabled={busy}>
          {button}
        </button>
        {onCancel === undefined ? null : (
          <button type="button" onClick={onCancel}>
            Leave it
          </button>
        )}
      </div>
    </form>
  );
};
