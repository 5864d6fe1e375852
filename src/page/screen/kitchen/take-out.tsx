/** A button that takes an entry out, and asks once more before it does. */
import type { ComponentChildren, JSX } from "preact";
import { useState } from "preact/hooks";
import { problemText } from "../../../problem.ts";
import type { Outcome } from "../../../problem.ts";
import type { Changed } from "../../protocol.ts";
import type { Session } from "../session.ts";

interface TakeOutProps {
  readonly session: Session;
  /** "appliance". */
  readonly what: string;
  readonly name: string;
  readonly remove: () => Promise<Outcome<Changed>>;
  /** Other buttons, beside it until it asks. */
  readonly children?: ComponentChildren;
}

export const TakeOut = ({ session, what, name, remove, children }: TakeOutProps): JSX.Element => {
  const [asking, setAsking] = useState(false);
  const take = async (): Promise<void> => {
    setAsking(false);
    const outcome = await remove();
    if (outcome.ok) session.take(outcome.value, null);
    else session.tell(problemText(outcome.problem));
  };
  if (asking) {
    return (
      <div class="buttons small-buttons">
        <button type="button" class="grave" onClick={() => void take()}>
          Take {name} out
        </button>
        <button type="button" onClick={() => setAsking(false)}>
          Leave it
        </button>
      </div>
    );
  }
  return (
    <div class="buttons small-buttons">
      {children}
      <button
        type="button"
        disabled={session.busy}
        aria-label={`Take out ${what} ${name}`}
        onClick={() => setAsking(true)}
      >
        Take out
      </button>
    </div>
  );
};
