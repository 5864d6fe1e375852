/** Sections whose entries go by a name: thermometers, appliances, containers. */
import type { JSX } from "preact";
import { failed } from "../../../problem.ts";
import type { FormValues, NamedSection, WrittenEntry } from "../../protocol.ts";
import type { Entered, FieldGroup } from "../form/field-types.ts";
import type { Session } from "../session.ts";
import { applianceFields } from "./appliance-fields.ts";
import { containerFields } from "./container-fields.ts";
import {
  applianceOptions,
  enteredAppliance,
  enteredPlain,
  enteredThermometer,
} from "./entry-form.ts";
import { EntrySection, removal } from "./entry-section.tsx";
import { entryText } from "./entry-text.ts";
import { newId } from "./new-id.ts";
import { thermometerFields } from "./thermometer-fields.ts";

type Named = Exclude<NamedSection, "test" | "culture">;

interface Kind {
  readonly plural: string;
  readonly title: string;
  readonly note: string;
  readonly add: string;
  readonly example: string;
  readonly fields: (entered: Entered) => readonly FieldGroup[];
  readonly entered: (entry: WrittenEntry) => Entered;
  readonly options: (values: FormValues) => FormValues;
}

const asTheyAre = (values: FormValues): FormValues => values;

const kinds: Readonly<Record<Named, Kind>> = {
  appliance: {
    plural: "appliances",
    title: "Appliances",
    note: "What heats: cookers, water baths, warming boxes.",
    add: "Enter an appliance",
    example: "such as Step cooker",
    fields: applianceFields,
    entered: enteredAppliance,
    options: applianceOptions,
  },
  container: {
    plural: "containers",
    title: "Containers",
    note: "What the food stands in, and how.",
    add: "Enter a container",
    example: "such as Jars in water",
    fields: containerFields,
    entered: enteredPlain,
    options: asTheyAre,
  },
  thermometer: {
    plural: "thermometers",
    title: "Thermometers",
    note: "A check in melting ice and in boiling water gives a correction with its uncertainty.",
    add: "Enter a thermometer",
    example: "such as Pen thermometer",
    fields: thermometerFields,
    entered: enteredThermometer,
    options: asTheyAre,
  },
};

const nameGroup = (hint: string): FieldGroup => ({
  title: null,
  fields: [{ kind: "text", key: "name", label: "Name", hint }],
});

export const NamedEntries = ({
  session,
  section,
}: {
  readonly session: Session;
  readonly section: Named;
}): JSX.Element => {
  const { plural, title, note, add, example, fields, entered, options } = kinds[section];
  const written = session.state.written[plural] ?? {};
  const entries = Object.entries(written).map(([id, entry]) => {
    const name = typeof entry["name"] === "string" ? entry["name"] : id;
    return {
      key: id,
      name,
      text: entryText(entry, ["name"]),
      before: { name, ...entered(entry) },
    };
  });
  return (
    <EntrySection
      session={session}
      what={section}
      title={title}
      note={note}
      add={add}
      entries={entries}
      groups={() => (all) => [nameGroup(example), ...fields(all)]}
      put={async (id, values) => {
        const name = Array.isArray(values["name"]) ? String(values["name"][0]) : "";
        const word = id ?? newId(name, Object.keys(written));
        if (word === null) {
          return failed("option-missing", { option: "--name", why: "it goes by that" });
        }
        return session.ask("edit", { section, words: [word], options: options(values) });
      }}
      remove={removal(session, section)}
    />
  );
};
