/** The kitchen as the screen is told of it. */
import { cultures as catalogue } from "../../culture/catalogue.ts";
import { localDay } from "../../input/local-day.ts";
import type { Kitchen } from "../../kitchen/kitchen.ts";
import { parseWithSource } from "../../kitchen/parse-kitchen.ts";
import { entriesOf, isPlainMap } from "../../kitchen/text/plain-data.ts";
import type { PlainData, PlainMap } from "../../kitchen/text/plain-data.ts";
import { done } from "../../problem.ts";
import type { Outcome } from "../../problem.ts";
import type { KitchenState, WrittenEntry } from "../protocol.ts";
import { kitchenFile } from "./memory-store.ts";
import type { Workroom } from "./workroom.ts";

type Written = KitchenState["written"][string];

const asEntry = (value: PlainData): WrittenEntry => (isPlainMap(value) ? value : {});

/** A culture of the list is a map with its id, or the id alone; a batch goes by its number. */
const ofList = (section: string, items: readonly PlainData[]): Written =>
  Object.fromEntries(
    items.map((item, at) => {
      if (section === "batches") return [String(at + 1), asEntry(item)];
      const id = isPlainMap(item) ? item["id"] : item;
      return [typeof id === "string" ? id : String(at + 1), asEntry(item)];
    }),
  );

const ofSection = (section: string, value: PlainData): Written => {
  if (isPlainMap(value)) {
    return Object.fromEntries(entriesOf(value).map(([id, entry]) => [id, asEntry(entry)]));
  }
  return Array.isArray(value) ? ofList(section, value as readonly PlainData[]) : {};
};

const sections = ["thermometers", "appliances", "containers", "cultures", "tests", "batches"];

const writtenIn = (data: PlainMap): KitchenState["written"] =>
  Object.fromEntries(
    sections.map((section) => [section, ofSection(section, data[section] ?? null)]),
  );

/** Listed readings that are not here. */
export const missingIn = (
  { tests }: Pick<Kitchen, "tests">,
  has: (sha256: string) => boolean,
): KitchenState["missing"] =>
  tests.flatMap(({ id, files }) =>
    files.filter(({ sha256 }) => !has(sha256)).map(({ path }) => ({ test: id, path })),
  );

const notKeptText = (why: string): string =>
  `What is new here is not kept when you close this page: ${why}. Save your kitchen as a file before you go.`;

/** Fails where what was kept is no kitchen, with its mistakes. */
export const kitchenState = ({ store, now, version }: Workroom): Outcome<KitchenState> => {
  const text = store.text();
  const parsed = parseWithSource(text, kitchenFile);
  if (!parsed.ok) return parsed;
  const { kitchen, source } = parsed.value;
  const why = store.notKept();
  return done({
    kitchen,
    text,
    written: writtenIn(source.data),
    missing: missingIn(kitchen, (sha256) => store.raw().has(sha256)),
    catalogue,
    today: localDay(now()),
    version,
    notKept: why === null ? null : notKeptText(why),
    started: store.started(),
  });
};

/** A kitchen that changed, with what is to be said of it. */
export const changedState = (room: Workroom, remarks: readonly string[]) => {
  const state = kitchenState(room);
  return state.ok ? done({ state: state.value, remarks }) : state;
};
