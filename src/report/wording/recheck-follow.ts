/** What follows from rechecks and the log: what brings a culture back, or what else to look at. */
import type { BatchFinding, Recheck, RecheckCulture } from "../../advice/recheck-types.ts";
import type { SetUp } from "../../kitchen/kitchen.ts";
import { adviceSentence } from "./advice.ts";
import type { RecheckView } from "./recheck.ts";
import { findingText } from "./separation.ts";
import { setUpKey } from "./set-ups.ts";

export interface Follow {
  readonly setUp: SetUp;
  readonly culture: string;
  /** To stand after the culture's name. */
  readonly text: string;
  /** What to change, where the temperature is or may be to blame. */
  readonly advice: string | null;
  /** Its batches in the log; null where there are none. */
  readonly finding: BatchFinding | null;
}

const same = (a: SetUp, b: SetUp): boolean => setUpKey(a) === setUpKey(b);

const findingOf = (view: RecheckView, { setUp }: Recheck, { culture }: RecheckCulture) =>
  view.recheck.findings.find((one) => one.culture === culture && same(one.setUp, setUp)) ?? null;

/** Held at the baseline, or used for batches: others were never meant for this set-up. */
const fellOut = (view: RecheckView, recheck: Recheck, culture: RecheckCulture): boolean =>
  culture.now.verdict === "misses" &&
  (culture.margin > 0 || findingOf(view, recheck, culture) !== null);

/**
 * Advice weighs all tests of a set-up together, so that it may still praise the
 * one that has just moved out.
 */
const stillPraised =
  "Older tests still weigh in what is advised for it. Repeat the newest; if it agrees, take the tests from before out of the kitchen (holdband remove), and ask again.";

/** The appliance's own sentence for that culture; null where it was not asked about. */
const adviceFor = (
  { analysis, writing }: RecheckView,
  setUp: SetUp,
  culture: string,
  fell: boolean,
): string | null => {
  const appliance = analysis.advice.appliances.find((one) => one.appliance === setUp.appliance);
  const advice = appliance?.cultures.find((one) => one.culture === culture);
  if (appliance === undefined || advice === undefined) return null;
  const praised = advice.answer === "can" || advice.answer === "may";
  return fell && praised && advice.best !== null && same(advice.best.setUp, setUp)
    ? stillPraised
    : adviceSentence(analysis, appliance, advice, writing);
};

const outside = "outside its window now";

const ofRecheck = (view: RecheckView, recheck: Recheck): readonly Follow[] =>
  recheck.cultures
    .filter((culture) => fellOut(view, recheck, culture))
    .map((culture) => {
      const finding = findingOf(view, recheck, culture);
      const told = finding !== null && finding.separated > 0;
      return {
        setUp: recheck.setUp,
        culture: culture.culture,
        text: told ? findingText(finding, view) : `${outside}.`,
        advice: adviceFor(view, recheck.setUp, culture.culture, true),
        finding,
      };
    });

const ofFinding = (view: RecheckView, finding: BatchFinding): Follow => {
  const { setUp, culture, now } = finding;
  return {
    setUp,
    culture,
    text: findingText(finding, view),
    advice:
      now === null || now.verdict === "holds"
        ? null
        : adviceFor(view, setUp, culture, now.verdict === "misses"),
    finding,
  };
};

/** Cultures that fell out of their window first, then the log's other batches that separated. */
export const whatFollows = (view: RecheckView): readonly Follow[] => {
  const fell = view.recheck.rechecks.flatMap((recheck) => ofRecheck(view, recheck));
  const told = (finding: BatchFinding): boolean =>
    fell.some((one) => one.culture === finding.culture && same(one.setUp, finding.setUp));
  return [
    ...fell,
    ...view.recheck.findings
      .filter((finding) => finding.separated > 0 && !told(finding))
      .map((finding) => ofFinding(view, finding)),
  ];
};
