/**
 * The worker, as the screen asks it. Its code stands as text in the page itself,
 * so that one file is the whole program; it runs from a blob's address.
 */
import { failed } from "../../problem.ts";
import type { Outcome } from "../../problem.ts";
import { fromInert } from "../inert-text.ts";
import type { Asked, FromWorker, Progress, RequestName, Requests } from "../protocol.ts";

export interface WorkerClient {
  /** Never rejects: what went wrong is a problem. Questions may be asked before others are answered. */
  readonly ask: <Name extends RequestName>(
    name: Name,
    asked: Requests[Name]["asked"],
    onProgress?: (progress: Progress) => void,
  ) => Promise<Outcome<Requests[Name]["answer"]>>;
  /**
   * Ends the worker at once and starts another, which remembers nothing but what
   * is kept in the browser. Every open question is answered with the problem `stopped`.
   */
  readonly stop: () => void;
}

interface OpenQuestion {
  readonly settle: (outcome: Outcome<unknown>) => void;
  readonly onProgress: ((progress: Progress) => void) | undefined;
}

interface Running {
  readonly worker: Worker;
  readonly end: () => void;
}

interface Heard {
  readonly onMessage: (message: FromWorker) => void;
  /** `before`: whether anything was heard from this worker earlier. */
  readonly onError: (what: string, before: boolean) => void;
}

const codeInPage = (): string =>
  fromInert(document.getElementById("worker-code")?.textContent ?? "");

const run = ({ onMessage, onError }: Heard): Running => {
  const address = URL.createObjectURL(new Blob([codeInPage()], { type: "text/javascript" }));
  const worker = new Worker(address);
  let before = false;
  let ended = false;
  worker.addEventListener("message", ({ data }: MessageEvent<FromWorker>) => {
    before = true;
    if (!ended) onMessage(data);
  });
  worker.addEventListener("error", ({ message }: { readonly message?: string }) => {
    // One that could not even be loaded gives an event without words.
    if (!ended) onError(message ?? "it does not say why", before);
  });
  const end = (): void => {
    ended = true;
    worker.terminate();
    URL.revokeObjectURL(address);
  };
  return { worker, end };
};

const openQuestions = () => {
  const open = new Map<number, OpenQuestion>();
  const settle = (id: number, outcome: Outcome<unknown>): void => {
    open.get(id)?.settle(outcome);
    open.delete(id);
  };
  return {
    add: (id: number, question: OpenQuestion) => open.set(id, question),
    settle,
    settleAll: (outcome: Outcome<unknown>): void => {
      for (const id of open.keys()) settle(id, outcome);
    },
    hear: (message: FromWorker): void => {
      if (message.kind === "answer") settle(message.id, message.outcome);
      else open.get(message.id)?.onProgress?.(message);
    },
  };
};

const unstarted = (why: string) => failed("worker-unstarted", { why });

/** Starts the worker at once, so that it is ready when the first question comes. */
export const startWorker = (): WorkerClient => {
  const questions = openQuestions();
  let running: Running | null = null;
  let lastId = 0;

  const end = (): void => {
    running?.end();
    running = null;
  };
  // One that worked before still holds its kitchen; one that never did is tried anew when next asked.
  const onError = (what: string, before: boolean): void => {
    if (!before) end();
    questions.settleAll(before ? failed("internal", { what }) : unstarted(what));
  };
  const start = (): Outcome<Worker> => {
    try {
      running ??= run({ onMessage: questions.hear, onError });
      return { ok: true, value: running.worker };
    } catch (error) {
      return unstarted(String(error));
    }
  };
  const send = (question: Asked): void => {
    const started = start();
    if (!started.ok) return questions.settle(question.id, started);
    try {
      started.value.postMessage(question, []);
    } catch (error) {
      questions.settle(question.id, failed("internal", { what: String(error) }));
    }
  };

  start();
  return {
    ask: (name, asked, onProgress) => {
      const id = (lastId += 1);
      const answer = new Promise<Outcome<unknown>>((settle) => {
        questions.add(id, { settle, onProgress });
      });
      send({ id, name, asked } as Asked);
      return answer as Promise<Outcome<never>>;
    },
    stop: () => {
      end();
      questions.settleAll(failed("stopped", { what: "this" }));
      start();
    },
  };
};
