/** The cultures kept here: taken from the catalogue, or with figures of one's own. */
import type { JSX } from "preact";
import { failed } from "../../../problem.ts";
import type { FormValues } from "../../protocol.ts";
import type { Entered, FieldGroup } from "../form/field-types.ts";
import type { Session } from "../session.ts";
import { entryChoices } from "./choices.ts";
import { cultureFields } from "./culture-fields.ts";
import { enteredPlain } from "./entry-form.ts";
import { EntrySection, removal } from "./entry-section.tsx";
import { entryText } from "./entry-text.ts";
import { newId } from "./new-id.ts";

const own = "own";

const whichGroup = (session: Session, entered: Entered): FieldGroup => ({
  title: null,
  fields: [
    {
      kind: "choice",
      key: "which",
      label: "Which culture",
      choices: [
        ...entryChoices(session.state.catalogue),
        { value: own, label: "one that is not in this list" },
      ],
      none: null,
    },
    ...(entered["which"] === own
      ? [{ kind: "text", key: "name", label: "Name", hint: "such as My blend" } as const]
      : []),
  ],
});

const newFields =
  (session: Session) =>
  (entered: Entered): readonly FieldGroup[] => [
    whichGroup(session, entered),
    ...cultureFields(entered["which"] === own),
  ];

const changeFields = (): readonly FieldGroup[] => [
  { title: null, fields: [{ kind: "text", key: "name", label: "Name" }] },
  ...cultureFields(true),
];

const first = (values: FormValues, key: string): string => {
  const value = values[key];
  return Array.isArray(value) ? String(value[0]) : "";
};

const put =
  (session: Session, taken: readonly string[]) => async (id: string | null, values: FormValues) => {
    const { which: _, ...options } = values;
    const which = first(values, "which");
    const word = id ?? (which === own ? newId(first(values, "name"), taken) : which);
    if (word === null || word === "") {
      const option = which === own ? "--name" : "--which";
      return failed("option-missing", { option, why: "a window belongs to one culture" });
    }
    return session.ask("edit", { section: "culture", words: [word], options });
  };

export const CultureEntries = ({ session }: { readonly session: Session }): JSX.Element => {
  const { kitchen, written } = session.state;
  const entries = kitchen.cultures.map(({ id, name, low, high, ceiling, hours }) => ({
    key: id,
    name,
    text:
      entryText(written["cultures"]?.[id] ?? {}, ["name"]) ||
      `${low} to ${high} °C, never above ${ceiling} °C, ${hours} h (catalogue)`,
    before: { name, ...enteredPlain(written["cultures"]?.[id] ?? {}) },
  }));
  const taken = kitchen.cultures.map(({ id }) => id);
  return (
    <EntrySection
      session={session}
      what="culture"
      title="Cultures"
      note="What you keep, with the window each one wants."
      add="Enter a culture"
      entries={entries}
      groups={(key) => (key === null ? newFields(session) : changeFields)}
      put={put(session, taken)}
      remove={removal(session, "culture")}
    />
  );
};
