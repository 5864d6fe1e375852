/** A page's workroom without a browser: what it keeps lies in a map, and its store can be made to fail. */
import type { Keeper, Kept, RawFile } from "../../../src/page/work/keeper.ts";
import { memoryStore } from "../../../src/page/work/memory-store.ts";
import type { Desk, Workroom } from "../../../src/page/work/workroom.ts";
import { handlers } from "../../../src/page/work/requests.ts";
import type { RequestName, Requests } from "../../../src/page/protocol.ts";
import { problemText } from "../../../src/problem.ts";
import type { Outcome, Problem } from "../../../src/problem.ts";

/** What a browser holds for the page, shared by all its windows. */
export interface Shelf {
  text: string | null;
  readonly raw: Map<string, RawFile>;
  /** Why every writing fails; null where none does. */
  full: string | null;
  /** Largest file that finds room, bytes. */
  room: number;
}

export const emptyShelf = (): Shelf => ({ text: null, raw: new Map(), full: null, room: Infinity });

const saved = { ok: true, value: null } as const;
const refused = (why: string) => ({ ok: false, why }) as const;

export const shelfKeeper = (shelf: Shelf): Keeper => {
  const write = async (work: () => void) => {
    if (shelf.full !== null) return refused(shelf.full);
    work();
    return saved;
  };
  const put = (kept: Kept): void => {
    shelf.text = kept.text;
    shelf.raw.clear();
    for (const [sha256, one] of kept.raw) shelf.raw.set(sha256, one);
  };
  return {
    load: async () => ({
      ok: true,
      value: shelf.text === null ? null : { text: shelf.text, raw: new Map(shelf.raw) },
    }),
    saveText: async (change) => {
      const before = shelf.text;
      const next = change(before);
      if (next !== null && shelf.full !== null) return refused(shelf.full);
      shelf.text = next ?? before;
      return { ok: true, value: before };
    },
    saveRaw: async (sha256, one) =>
      one.content.size > shelf.room
        ? refused("the browser has no more room for it")
        : write(() => shelf.raw.set(sha256, one)),
    removeRaw: (sha256) => write(() => shelf.raw.delete(sha256)),
    replace: (kept) => write(() => put(kept)),
    clear: () =>
      write(() => {
        shelf.text = null;
        shelf.raw.clear();
      }),
  };
};

export interface TestRoom {
  readonly room: Workroom;
  readonly ask: <Name extends RequestName>(
    name: Name,
    asked: Requests[Name]["asked"],
  ) => Promise<Outcome<Requests[Name]["answer"]>>;
  /** The same, which must succeed. */
  readonly ok: <Name extends RequestName>(
    name: Name,
    asked: Requests[Name]["asked"],
  ) => Promise<Requests[Name]["answer"]>;
  /** The same, which must fail. */
  readonly problem: <Name extends RequestName>(
    name: Name,
    asked: Requests[Name]["asked"],
  ) => Promise<Problem>;
  readonly told: (readonly [read: number, total: number])[];
}

/** Local noon of that day, as a clock on the wall has it. */
export const noon = new Date(2026, 9, 20, 12, 0, 0);

export const pageRoom = (keeper: Keeper = shelfKeeper(emptyShelf()), now = noon): TestRoom => {
  const told: (readonly [number, number])[] = [];
  const desk: Desk = { night: null, kitchen: null };
  const room: Workroom = {
    store: memoryStore(keeper),
    desk,
    now: () => now,
    version: "0.1.0",
    progress: (read, total) => told.push([read, total]),
  };
  const ask: TestRoom["ask"] = async (name, asked) => {
    await room.store.start();
    return handlers[name](room, asked);
  };
  return {
    room,
    told,
    ask,
    ok: async (name, asked) => {
      const outcome = await ask(name, asked);
      if (!outcome.ok) throw new Error(problemText(outcome.problem));
      return outcome.value;
    },
    problem: async (name, asked) => {
      const outcome = await ask(name, asked);
      if (outcome.ok) throw new Error(`${name} went well`);
      return outcome.problem;
    },
  };
};

export const chosen = (name: string, content: string | Uint8Array<ArrayBuffer>) => ({
  name,
  content: new Blob([content]),
});

/** One appliance of each control, two containers, a culture and a thermometer without a check. */
export const equipped = `holdband: 1
unit: C
# The kitchen of these tests.
thermometers:
  pen:
    accuracy: 1
appliances:
  step-cooker:
    kind: cooker
    steps: 30..60 by 1
  warm-cooker:
    kind: cooker
    control: fixed
containers:
  jars:
    stands: jars in water
cultures:
  - yoghurt
`;

/** A room in which that kitchen, with more lines to it, is open. */
export const equippedRoom = async (more = "", keeper?: Keeper, now?: Date): Promise<TestRoom> => {
  const page = pageRoom(keeper, now);
  await page.ok("open", { files: [chosen("kitchen.yaml", equipped + more)] });
  return page;
};
