/** What is under way: how far it is, and a way to stop it. */
import type { JSX } from "preact";
import { useEffect, useState } from "preact/hooks";
import type { Progress } from "../protocol.ts";

interface WorkingProps {
  /** Questions that are not answered yet. */
  readonly open: number;
  readonly progress: Progress | null;
  /** null where stopping would lose what the browser does not keep. */
  readonly onStop: (() => void) | null;
}

/** Work shorter than this is not worth a word, ms. */
const shortest = 300;

/** Fewer bytes than this are read before one can look. */
const worthCounting = 1_000_000;

const megabytes = (bytes: number): string => (bytes / 1_000_000).toFixed(1);

const amount = ({ read, total }: Progress): string =>
  `${megabytes(read)} of ${megabytes(total)} MB read`;

export const Working = ({ open, progress, onStop }: WorkingProps): JSX.Element | null => {
  const [shown, setShown] = useState(false);
  const busy = open > 0;
  useEffect(() => {
    if (!busy) return setShown(false);
    const timer = setTimeout(() => setShown(true), shortest);
    return () => clearTimeout(timer);
  }, [busy]);
  if (!shown || !busy) return null;
  const known =
    progress !== null && progress.total > worthCounting && progress.read < progress.total;
  return (
    <div class="working">
      <label for="work">{known ? amount(progress) : "Working it out"}</label>
      {known ? (
        <progress id="work" max={progress.total} value={progress.read} />
      ) : (
        <progress id="work" />
      )}
      {onStop === null ? null : (
        <button type="button" onClick={onStop}>
          Stop
        </button>
      )}
    </div>
  );
};
