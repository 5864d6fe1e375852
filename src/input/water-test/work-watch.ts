/** Told how far long work has come, by whoever shows it. */

/** "reading" the files, then "judging" the night, for which they are read again. */
export type WorkPhase = "reading" | "judging";

export interface WorkWatch {
  /** So many bytes are to be read. */
  readonly onOpened: (bytes: number) => void;
  readonly onBytes: (count: number) => void;
  readonly onEnd: () => void;
}

/** Asked for once for each phase. */
export type WatchWork = (phase: WorkPhase) => WorkWatch;

const silent: WorkWatch = {
  onOpened: () => undefined,
  onBytes: () => undefined,
  onEnd: () => undefined,
};

/** For where nobody watches. */
export const unwatched: WatchWork = () => silent;
