/** One section of the kitchen: what it holds, and the form to add or change an entry. */
import type { JSX } from "preact";
import { useState } from "preact/hooks";
import { done } from "../../../problem.ts";
import type { Outcome } from "../../../problem.ts";
import type { Changed, FormValues, NamedSection } from "../../protocol.ts";
import type { Entered, FieldGroup } from "../form/field-types.ts";
import { Form } from "../form/form.tsx";
import type { Session } from "../session.ts";
import { TakeOut } from "./take-out.tsx";

export interface ShownEntry {
  /** Unlike all others in the section. */
  readonly key: string;
  readonly name: string;
  readonly text: string;
  readonly before: Entered;
}

export interface SectionProps {
  readonly session: Session;
  /** "appliance": begins the ids. */
  readonly what: string;
  readonly title: string;
  readonly note: string;
  /** "Enter an appliance". */
  readonly add: string;
  readonly entries: readonly ShownEntry[];
  /** Of a new entry, null; else of the one with this key. */
  readonly groups: (key: string | null) => (entered: Entered) => readonly FieldGroup[];
  readonly put: (key: string | null, values: FormValues) => Promise<Outcome<Changed>>;
  readonly remove: (key: string) => Promise<Outcome<Changed>>;
  /** Why nothing can be added yet; null where it can. */
  readonly notYet?: string | null;
}

/** Which form is open: of an entry, of a new one, or none. */
type Open = { readonly key: string | null } | null;

const EntryItem = ({
  section,
  entry,
  open,
  onOpen,
}: {
  readonly section: SectionProps;
  readonly entry: ShownEntry;
  readonly open: boolean;
  readonly onOpen: (open: boolean) => void;
}): JSX.Element => {
  const { session, what, remove } = section;
  return (
    <li>
      <p class="entry">
        <b>{entry.name}</b>
        <span class="small">{entry.text}</span>
      </p>
      {open ? (
        <EntryForm section={section} entry={entry} onDone={() => onOpen(false)} />
      ) : (
        <TakeOut session={session} what={what} name={entry.name} remove={() => remove(entry.key)}>
          <button
            type="button"
            disabled={session.busy}
            aria-label={`Change ${what} ${entry.name}`}
            onClick={() => onOpen(true)}
          >
            Change
          </button>
        </TakeOut>
      )}
    </li>
  );
};

const EntryForm = ({
  section,
  entry,
  onDone,
}: {
  readonly section: SectionProps;
  readonly entry: ShownEntry | null;
  readonly onDone: () => void;
}): JSX.Element => {
  const { session, what, put, groups } = section;
  const key = entry?.key ?? null;
  const submit = async (values: FormValues): Promise<Outcome<unknown>> => {
    if (entry !== null && Object.keys(values).length === 0) {
      onDone();
      return done(null);
    }
    const outcome = await put(key, values);
    if (!outcome.ok) return outcome;
    session.take(outcome.value, entry === null ? "Entered." : "Changed.");
    onDone();
    return outcome;
  };
  return (
    <Form
      id={`${what}-${key ?? "new"}`}
      groups={groups(key)}
      before={entry?.before ?? {}}
      button={entry === null ? "Enter it" : "Change it"}
      submit={submit}
      busy={session.busy}
      onCancel={onDone}
    />
  );
};

export const EntrySection = (section: SectionProps): JSX.Element => {
  const { session, what, title, note, add, entries, notYet } = section;
  const [open, setOpen] = useState<Open>(null);
  return (
    <section class="entries" aria-labelledby={`${what}-title`}>
      <h2 id={`${what}-title`}>{title}</h2>
      <p class="hint">{note}</p>
      {entries.length === 0 ? null : (
        <ul class="plain-list">
          {entries.map((entry) => (
            <EntryItem
              key={entry.key}
              section={section}
              entry={entry}
              open={open !== null && open.key === entry.key}
              onOpen={(on) => setOpen(on ? { key: entry.key } : null)}
            />
          ))}
        </ul>
      )}
      {notYet != null ? <p class="small">{notYet}</p> : null}
      {notYet == null && open?.key === null ? (
        <EntryForm section={section} entry={null} onDone={() => setOpen(null)} />
      ) : null}
      {notYet == null && open?.key !== null ? (
        <div class="buttons">
          <button type="button" disabled={session.busy} onClick={() => setOpen({ key: null })}>
            {add}
          </button>
        </div>
      ) : null}
    </section>
  );
};

/** The section of kitchen.yaml that an entry of this kind is taken out of. */
export const removal = (session: Session, section: NamedSection) => (id: string) =>
  session.ask("remove", { section, id });
