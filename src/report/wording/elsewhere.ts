/** The other appliance that is likelier to serve a culture, as a clause. */
import type { CultureAdvice } from "../../advice/advice-types.ts";
import type { KitchenAnalysis } from "../../kitchen-analysis-types.ts";
import type { Writing } from "../writing.ts";
import { probabilityText } from "./probability.ts";
import { theAppliance } from "./set-up-phrases.ts";

interface Context {
  readonly analysis: KitchenAnalysis;
  readonly advice: CultureAdvice;
  readonly writing: Writing;
}

const answerThere = ({ analysis, advice }: Context, appliance: string) =>
  analysis.advice.appliances
    .find((one) => one.appliance === appliance)
    ?.cultures.find(({ culture }) => culture === advice.culture)?.answer;

/** "the adjustable cooker can (> 99 %)", "the circulating bath may (81 %, predicted)"; null where there is none. */
export const elsewhereText = (context: Context): string | null => {
  const { analysis, advice, writing } = context;
  if (advice.elsewhere === null) return null;
  const { appliance, basis, probability } = advice.elsewhere;
  const verb = answerThere(context, appliance) === "can" ? "can" : "may";
  const likely = probabilityText(probability, analysis.confidence, writing.space);
  const untested = basis === "tested" ? "" : ", predicted";
  return `${theAppliance(analysis.kitchen, { appliance })} ${verb} (${likely}${untested})`;
};
