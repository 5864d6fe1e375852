/** Where a culture goes when all run at the same time, one appliance each. */
import type { Candidate, Chance, MatchPlace } from "../../advice/advice-types.ts";
import type { Basis } from "../../advice/response-types.ts";
import type { KitchenAnalysis } from "../../kitchen-analysis-types.ts";
import type { Writing } from "../writing.ts";
import { sentence } from "./everyday-names.ts";
import { likelyText } from "./expected.ts";
import { theAppliance } from "./set-up-phrases.ts";
import { fullSetUpText } from "./set-ups.ts";

/** What a candidate rests on, in a few words. */
export const basisNames: Readonly<Record<Basis, string>> = {
  tested: "tested",
  interpolated: "predicted, between what was tested",
  extrapolated: "predicted, beyond what was tested",
  assumed: "only assumed, nothing of it tested",
};

const whyNot: Readonly<Record<NonNullable<MatchPlace["why"]>, string>> = {
  "none-can": "no place: no appliance here is likely enough to hold it",
  "none-left": "no place: the appliances that could hold it are taken",
  "nothing-known": "no place: nothing is known yet of any appliance for it",
};

/** "in the adjustable cooker", "in the circulating bath, once changed", or why there is no place. */
export const pairingText = ({ kitchen }: KitchenAnalysis, { placed, why }: MatchPlace): string => {
  if (placed === null) return whyNot[why ?? "none-can"];
  const where = `in ${theAppliance(kitchen, placed)}`;
  return placed.candidate.basis === "tested" ? where : `${where}, once changed`;
};

const spot = (
  { candidate, chance }: { readonly candidate: Candidate; readonly chance: Chance },
  { kitchen, confidence }: KitchenAnalysis,
  writing: Writing,
): string =>
  `${fullSetUpText(kitchen, candidate.setUp, writing)}, ${likelyText(chance, confidence, writing)}`;

/** Set-up, probability and what that rests on, or why there is no place; the culture stands beside it. */
export const matchPlaceText = (
  analysis: KitchenAnalysis,
  { placed, why, alone }: MatchPlace,
  writing: Writing,
): string => {
  if (placed !== null) {
    return `${spot(placed, analysis, writing)} (${basisNames[placed.candidate.basis]}).`;
  }
  const reason = whyNot[why ?? "none-can"];
  if (alone === null) return sentence(reason);
  const best = why === "none-left" ? "by itself it could go into" : "likeliest is";
  return sentence(`${reason}; ${best} ${spot(alone, analysis, writing)}`);
};
