/** The log of batches: what was cultured where, and how it came out. */
import type { JSX } from "preact";
import type { FormValues } from "../../protocol.ts";
import type { Session } from "../session.ts";
import { batchFields } from "./batch-fields.ts";
import { enteredBatch } from "./entry-form.ts";
import { EntrySection } from "./entry-section.tsx";
import { entryText } from "./entry-text.ts";

const shownApart = ["date", "culture"];

const notYet = ({ appliances, containers, cultures }: Session["state"]["kitchen"]) =>
  appliances.length > 0 && containers.length > 0 && cultures.length > 0
    ? null
    : "Enter a culture, an appliance and a container first: a batch is of all three.";

export const BatchEntries = ({ session }: { readonly session: Session }): JSX.Element => {
  const { kitchen, written } = session.state;
  const entries = Object.entries(written["batches"] ?? {}).map(([number, entry]) => ({
    key: number,
    name: `Batch ${number}: ${String(entry["culture"])}, ${String(entry["date"])}`,
    text: entryText(entry, shownApart),
    before: enteredBatch(entry),
  }));
  const put = (number: string | null, options: FormValues) =>
    session.ask("edit", {
      section: "batch",
      words: number === null ? [] : [number],
      options,
    });
  return (
    <EntrySection
      session={session}
      what="batch"
      title="Batches"
      note="Whey that parts again and again calls for a re-check: the log says when."
      add="Log a batch"
      entries={entries}
      groups={() => batchFields(kitchen)}
      put={put}
      remove={(number) =>
        session.ask("edit", { section: "batch", words: [number], options: { remove: true } })
      }
      notYet={notYet(kitchen)}
    />
  );
};
