/** A verdict that is open: the doubt that keeps it so, and what lessens that. */
import type { OpenVerdict } from "../../advice/next-types.ts";
import type { UncertaintySource } from "../../culture/verdict-types.ts";
import type { KitchenAnalysis } from "../../kitchen-analysis-types.ts";
import { percent } from "../number-format.ts";
import { uncertainty } from "../temperature-text.ts";
import { duration } from "../time-text.ts";
import type { Writing } from "../writing.ts";
import { provenanceNames, sourceNames } from "./names.ts";
import { probabilityText } from "./probability.ts";

/** What lessens a doubt, as something to do. */
const remedies: Readonly<Record<UncertaintySource, string>> = {
  thermometer: "check the thermometer in melting ice and boiling water, or use a better one",
  resolution: "test with a logger that shows tenths of a degree or finer",
  "mean of the hold": "test for longer, with more readings",
  "run to run": "repeat the same test on another night",
  "hours not tested": "test for the culture’s whole time, day and night",
  drift: "test for longer, until the drift levels off or leaves the window",
};

/** For a thermometer that was checked already. */
const checkedAgain = "check the thermometer again, with several readings each, or use a better one";

export const remedyText = ({ doubt, heatEnded }: OpenVerdict): string => {
  if (heatEnded !== null) return "leave it on for the culture’s whole time and test that";
  if (doubt === null) return "test again overnight";
  return doubt.source === "thermometer" && doubt.from === "measured"
    ? checkedAgain
    : remedies[doubt.source];
};

/** "one run to the next, 0.3 °C (0.5 °F), assumed: 61 % of the doubt". */
export const doubtText = ({ doubt, heatEnded }: OpenVerdict, writing: Writing): string => {
  if (heatEnded !== null) {
    const [ended, needed] = [heatEnded.afterHours, heatEnded.needed].map((hours) =>
      duration(hours * 60, writing.space),
    );
    return `its heat ended after ${ended} of ${needed}: by itself, or by you`;
  }
  if (doubt === null) return "no steady hold was seen";
  const { source, standardUncertainty, from, share } = doubt;
  return `${sourceNames[source]}, ${uncertainty(writing, standardUncertainty)}, ${provenanceNames[from]}: ${percent(share, writing.space)} of the doubt`;
};

/** "holds (97 %)"; null where there is no doubt to take away. */
export const withoutText = (
  { without }: OpenVerdict,
  { confidence }: Pick<KitchenAnalysis, "confidence">,
  { space }: Writing,
): string | null =>
  without === null
    ? null
    : `${without.verdict === "unproven" ? "still " : ""}${without.verdict} (${probabilityText(without.probability, confidence, space)})`;

/** The dominant doubt, what the verdict would be without it, and what to do (one more test may not settle it); set-up and culture stand beside it. */
export const openVerdictText = (
  analysis: Pick<KitchenAnalysis, "confidence">,
  open: OpenVerdict,
  writing: Writing,
): string => {
  const now = probabilityText(open.probability, analysis.confidence, writing.space);
  const without = withoutText(open, analysis, writing);
  const then = without === null ? "" : `; without that doubt: ${without}`;
  const aim = open.doubt === null ? "To settle it" : "To lessen that doubt";
  return `${now} likely to hold; ${doubtText(open, writing)}${then}. ${aim}: ${remedyText(open)}.`;
};
