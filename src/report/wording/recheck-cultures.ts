/** Each culture in the light of a recheck, in a line. */
import type { Recheck, RecheckCulture } from "../../advice/recheck-types.ts";
import type { VerdictWord } from "../../culture/verdict-types.ts";
import { difference } from "../temperature-text.ts";
import { probabilityText } from "./probability.ts";
import type { RecheckView } from "./recheck.ts";

const verdicts: Readonly<Record<VerdictWord, string>> = {
  holds: "holds",
  misses: "misses",
  unproven: "is unproven",
};

type Now = RecheckCulture["now"];

/** "the newest test holds (97 %)". */
const nowText = ({ verdict, probability }: Now, { analysis, writing }: RecheckView): string =>
  `the newest test ${verdicts[verdict]} (${probabilityText(probability, analysis.confidence, writing.space)})`;

const against: Readonly<Record<RecheckCulture["word"], (spare: string) => string>> = {
  moved: (spare) => `moved; it had ${spare} to spare`,
  "not moved": (spare) => `not moved by as much as half of the ${spare} it had to spare`,
  "cannot tell": (spare) => `cannot tell whether half of the ${spare} it had to spare is gone`,
};

/** After the culture's name: "not moved by as much as half of the 0.9 °C (1.6 °F) it had to spare; the newest test ...". */
export const recheckCultureText = (culture: RecheckCulture, view: RecheckView): string => {
  const { margin, word, now } = culture;
  const then =
    margin > 0
      ? against[word](difference(view.writing, margin))
      : "its window was not kept at the baseline either";
  return `${then}; ${nowText(now, view)}`;
};

/** Of no use to that culture, then or now: all such fit into one line. */
export const isFarOff = ({ margin, now }: RecheckCulture): boolean =>
  margin <= 0 && now.verdict === "misses";

/** Those worth a line of their own. */
export const nearCultures = ({ cultures }: Recheck): readonly RecheckCulture[] =>
  cultures.filter((one) => !isFarOff(one));
