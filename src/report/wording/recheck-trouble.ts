/** Trouble in the log of batches: said before anything about temperatures. */
import type { KitchenAnalysis } from "../../kitchen-analysis-types.ts";
import { shortCultureName } from "./cultures.ts";
import { spoiltBatchText } from "./spoilt-batch.ts";

/** "In the batches of 2026-03-20 (Yoghurt): Pink colour: throw all of it away ..."; null where none was logged. */
export const loggedTroubleText = ({
  kitchen,
  appliance,
  requirements,
}: Pick<KitchenAnalysis, "kitchen" | "appliance" | "requirements">): string | null => {
  const troubled = kitchen.batches.filter(
    (batch) => batch.trouble.length > 0 && (appliance === null || batch.appliance === appliance),
  );
  const advice = spoiltBatchText([...new Set(troubled.flatMap(({ trouble }) => trouble))]);
  if (advice === null) return null;
  const named = troubled.map(({ date, culture }) => {
    const asked = requirements.find((one) => one.culture === culture);
    return `${date} (${asked === undefined ? culture : shortCultureName(asked)})`;
  });
  return `Logged for ${[...new Set(named)].join(", ")}: ${advice}`;
};
