/** The kitchen as files: to open one, to save this one, to forget it. */
import type { JSX } from "preact";
import { useState } from "preact/hooks";
import { problemText } from "../../../problem.ts";
import type { ChosenFile } from "../../protocol.ts";
import { chosenFiles } from "../readings/readings-input.tsx";
import { SaveButton } from "../save-button.tsx";
import type { Session } from "../session.ts";
import { KitchenText } from "./kitchen-text.tsx";

const Opening = ({ session }: { readonly session: Session }): JSX.Element => {
  const [problem, setProblem] = useState<string | null>(null);
  const { missing } = session.state;
  const open = async (files: readonly ChosenFile[]): Promise<void> => {
    if (files.length === 0) return;
    setProblem(null);
    const opened = await session.ask("open", { files });
    if (opened.ok) session.take(opened.value, null);
    else setProblem(problemText(opened.problem));
  };
  return (
    <section aria-labelledby="open-title">
      <h2 id="open-title">Open a kitchen</h2>
      {missing.length === 0 ? null : (
        <div class="note">
          <p>Listed in this kitchen, and still to be opened:</p>
          <ul>
            {missing.map(({ path }) => (
              <li key={path}>{path}</li>
            ))}
          </ul>
        </div>
      )}
      <div class="field">
        <label for="open-files">kitchen.yaml, its readings, or a zipped kitchen</label>
        <p class="hint" id="open-hint">
          A kitchen folder of the command line opens here: choose kitchen.yaml together with the
          files in its folder readings. What is opened takes the place of the kitchen in this page.
        </p>
        <input
          id="open-files"
          type="file"
          multiple
          disabled={session.busy}
          aria-describedby={problem === null ? "open-hint" : "open-hint open-problem"}
          onChange={(event) => {
            const input = event.currentTarget;
            void open(chosenFiles(input.files)).then(() => (input.value = ""));
          }}
        />
        {problem === null ? null : (
          <p class="mistake lines" role="alert" id="open-problem">
            {problem}
          </p>
        )}
      </div>
    </section>
  );
};

const Erasing = ({ session }: { readonly session: Session }): JSX.Element => {
  const [asking, setAsking] = useState(false);
  const erase = async (): Promise<void> => {
    setAsking(false);
    const erased = await session.ask("erase", null);
    if (erased.ok) session.take(erased.value, "Everything was erased from this browser.");
    else session.tell(problemText(erased.problem));
  };
  return (
    <section aria-labelledby="erase-title">
      <h2 id="erase-title">Erase</h2>
      <p>
        {session.state.notKept ??
          "The kitchen stays in this browser, on this device, until you erase it here."}{" "}
        Files you saved are not touched.
      </p>
      <div class="buttons">
        {asking ? (
          <>
            <button type="button" class="grave" onClick={() => void erase()}>
              Erase the kitchen and all its readings
            </button>
            <button type="button" onClick={() => setAsking(false)}>
              Leave it
            </button>
          </>
        ) : (
          <button type="button" disabled={session.busy} onClick={() => setAsking(true)}>
            Erase everything kept here
          </button>
        )}
      </div>
    </section>
  );
};

export const FilesView = ({ session }: { readonly session: Session }): JSX.Element => (
  <>
    <h1>Files</h1>
    <p class="intro">
      Nothing leaves this device: there is no account and no server. Save the kitchen now and then,
      for a browser may clear what it keeps.
    </p>
    <section aria-labelledby="save-title">
      <h2 id="save-title">Save this kitchen</h2>
      <div class="buttons">
        <SaveButton session={session} what="kitchen-zip" main>
          Save kitchen and readings (zip)
        </SaveButton>
        <SaveButton session={session} what="kitchen-yaml">
          Save kitchen.yaml alone
        </SaveButton>
      </div>
      <p class="hint">Unzipped, it is a kitchen folder for the command line too.</p>
    </section>
    <Opening session={session} />
    <KitchenText session={session} />
    <Erasing session={session} />
  </>
);
