/** The kitchen's water tests, read and decided; done again only where something changed. */
import { usualConfidence, usualShare } from "../../input/check-request.ts";
import { localDay } from "../../input/local-day.ts";
import { storedKitchen } from "../../input/water-test/kitchen-store.ts";
import { analyseKitchen } from "../../kitchen-analysis.ts";
import { nothingRead } from "../../kitchen-analysis/nothing-read.ts";
import type { KitchenAnalysis } from "../../kitchen-analysis-types.ts";
import type { Kitchen } from "../../kitchen/kitchen.ts";
import { done } from "../../problem.ts";
import type { Outcome } from "../../problem.ts";
import type { HtmlParts } from "../../report/html-page.ts";
import { toKitchenHtmlParts } from "../../report/kitchen-html.ts";
import type { LastKitchen, Workroom } from "./workroom.ts";

const bytesListed = ({ tests }: Kitchen, { store }: Workroom): number =>
  tests
    .flatMap(({ files }) => files)
    .reduce((sum, { sha256 }) => sum + (store.raw().get(sha256)?.content.size ?? 0), 0);

const analysed = async (kitchen: Kitchen, room: Workroom): Promise<Outcome<KitchenAnalysis>> => {
  const { store, now, version, progress } = room;
  const total = bytesListed(kitchen, room);
  let read = 0;
  const said = {
    version,
    today: localDay(now()),
    share: usualShare,
    confidence: usualConfidence,
    appliance: null,
  };
  const analysis = await analyseKitchen(kitchen, said, (file) =>
    store.openListed(file, (count) => {
      read += count;
      progress(read, total);
    }),
  );
  if (!analysis.ok) return analysis;
  return nothingRead(analysis.value) ?? analysis;
};

/** What an analysis is made of: another text, other files or another day make another. */
const madeOf = ({ store, now }: Workroom): string =>
  [localDay(now()), ...[...store.raw().keys()].toSorted(), store.text()].join("\n");

/** The analysis, from the desk where nothing changed since. */
export const keptKitchen = async (room: Workroom): Promise<Outcome<LastKitchen>> => {
  const of = madeOf(room);
  const { desk, store } = room;
  if (desk.kitchen?.of === of) return done(desk.kitchen);
  const opened = await storedKitchen(store);
  if (!opened.ok) return opened;
  const analysis = await analysed(opened.value.kitchen, room);
  if (!analysis.ok) return analysis;
  desk.kitchen = { analysis: analysis.value, parts: null, of };
  return done(desk.kitchen);
};

export interface KeptReport {
  readonly analysis: KitchenAnalysis;
  readonly parts: HtmlParts;
}

/** The same with its report, whose charts take longer than the rest. */
export const keptReport = async (room: Workroom): Promise<Outcome<KeptReport>> => {
  const kept = await keptKitchen(room);
  if (!kept.ok) return kept;
  const { analysis, parts: before, of } = kept.value;
  if (before !== null) return done({ analysis, parts: before });
  const parts = await toKitchenHtmlParts(analysis, { renderedOn: room.now().toISOString() });
  room.desk.kitchen = { analysis, parts, of };
  return done({ analysis, parts });
};
