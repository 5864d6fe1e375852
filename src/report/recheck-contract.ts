/**
 * Rechecks as data: `recheck --json`, and `advice.recheck` of `report --json`.
 * Temperatures in degC, warm-up in minutes, drift in degC per hour. Fields may
 * be added, none renamed or dropped.
 */
import type {
  BatchFinding,
  Recheck,
  RecheckDifference,
  RecheckDue,
} from "../advice/recheck-types.ts";
import type { KitchenAnalysis } from "../kitchen-analysis-types.ts";
import { problemText } from "../problem.ts";
import { contractVersion, finite, noticeEntry, rounded, writing } from "./contract.ts";
import { markOf, unreadTests } from "./kitchen-page.ts";
import { dateAndClock } from "./time-text.ts";
import { dueText } from "./wording/recheck-due.ts";
import { whatFollows } from "./wording/recheck-follow.ts";
import type { Follow } from "./wording/recheck-follow.ts";
import { recheckSentence } from "./wording/recheck.ts";
import type { RecheckView } from "./wording/recheck.ts";
import { separationCauseText } from "./wording/separation-causes.ts";
import { associationTexts, findingText } from "./wording/separation.ts";

const differenceEntry = (one: RecheckDifference | null) =>
  // null: as many as one likes; the t distribution is a normal one then.
  one === null ? null : { ...one, degreesOfFreedom: finite(one.degreesOfFreedom) };

const testEntry = ({ testId, startedAt }: Recheck["baseline"]) => ({
  test: testId,
  startedAt: dateAndClock(startedAt, 0),
});

const recheckedEntry = (one: Recheck, view: RecheckView) => ({
  ...one.setUp,
  baseline: testEntry(one.baseline),
  newest: testEntry(one.newest),
  thermometer: one.thermometer,
  level: differenceEntry(one.level),
  spread: differenceEntry(one.spread),
  swing: differenceEntry(one.swing),
  drift: differenceEntry(one.drift),
  warmUp: differenceEntry(one.warmUp),
  word: one.word,
  text: recheckSentence(one, view),
  cultures: one.cultures.map(({ now, ...culture }) => ({ ...culture, now: { ...now } })),
  chart: {
    ...one.chart,
    points: one.chart.points.map(({ testId, ...point }) => ({ test: testId, ...point })),
  },
});

const findingEntry = ({ setUp, causes, ...finding }: BatchFinding, view: RecheckView) => ({
  ...setUp,
  ...finding,
  text: findingText({ setUp, causes, ...finding }, view),
  causes: causes.map((cause) => {
    const { what, next } = separationCauseText(cause, writing);
    return { ...cause, text: what, next };
  }),
});

const dueEntry = ({ setUp, ...due }: RecheckDue, { analysis }: RecheckView) => ({
  ...setUp,
  ...due,
  text: dueText({ setUp, ...due }, analysis.kitchen, writing),
});

const followEntry = ({ setUp, culture, text, advice }: Follow) => ({
  ...setUp,
  culture,
  text,
  advice,
});

/** Plain data; numbers are rounded by the contract it becomes part of. */
export const recheckEntry = (analysis: KitchenAnalysis) => {
  const { recheck } = analysis.advice;
  const view: RecheckView = { analysis, recheck, writing };
  return {
    rechecks: recheck.rechecks.map((one) => recheckedEntry(one, view)),
    due: recheck.due.map((one) => dueEntry(one, view)),
    findings: recheck.findings.map((one) => findingEntry(one, view)),
    follows: whatFollows(view).map(followEntry),
    log: associationTexts(recheck, (culture) => markOf(analysis, culture), writing),
  };
};

/** `recheck --json`, contract version 1; ready for JSON.stringify. */
export const toRecheckContract = (analysis: KitchenAnalysis) =>
  rounded({
    holdband: analysis.version,
    contract: contractVersion,
    kind: "recheck" as const,
    recheck: recheckEntry(analysis),
    unreadTests: unreadTests(analysis).map(({ test, problem }) => ({
      id: test.id,
      problem: { code: problem.code, text: problemText(problem) },
    })),
    notices: analysis.notices.map(noticeEntry),
    share: analysis.share,
    confidence: analysis.confidence,
  });
