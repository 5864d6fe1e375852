/** An appliance's response in words: for those who cannot see its chart, and what it was assumed to be. */
import type { ApplianceAdvice } from "../../advice/advice-types.ts";
import type { ResponseCurve, ResponseTerm } from "../../advice/response-types.ts";
import type { KitchenAnalysis } from "../../kitchen-analysis-types.ts";
import { roundTogether } from "../number-format.ts";
import {
  askedRange,
  differenceWithUncertainty,
  expectedTemperature,
  temperatureWithUncertainty,
} from "../temperature-text.ts";
import { plusMinus } from "../writing.ts";
import type { Writing } from "../writing.ts";
import { shortCultureName } from "./cultures.ts";
import { containerName, settingText } from "./set-ups.ts";
import { atSetting } from "./set-up-phrases.ts";

type Kitchen = KitchenAnalysis["kitchen"];
type Point = ResponseCurve["points"][number];

const pointText = ({ setting, level }: Point, writing: Writing): string => {
  const at = atSetting(setting, writing);
  const mean = expectedTemperature(writing, level.mean, level.standardUncertainty);
  return at === null ? mean : `${mean} ${at}`;
};

/** "Jars in water from 36.4 °C (...) at 36 °C (...) to 45.1 °C (...) at 45 °C (...)". */
const curveText = ({ container, points }: ResponseCurve, kitchen: Kitchen, writing: Writing) => {
  const name = containerName(kitchen, { container });
  const [first] = points;
  const last = points.at(-1);
  if (first === undefined || last === undefined) return name;
  return first === last
    ? `${name} ${pointText(first, writing)}`
    : `${name} from ${pointText(first, writing)} to ${pointText(last, writing)}`;
};

/** One sentence on what the chart shows. */
export const responseDescription = (
  advice: ApplianceAdvice,
  { kitchen, requirements }: Pick<KitchenAnalysis, "kitchen" | "requirements">,
  writing: Writing,
): string => {
  const curves = advice.curves.map((curve) => curveText(curve, kitchen, writing)).join("; ");
  const windows = requirements
    .map((asked) => `${shortCultureName(asked)} ${askedRange(writing, asked.low, asked.high)}`)
    .join(", ");
  const tests = advice.tests.length;
  return `Expected temperature of the hold over the settings: ${curves}. Windows: ${windows}. ${tests} tested ${tests === 1 ? "point" : "points"}.`;
};

type Of<Code extends ResponseTerm["term"]["code"]> = Extract<
  ResponseTerm["term"],
  { readonly code: Code }
>;

const levelName = ({ at, setting }: Of<"level">, writing: Writing): string => {
  if (at !== null) {
    return `Hold at ${settingText({ kind: "step", celsius: at }, writing) ?? ""}`;
  }
  const where = setting === null ? null : atSetting(setting, writing);
  return where === null ? "Hold" : `Hold ${where}`;
};

/** What a term is, as a table's row says it. */
export const termName = ({ term }: ResponseTerm, kitchen: Kitchen, writing: Writing): string => {
  if (term.code === "level") return `${levelName(term, writing)}, the room as usual`;
  if (term.code === "slope") {
    return term.per === "mark" ? "Change from one mark to the next" : "Change for each degree set";
  }
  if (term.code === "mark") {
    return `How much more, or less, than an even step up to ${settingText(term.setting, writing) ?? ""}`;
  }
  return term.code === "room"
    ? "Change for each degree of the room"
    : `Share lost to the room, ${containerName(kitchen, term)}`;
};

type Figure = ResponseTerm["prior"];

const plain = ({ mean, standardDeviation: scale }: Figure, writing: Writing): string => {
  const rounded = roundTogether(mean, scale);
  return [rounded.value, plusMinus(writing), rounded.uncertainty].join(writing.space);
};

const percentPair = ({ mean, standardDeviation: scale }: Figure, writing: Writing): string =>
  `${plain({ mean: mean * 100, standardDeviation: scale * 100 }, writing)}${writing.space}%`;

/** The middle of a term's Student's t with its scale, in the term's own unit. */
export const termFigure = (
  { term }: Pick<ResponseTerm, "term">,
  figure: Figure,
  writing: Writing,
): string => {
  const { mean, standardDeviation: scale } = figure;
  if (term.code === "level") return temperatureWithUncertainty(writing, mean, scale);
  if (term.code === "share-lost") return percentPair(figure, writing);
  if (term.code === "mark" || (term.code === "slope" && term.per === "mark")) {
    return differenceWithUncertainty(writing, mean, scale);
  }
  return plain(figure, writing);
};
