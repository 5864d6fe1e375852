/** What was entered in a form, as the values its command takes. */
import type { FormValues } from "../../protocol.ts";
import type { Entered, Field, FieldGroup } from "./field-types.ts";

const parts = (text: string, between: RegExp): readonly string[] =>
  text
    .split(between)
    .map((part) => part.trim())
    .filter((part) => part !== "");

const textValues = (text: string, many: "lines" | "commas" | undefined): readonly string[] => {
  if (many === "lines") return parts(text, /\n/u);
  // A comma may be a decimal sign: "0,2; 0,3" is two readings, "0.2, 0.3" too.
  if (many === "commas") return parts(text, text.includes(";") ? /[;\n]/u : /,\s+|[\n\s]+/u);
  return text.trim() === "" ? [] : [text.trim()];
};

const valueOf = (field: Field, entered: Entered): readonly string[] | true | null => {
  const value = entered[field.key];
  if (field.kind === "flag") return value === true ? true : null;
  if (field.kind === "several") {
    const chosen = Array.isArray(value) ? (value as readonly string[]) : [];
    if (chosen.length === 0) return null;
    return field.joined === true ? [chosen.join(",")] : chosen;
  }
  const text = typeof value === "string" ? value : "";
  const values = textValues(text, field.kind === "text" ? field.many : undefined);
  return values.length === 0 ? null : values;
};

export const fieldsOf = (groups: readonly FieldGroup[]): readonly Field[] =>
  groups.flatMap(({ fields }) => fields);

/** Only of the fields that are shown, and only where something stands in them. */
export const formValues = (groups: readonly FieldGroup[], entered: Entered): FormValues =>
  Object.fromEntries(
    fieldsOf(groups).flatMap((field) => {
      const value = valueOf(field, entered);
      return value === null ? [] : [[field.key, value] as const];
    }),
  );

const same = (one: unknown, other: unknown): boolean =>
  JSON.stringify(one) === JSON.stringify(other);

/** Without what stands as it stood before: an entry is changed only where something was. */
export const changedValues = (values: FormValues, before: FormValues): FormValues =>
  Object.fromEntries(Object.entries(values).filter(([key, value]) => !same(value, before[key])));
