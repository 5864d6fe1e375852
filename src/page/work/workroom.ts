/** What every request is given: the kitchen, the clock, and what was worked out last. */
import type { Analysis } from "../../analysis.ts";
import type { WatchWork } from "../../input/water-test/work-watch.ts";
import type { KitchenAnalysis } from "../../kitchen-analysis-types.ts";
import type { Outcome } from "../../problem.ts";
import type { HtmlParts } from "../../report/html-page.ts";
import type { RequestName, Requests } from "../protocol.ts";
import type { MemoryStore } from "./memory-store.ts";

/** A file made of typed readings. */
export interface TypedFile {
  readonly name: string;
  readonly text: string;
}

export interface LastNight {
  readonly analysis: Analysis;
  readonly parts: HtmlParts;
  /** null where the readings came from files. */
  readonly typed: TypedFile | null;
}

export interface LastKitchen {
  readonly analysis: KitchenAnalysis;
  /** Its report, once that was asked for. */
  readonly parts: HtmlParts | null;
  /** What it was made of: the text, the files that were there, the day. */
  readonly of: string;
}

/** What was worked out last, to be saved without doing it again. */
export interface Desk {
  night: LastNight | null;
  kitchen: LastKitchen | null;
}

export interface Workroom {
  readonly store: MemoryStore;
  readonly desk: Desk;
  readonly now: () => Date;
  readonly version: string;
  /** Bytes read, of so many; 0 where that is not known. */
  readonly progress: (read: number, total: number) => void;
}

export type Handler<Name extends RequestName> = (
  room: Workroom,
  asked: Requests[Name]["asked"],
) => Promise<Outcome<Requests[Name]["answer"]>>;

/** Counts what is read; judging reads again, and is told as such. */
export const watchOf =
  ({ progress }: Pick<Workroom, "progress">): WatchWork =>
  () => {
    let read = 0;
    let total = 0;
    return {
      onOpened: (bytes) => {
        total += bytes;
      },
      onBytes: (count) => {
        read += count;
        progress(read, total);
      },
      onEnd: () => undefined,
    };
  };
