/** Requests answered one after the other; whatever goes wrong with one is its answer. */
import { failed } from "../../problem.ts";
import type { Outcome } from "../../problem.ts";
import type { Asked, FromWorker, RequestName, Requests } from "../protocol.ts";
import { handlers } from "./requests.ts";
import type { Handler, Workroom } from "./workroom.ts";

/** Progress is told no more often than this, milliseconds. */
const everyMilliseconds = 100;

const problemOf = (error: unknown): Outcome<never> => {
  const what = error instanceof Error ? `${error.name}: ${error.message}` : String(error);
  return failed("internal", { what });
};

/** A request that this version does not know is no reason to fall silent. */
const answer = async (
  room: Workroom,
  name: RequestName,
  asked: unknown,
): Promise<Outcome<unknown>> => {
  if (!Object.hasOwn(handlers, name)) return failed("internal", { what: `no request ${name}` });
  const handler = handlers[name] as unknown as Handler<RequestName>;
  try {
    await room.store.start();
    return await handler(room, asked as Requests[RequestName]["asked"] & never);
  } catch (error) {
    return problemOf(error);
  }
};

export interface Answering {
  readonly room: Omit<Workroom, "progress">;
  readonly post: (message: FromWorker) => void;
  /** Milliseconds, of any clock that does not go back. */
  readonly clock: () => number;
}

/** Takes a request; gives a promise of when it was answered. */
export const answering = ({ room, post, clock }: Answering): ((asked: Asked) => Promise<void>) => {
  let last: Promise<void> = Promise.resolve();
  let told = -Infinity;
  const tell = (id: number, read: number, total: number): void => {
    if (clock() - told < everyMilliseconds) return;
    told = clock();
    post({ id, kind: "progress", read, total });
  };
  const give = (id: number, outcome: Outcome<unknown>): void => {
    try {
      post({ id, kind: "answer", outcome });
    } catch (error) {
      // What cannot be sent to another thread is a mistake of ours; the screen must hear of it.
      post({ id, kind: "answer", outcome: problemOf(error) });
    }
  };
  return ({ id, name, asked }) => {
    const progress = (read: number, total: number): void => tell(id, read, total);
    last = last.then(async () => give(id, await answer({ ...room, progress }, name, asked)));
    return last;
  };
};
