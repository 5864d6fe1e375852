/** A passing line on long work: silent for the first half second, then about five times a second. */
const quietFor = 500;
const everyMilliseconds = 200;

export interface Progress {
  readonly add: (bytes: number) => void;
  readonly end: () => void;
}

const megabytes = (bytes: number): string => (bytes / 1e6).toFixed(0);

/**
 * `show` draws one line over the last one and an empty text wipes it; null
 * where nobody watches. `now` gives milliseconds.
 */
export const startProgress = (
  show: ((line: string) => void) | null,
  total: () => number,
  now: () => number,
): Progress => {
  let last = now() + quietFor - everyMilliseconds;
  let read = 0;
  let shown = false;
  const add = (bytes: number): void => {
    read += bytes;
    if (show === null || now() - last < everyMilliseconds) return;
    last = now();
    shown = true;
    show(
      read < total()
        ? `Reading: ${megabytes(read)} of ${megabytes(total())} MB`
        : "Working out the hold and the verdicts",
    );
  };
  const end = (): void => {
    if (shown) show?.("");
  };
  return { add, end };
};
