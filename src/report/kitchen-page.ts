/** What the parts of a kitchen's report share: which tests and set-ups belong together, and their places on the page. */
import type { Analysis } from "../analysis.ts";
import type { ProbeAnalysis } from "../analysis-types.ts";
import type { KitchenAnalysis, SetUpAnalysis, TestAnalysis } from "../kitchen-analysis-types.ts";
import type { Appliance } from "../kitchen/kitchen.ts";
import { windowMark } from "./wording/cultures.ts";
import type { ReasonContext } from "./wording/reasons.ts";
import type { Writing } from "./writing.ts";

export interface KitchenPage {
  readonly analysis: KitchenAnalysis;
  readonly writing: Writing;
}

export type ReadTest = TestAnalysis & { readonly analysis: Analysis };
export type UnreadTest = Exclude<TestAnalysis, { readonly problem: null }>;

const wasRead = (test: TestAnalysis): test is ReadTest => test.analysis !== null;

export const readTests = ({ tests }: KitchenAnalysis): readonly ReadTest[] => tests.filter(wasRead);

export const unreadTests = ({ tests }: KitchenAnalysis): readonly UnreadTest[] =>
  tests.filter((test): test is UnreadTest => test.problem !== null);

/** Set-ups of one appliance, in the analysis's order. */
export const setUpsOf = (
  { setUps }: KitchenAnalysis,
  { id }: Pick<Appliance, "id">,
): readonly SetUpAnalysis[] => setUps.filter(({ setUp }) => setUp.appliance === id);

/** Appliances this report is about, in the kitchen's order, untested ones too. */
export const appliancesOf = ({ kitchen, appliance }: KitchenAnalysis): readonly Appliance[] =>
  kitchen.appliances.filter(({ id }) => appliance === null || id === appliance);

/** The tests a set-up rests on, oldest first. */
export const testsBehind = (
  analysis: KitchenAnalysis,
  { testIds }: SetUpAnalysis,
): readonly ReadTest[] => readTests(analysis).filter(({ test }) => testIds.includes(test.id));

export const setUpId = ({ setUps }: KitchenAnalysis, setUp: SetUpAnalysis): string =>
  `set-up-${setUps.indexOf(setUp) + 1}`;

export const testId = ({ tests }: KitchenAnalysis, test: TestAnalysis): string =>
  `test-${tests.indexOf(test) + 1}`;

/** Of one test, the probe that a set-up's answers are about. */
export const shownProbeOf = (test: ReadTest, { probe }: SetUpAnalysis): ProbeAnalysis | null => {
  const { probes } = test.analysis;
  const judged = probes.filter(({ verdicts }) => verdicts.length > 0);
  const same = (judged.length > 0 ? judged : probes).filter(
    ({ series }) => series.role === (probe?.series.role ?? "food"),
  );
  return same.find(({ series }) => series.name === probe?.series.name) ?? same[0] ?? null;
};

const hours = ({ night }: ProbeAnalysis): number => night.hold?.hours ?? 0;

/** The probe a set-up's reasons speak of: of the test with the longest hold. */
export const longestProbe = (
  analysis: KitchenAnalysis,
  setUp: SetUpAnalysis,
): ProbeAnalysis | null => {
  const probes = testsBehind(analysis, setUp).flatMap((test) => shownProbeOf(test, setUp) ?? []);
  return probes.reduce<ProbeAnalysis | null>(
    (a, b) => (a === null || hours(b) > hours(a) ? b : a),
    null,
  );
};

export const reasonContext = (
  { analysis, writing }: KitchenPage,
  setUp: SetUpAnalysis,
): ReasonContext => ({
  writing,
  role: setUp.probe?.series.role ?? "food",
  thermometerAccuracy: longestProbe(analysis, setUp)?.thermometer.accuracy ?? null,
  confidence: analysis.confidence,
  setUp: { tests: setUp.testIds.length },
});

/** "1 test", "3 tests". */
export const counted = (count: number, what: string): string =>
  `${count} ${what}${count === 1 ? "" : "s"}`;

/** How a culture is called where there is room for one word. */
export const markOf = ({ requirements }: KitchenAnalysis, culture: string): string => {
  const asked = requirements.find((one) => one.culture === culture);
  return asked === undefined ? culture : windowMark(asked);
};
