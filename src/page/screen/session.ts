/** What every view of the screen is handed: the kitchen, and how to ask the worker. */
import type { Outcome } from "../../problem.ts";
import type { Changed, KitchenState, RequestName, Requests } from "../protocol.ts";

export interface Session {
  readonly state: KitchenState;
  readonly busy: boolean;
  /** Asks, and shows that work is under way. */
  readonly ask: <Name extends RequestName>(
    name: Name,
    asked: Requests[Name]["asked"],
  ) => Promise<Outcome<Requests[Name]["answer"]>>;
  /** Takes over a changed kitchen and tells what follows from it, after `first` where that is not said yet. */
  readonly take: (changed: Changed, first: string | null) => void;
  /** Tells one sentence, also to a screen reader. */
  readonly tell: (text: string) => void;
  /** Tells a screen reader alone what the screen shows anyway. */
  readonly announce: (text: string) => void;
}
