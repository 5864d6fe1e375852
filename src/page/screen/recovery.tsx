/** What can still be done where the kitchen that was kept cannot be read: save it, open another, erase it. */
import type { JSX } from "preact";
import { problemText } from "../../problem.ts";
import type { Outcome } from "../../problem.ts";
import type { Changed } from "../protocol.ts";
import { chosenFiles } from "./readings/readings-input.tsx";
import { SaveButton } from "./save-button.tsx";
import type { Session } from "./session.ts";

interface RecoveryProps {
  readonly session: Omit<Session, "state">;
  /** Why it cannot be read. */
  readonly why: string;
}

export const Recovery = ({ session, why }: RecoveryProps): JSX.Element => {
  const put = (outcome: Outcome<Changed>, said: string | null): void => {
    if (outcome.ok) session.take(outcome.value, said);
    else session.tell(problemText(outcome.problem));
  };
  return (
    <>
      <h1>The kitchen kept here cannot be read</h1>
      <p class="mistake lines" role="alert">
        {why}
      </p>
      <p>
        Save it first, so that nothing is lost. Mended in a text editor, it can be opened again.
      </p>
      <div class="buttons">
        <SaveButton session={session} what="kitchen-yaml" main>
          Save kitchen.yaml alone
        </SaveButton>
        <button
          type="button"
          class="grave"
          disabled={session.busy}
          onClick={() =>
            void session
              .ask("erase", null)
              .then((erased) => put(erased, "Everything was erased from this browser."))
          }
        >
          Erase the kitchen and all its readings
        </button>
      </div>
      <div class="field">
        <label for="recover-files">
          Open another: kitchen.yaml, its readings, or a zipped kitchen
        </label>
        <input
          id="recover-files"
          type="file"
          multiple
          disabled={session.busy}
          onChange={(event) =>
            void session
              .ask("open", { files: chosenFiles(event.currentTarget.files) })
              .then((opened) => put(opened, null))
          }
        />
      </div>
    </>
  );
};
