/** Growth by a model in words: never as a claim about safety, and never surer than an estimate. */
import type {
  CultureGrowth,
  OrganismGrowth,
  UnmodelledOrganism,
} from "../../culture/culture-growth.ts";
import type { SourcedTemperature } from "../../culture/culture.ts";
import { percent, percentInWords } from "../number-format.ts";
import { askedRange, askedTemperature } from "../temperature-text.ts";
import { duration } from "../time-text.ts";
import type { Writing } from "../writing.ts";
import { sourceText } from "./figure-sources.ts";

/** Before each night's lines; the limits' name is a way to the method, and `nightCaution` follows it. */
export const nightLead = (holdHours: number, { space }: Writing): string =>
  `Share of the fastest rate over the hold, and what its ${duration(holdHours * 60, space)} are worth at the optimum. A model’s estimate from `;
export const nightLimits = "published limits";
export const nightCaution =
  "; strains differ by several degrees. No word on safety or harmful germs.";

/** "S. thermophilus", as one writes it once the name was given in full. */
export const shortOrganism = (name: string): string => name.replace(/^([A-Z])[a-z]+ /, "$1. ");

/** Less than half of one per cent is not worth a word. */
const slight = 0.005;

/** "warm-up cost 12 %"; null where it hardly did. */
const costText = (what: string, lost: number | null, space: string): string | null => {
  if (lost === null || Math.abs(lost) < slight) return null;
  if (lost < -1) return `${what} gave more than the hold`;
  return `${what} ${lost < 0 ? "gained" : "cost"} ${percentInWords(Math.abs(lost), space)}`;
};

/** "97 %, 10 h 15 min; warm-up cost 12 %; disturbances cost 1 %". */
export const organismText = (growth: OrganismGrowth, { space }: Writing): string => {
  if (growth.meanRate === 0) return "none; the hold lay outside its limits";
  const parts = [
    `${percentInWords(growth.meanRate, space)}, ${duration(growth.equivalentHours * 60, space)}`,
    costText("warm-up", growth.lostToWarmUp, space),
    costText("disturbances", growth.lostToDisturbances, space),
  ];
  return parts.filter((text) => text !== null).join("; ");
};

/** "yoghurt: 97 to 99 % of the fastest, by a model", for a line of a terminal; null without figures. */
export const cultureLine = (growth: CultureGrowth, { space }: Writing): string | null => {
  const { culture, organisms, notModelled } = growth;
  const [first, ...rest] = organisms.map(({ meanRate }) => meanRate).toSorted((a, b) => a - b);
  if (first === undefined) return null;
  const all = organisms.length + notModelled.length;
  const whose = notModelled.length === 0 ? "" : `, ${organisms.length} of ${all} organisms`;
  const [low, high] = [percent(first, space), percent(rest.at(-1) ?? first, space)];
  // "87 to 99 %", but "< 1 % to 50 %".
  const bare = /^\d/.test(low) && /^\d/.test(high) ? low.replace(/\D+$/, "") : low;
  const rates = low === high ? low : `${bare} to ${high}`;
  return `${culture}${whose}: ${rates} of the fastest, by a model`;
};

/** Where its work prints a range, which one. */
const middleText = ({ source }: SourcedTemperature, writing: Writing): string => {
  const range = source.kind === "published" ? /^(\d+) to (\d+)$/.exec(source.printed) : null;
  return range === null
    ? ""
    : `, the middle of ${askedRange(writing, Number(range[1]), Number(range[2]))}`;
};

/** "grows from 20 °C (68 °F), best at 40 °C (104 °F), up to 50 °C (122 °F)"; empty where one is missing. */
export const limitsText = ({ limits }: OrganismGrowth, writing: Writing): string => {
  const { minimum, optimum, maximum } = limits;
  if (minimum === null || optimum === null || maximum === null) return "";
  const figure = (one: SourcedTemperature): string =>
    `${askedTemperature(writing, one.celsius)}${middleText(one, writing)}`;
  return `grows from ${figure(minimum)}; best at ${figure(optimum)}; up to ${figure(maximum)}`;
};

/** Where an organism's limits come from, each source once. */
export const limitsFrom = ({ limits }: OrganismGrowth): string => {
  const known = [limits.minimum, limits.optimum, limits.maximum].filter((one) => one !== null);
  return [...new Set(known.map(({ source }) => sourceText(source)))].join("; ");
};

export const growthMethodText =
  "An organism’s rate, as a share of its fastest, follows from its lowest, best and highest temperature by the cardinal temperature model with inflection (Rosso et al. 1993). Costs are shares of what the hold’s rate would have given from switch-on to its end. It is a model’s estimate without lag, souring or crowding, from published limits; strains differ by several degrees. It is never a safety claim and says nothing of harmful germs.";

const names = (organisms: readonly UnmodelledOrganism[]): string =>
  organisms.map(({ organism }) => organism).join(", ");

/** Whose growth is not estimated, and why; a sentence for each reason. */
export const notModelledTexts = (organisms: readonly UnmodelledOrganism[]): readonly string[] => {
  const unknown = organisms.filter(({ because }) => because === "limit not known");
  const unfit = organisms.filter(({ because }) => because !== "limit not known");
  return [
    ...(unknown.length === 0
      ? []
      : [`Not estimated for ${names(unknown)}: not all of their limits were found published.`]),
    ...(unfit.length === 0
      ? []
      : [`Not estimated for ${names(unfit)}: the published limits do not fit the model.`]),
  ];
};
