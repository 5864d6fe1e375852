import { expect, it } from "vitest";
import type { Batch, Trouble } from "../../../src/kitchen/kitchen.ts";
import { loggedTroubleText } from "../../../src/report/wording/recheck-trouble.ts";
import { spoiltBatchText } from "../../../src/report/wording/spoilt-batch.ts";
import { sampleKitchen } from "../sample-kitchen.ts";
import { setUps } from "../sample-recheck.ts";

const batch = (date: string, trouble: readonly Trouble[], culture = "reuteri"): Batch => ({
  ...setUps.steps,
  date,
  culture,
  milk: null,
  heated: null,
  generation: null,
  starter: null,
  hours: null,
  separated: null,
  sourness: null,
  trouble,
  moved: null,
  notes: null,
});
const say = (batches: readonly Batch[], appliance: string | null = null) => {
  const whole = sampleKitchen();
  return loggedTroubleText({ ...whole, appliance, kitchen: { ...whole.kitchen, batches } });
};

it("names the batches that showed trouble, and says to throw all of them away", () => {
  const text = say([
    batch("2026-03-01", []),
    batch("2026-03-08", ["pink"]),
    batch("2026-03-15", ["fuzzy", "pink"], "own-blend"),
  ]);
  expect(text).toBe(
    `Logged for 2026-03-08 (Low long-hold milk culture), 2026-03-15 (own-blend): ${spoiltBatchText(["pink", "fuzzy"])}`,
  );
  expect(text).toContain("throw all of it away");
});

it("is silent where none is logged, or only for another appliance", () => {
  expect(say([])).toBeNull();
  expect(say([batch("2026-03-01", [])])).toBeNull();
  expect(say([batch("2026-03-01", ["orange"])], "bath")).toBeNull();
});
