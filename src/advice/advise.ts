import type { AdviceInput } from "./advice-input.ts";
import type { CultureAdvice, KitchenAdvice } from "./advice-types.ts";
import { adviseAppliance, applianceAdvice, type AdvisedAppliance } from "./appliance-advice.ts";
import { leastProbability } from "./choose.ts";
import { containersOf } from "./container-knowledge.ts";
import { matchCultures } from "./match.ts";
import { nextTests } from "./next-tests.ts";
import { openVerdicts } from "./open-verdicts.ts";
import { recheckAdvice } from "./recheck-advice.ts";
import { sinceMoves } from "./since-moves.ts";

/**
 * The advice on a kitchen: what each appliance can do for each culture and with
 * which set-up, which appliance for which culture when all run at once, and the
 * water test worth doing next.
 */
export const adviseKitchen = (whole: AdviceInput): KitchenAdvice => {
  const recheck = recheckAdvice(whole);
  const input = sinceMoves(whole, recheck.rechecks);
  const advised = input.kitchen.appliances
    .filter(({ id }) => input.appliance === null || id === input.appliance)
    .map((appliance) => adviseAppliance(appliance, input));
  return {
    appliances: advised.map((one) =>
      applianceAdvice(one, (at) => likeliestOther(advised, one, at)),
    ),
    containers: containersOf(input),
    match: matchCultures({
      requirements: input.requirements,
      appliances: advised.map(({ known, choices }) => ({
        appliance: known.response.appliance.id,
        best: choices.map((choice) => choice && { candidate: choice.best, chance: choice.chance }),
      })),
      floor: leastProbability,
    }),
    next: { tests: nextTests(advised, input), open: openVerdicts(input) },
    recheck,
    floor: leastProbability,
  };
};

/** The other appliance likeliest to serve a culture, tested set-ups first; null where none reaches the floor. */
const likeliestOther = (
  advised: readonly AdvisedAppliance[],
  own: AdvisedAppliance,
  at: number,
): CultureAdvice["elsewhere"] => {
  const others = advised.flatMap((one) => {
    const choice = one === own ? null : one.choices[at]!;
    if (choice === null || choice.chance.probability < leastProbability) return [];
    const { setUp, basis } = choice.best;
    const { probability, verdict } = choice.chance;
    const appliance = one.known.response.appliance.id;
    const proven = Number(basis === "tested" && verdict === "holds");
    return [{ appliance, setUp, basis, probability, proven }];
  });
  const [best] = others.toSorted((a, b) => b.proven - a.proven || b.probability - a.probability);
  if (best === undefined) return null;
  const { proven: _, ...found } = best;
  return found;
};
