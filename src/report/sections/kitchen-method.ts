/** How the kitchen's answers were reached: what was assumed, what is not known, and by which method. */
import type { KitchenAnalysis } from "../../kitchen-analysis-types.ts";
import { counted, longestProbe, readTests } from "../kitchen-page.ts";
import type { KitchenPage } from "../kitchen-page.ts";
import { markup } from "../markup.ts";
import type { Markup } from "../markup.ts";
import { tolerance, uncertainty } from "../temperature-text.ts";
import { kitchenMethodSteps } from "../wording/kitchen-method.ts";
import { endedHold, measured, roomReach, untold } from "../wording/method.ts";
import { growthMethod } from "./growth-method.ts";
import { kitchenAssumed } from "./kitchen-assumed.ts";
import { fellAway, list, promise, roomLine, stepList, verdictWords } from "./method.ts";

const allProbes = (analysis: KitchenAnalysis) =>
  readTests(analysis).flatMap((test) => test.analysis.probes);

const thermometerLine = ({ analysis, writing }: KitchenPage): string | null => {
  const assumed = allProbes(analysis).filter(({ thermometer }) => thermometer.from === "assumed");
  const [first] = assumed;
  if (first === undefined) return null;
  const { accuracy, standardUncertainty } = first.thermometer;
  const size =
    accuracy === null ? uncertainty(writing, standardUncertainty) : tolerance(writing, accuracy);
  return `Nothing is said about the thermometer of ${counted(assumed.length, "probe")}: it was assumed good to ${size}.`;
};

const runToRunLine = ({ analysis, writing }: KitchenPage): string | null => {
  const assumed = analysis.setUps.filter(({ runToRun }) => runToRun.from === "assumed");
  const [first] = assumed;
  if (first === undefined) return null;
  const whose =
    assumed.length === analysis.setUps.length
      ? "for every set-up"
      : `for ${counted(assumed.length, "set-up")}`;
  return `How much one run differs from the next cannot be seen in a single test: a standard uncertainty of ${uncertainty(writing, first.runToRun.value)} was assumed ${whose}.`;
};

/** Each way the room was taken, once. */
const roomLines = ({ analysis, writing }: KitchenPage): readonly string[] => [
  ...new Set(readTests(analysis).map((test) => roomLine(test.analysis, writing))),
];

export const kitchenMethod = (page: KitchenPage): Markup => {
  const { analysis, writing } = page;
  const probes = allProbes(analysis);
  // A short test of a set-up says nothing where a longer one stands beside it.
  const longest = analysis.setUps.flatMap((setUp) => longestProbe(analysis, setUp) ?? []);
  const assumed = [
    thermometerLine(page),
    runToRunLine(page),
    ...roomLines(page),
    roomReach,
    fellAway({ probes }) ? endedHold : null,
  ];
  return markup`
<section aria-labelledby="method">
<h2 id="method">How this was worked out</h2>
<h3>Measured</h3>
<p>${measured}</p>
<h3>Assumed</h3>
${list(assumed)}
${kitchenAssumed(page)}
<h3>Not known</h3>
${list([promise({ probes: longest }, writing), ...untold])}
<h3>Words and method</h3>
${verdictWords(analysis, writing)}
${stepList(kitchenMethodSteps)}${growthMethod(probes, writing)}
</section>`;
};
