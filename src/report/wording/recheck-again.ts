/** Where nothing was tested twice: which set-up to test again, and how. */
import type { KitchenAnalysis } from "../../kitchen-analysis-types.ts";
import type { SetUp } from "../../kitchen/kitchen.ts";
import type { RecheckView } from "./recheck.ts";
import { theSetUp } from "./set-up-phrases.ts";
import { setUpKey } from "./set-ups.ts";

/** Of those tested: one that is due, else the one most batches were made in, else that of the newest test. */
const worthAgain = ({ analysis, recheck }: RecheckView): SetUp | null => {
  const tested = analysis.setUps.map(({ setUp }) => setUp);
  const isTested = (one: SetUp): boolean => tested.some((each) => setUpKey(each) === setUpKey(one));
  const due = recheck.due.map(({ setUp }) => setUp).find(isTested);
  const used = recheck.findings
    .filter(({ setUp }) => isTested(setUp))
    .toSorted((a, b) => b.batches - a.batches)[0]?.setUp;
  return due ?? used ?? newestSetUp(analysis) ?? tested[0] ?? null;
};

const newestSetUp = ({ tests, setUps }: KitchenAnalysis): SetUp | null => {
  const dated = tests.filter(({ startedAt, problem }) => startedAt !== null && problem === null);
  const newest = dated.at(-1)?.test;
  return newest === undefined
    ? null
    : (setUps.find(({ setUp }) => setUpKey(setUp) === setUpKey(newest))?.setUp ?? null);
};

const nothingYet =
  "No water test yet, so there is nothing to compare with. Test the set-up you use most once, with water (holdband next says which and how): that night is its baseline.";

/** Two sentences or three. */
export const testAgainText = (view: RecheckView): readonly string[] => {
  const setUp = worthAgain(view);
  if (setUp === null) return [nothingYet];
  const name = theSetUp(view.analysis.kitchen, setUp, view.writing);
  return [
    "No set-up was tested twice yet, so nothing can be compared with its baseline.",
    `Test ${name}, again: same setting, container, amount and place, with the same thermometer if you can, since what it is off by then cancels.`,
    "Then add the night as before (holdband add), and ask again. Which test tells most about what is still open, is another question: holdband next.",
  ];
};
