/** A button that saves a file the worker makes. */
import type { JSX } from "preact";
import { problemText } from "../../problem.ts";
import type { FileToSave, SavedFile } from "../protocol.ts";
import type { Session } from "./session.ts";

/** As a download: the one way to a file that works from a file's address in every browser. */
const download = ({ name, content }: SavedFile): void => {
  const address = URL.createObjectURL(content);
  const link = document.createElement("a");
  link.href = address;
  link.download = name;
  link.click();
  // The browser reads the address later than this line.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
};

interface SaveButtonProps {
  readonly session: Pick<Session, "ask" | "busy" | "tell">;
  readonly what: FileToSave;
  readonly children: string;
  readonly main?: true;
}

export const SaveButton = ({ session, what, children, main }: SaveButtonProps): JSX.Element => {
  const save = async (): Promise<void> => {
    const saved = await session.ask("save", { what });
    if (!saved.ok) return session.tell(problemText(saved.problem));
    download(saved.value);
    session.tell(`Saved as ${saved.value.name}, where your browser puts downloads.`);
  };
  return (
    <button
      type="button"
      class={main === true ? "main" : undefined}
      disabled={session.busy}
      onClick={() => void save()}
    >
      {children}
    </button>
  );
};
