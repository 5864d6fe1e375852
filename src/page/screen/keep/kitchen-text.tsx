/** kitchen.yaml as text, for what has no form: unit, height above the sea, room, and everything else. */
import type { JSX } from "preact";
import { useEffect, useState } from "preact/hooks";
import { problemText } from "../../../problem.ts";
import type { Session } from "../session.ts";

export const KitchenText = ({ session }: { readonly session: Session }): JSX.Element => {
  const [text, setText] = useState(session.state.text);
  const [problem, setProblem] = useState<string | null>(null);
  useEffect(() => setText(session.state.text), [session.state.text]);
  const use = async (): Promise<void> => {
    setProblem(null);
    const content = new Blob([text], { type: "application/yaml" });
    const opened = await session.ask("open", { files: [{ name: "kitchen.yaml", content }] });
    if (opened.ok) session.take(opened.value, "Changed.");
    else setProblem(problemText(opened.problem));
  };
  return (
    <section aria-labelledby="yaml-title">
      <h2 id="yaml-title">The kitchen’s file</h2>
      <details open={problem !== null}>
        <summary>Read or change kitchen.yaml itself</summary>
        <div class="field">
          <label for="yaml">kitchen.yaml</label>
          <textarea
            id="yaml"
            class="code"
            rows={20}
            spellcheck={false}
            value={text}
            aria-invalid={problem === null ? undefined : true}
            aria-describedby={problem === null ? undefined : "yaml-problem"}
            onInput={(event) => setText(event.currentTarget.value)}
          />
          {problem === null ? null : (
            <p class="mistake lines" role="alert" id="yaml-problem">
              {problem}
            </p>
          )}
        </div>
        <div class="buttons">
          <button
            type="button"
            class="main"
            disabled={session.busy || text === session.state.text}
            onClick={() => void use()}
          >
            Use this text
          </button>
          <button
            type="button"
            disabled={text === session.state.text}
            onClick={() => setText(session.state.text)}
          >
            Back to what it was
          </button>
        </div>
      </details>
    </section>
  );
};
