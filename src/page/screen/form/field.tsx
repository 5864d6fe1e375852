/** One field of a form with its label, hint and mistake. */
import type { JSX } from "preact";
import type { Entered, Field as FieldData } from "./field-types.ts";

export type Value = Entered[string];

interface FieldProps {
  readonly field: FieldData;
  /** Begins every id of the form, so that two forms do not clash. */
  readonly form: string;
  readonly value: Value | undefined;
  readonly problem: string | null;
  readonly onChange: (value: Value) => void;
}

export const fieldId = (form: string, key: string): string => `${form}-${key}`;

const describedBy = ({ field, form, problem }: FieldProps): string | undefined => {
  const id = fieldId(form, field.key);
  const ids = [
    ...(field.hint === undefined ? [] : [`${id}-hint`]),
    ...(problem === null ? [] : [`${id}-problem`]),
  ];
  return ids.length === 0 ? undefined : ids.join(" ");
};

const textOf = (value: Value | undefined): string => (typeof value === "string" ? value : "");
const chosenOf = (value: Value | undefined): readonly string[] =>
  Array.isArray(value) ? (value as readonly string[]) : [];

const common = (props: FieldProps) => ({
  id: fieldId(props.form, props.field.key),
  "aria-describedby": describedBy(props),
  "aria-invalid": props.problem === null ? undefined : (true as const),
});

const typed = (props: FieldProps) => ({
  ...common(props),
  value: textOf(props.value),
  autocomplete: "off",
  spellcheck: false,
});

const DayInput = (props: FieldProps): JSX.Element => (
  <input {...typed(props)} type="date" onInput={(e) => props.onChange(e.currentTarget.value)} />
);

const TextInput = (props: FieldProps): JSX.Element => {
  const { field, onChange } = props;
  const shared = typed(props);
  if (field.kind === "text" && field.many === "lines") {
    return <textarea {...shared} rows={3} onInput={(e) => onChange(e.currentTarget.value)} />;
  }
  const numeric = field.kind === "text" && field.numeric === true;
  return (
    <input
      {...shared}
      type="text"
      {...(numeric ? { inputMode: "decimal" as const } : {})}
      onInput={(e) => onChange(e.currentTarget.value)}
    />
  );
};

const ChoiceInput = (props: FieldProps): JSX.Element | null => {
  const { field, value, onChange } = props;
  if (field.kind !== "choice") return null;
  return (
    <select
      {...common(props)}
      value={textOf(value)}
      onChange={(e) => onChange(e.currentTarget.value)}
    >
      {field.none === null && textOf(value) !== "" ? null : (
        <option value="">{field.none ?? "choose"}</option>
      )}
      {field.choices.map((one) => (
        <option key={one.value} value={one.value}>
          {one.label}
        </option>
      ))}
    </select>
  );
};

const Hint = ({ field, form }: FieldProps): JSX.Element | null =>
  field.hint === undefined ? null : (
    <p class="hint" id={`${fieldId(form, field.key)}-hint`}>
      {field.hint}
    </p>
  );

const Mistake = ({ field, form, problem }: FieldProps): JSX.Element | null =>
  problem === null ? null : (
    <p class="mistake" id={`${fieldId(form, field.key)}-problem`} role="alert">
      {problem}
    </p>
  );

const SeveralInput = (props: FieldProps): JSX.Element | null => {
  const { field, form, value, onChange } = props;
  if (field.kind !== "several") return null;
  const chosen = chosenOf(value);
  const toggle = (one: string, on: boolean): void =>
    onChange(on ? [...chosen, one] : chosen.filter((other) => other !== one));
  return (
    <fieldset
      class="field several"
      id={fieldId(form, field.key)}
      tabIndex={-1}
      aria-describedby={describedBy(props)}
    >
      <legend>{field.label}</legend>
      <Hint {...props} />
      <div class="ticks">
        {field.choices.map((one) => (
          <label key={one.value} class="tick">
            <input
              type="checkbox"
              checked={chosen.includes(one.value)}
              onChange={(e) => toggle(one.value, e.currentTarget.checked)}
            />
            <span>{one.label}</span>
          </label>
        ))}
      </div>
      <Mistake {...props} />
    </fieldset>
  );
};

const FlagInput = (props: FieldProps): JSX.Element => (
  <div class="field">
    <label class="tick">
      <input
        {...common(props)}
        type="checkbox"
        checked={props.value === true}
        onChange={(e) => props.onChange(e.currentTarget.checked)}
      />
      <span>{props.field.label}</span>
    </label>
    <Hint {...props} />
    <Mistake {...props} />
  </div>
);

const Input = (props: FieldProps): JSX.Element | null => {
  const { kind } = props.field;
  if (kind === "choice") return <ChoiceInput {...props} />;
  return kind === "day" ? <DayInput {...props} /> : <TextInput {...props} />;
};

export const FieldView = (props: FieldProps): JSX.Element => {
  const { field, form } = props;
  if (field.kind === "several") return <SeveralInput {...props} />;
  if (field.kind === "flag") return <FlagInput {...props} />;
  return (
    <div class="field">
      <label for={fieldId(form, field.key)}>{field.label}</label>
      <Hint {...props} />
      <Input {...props} />
      <Mistake {...props} />
    </div>
  );
};
