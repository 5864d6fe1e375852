import { expect, it } from "vitest";
import { adviceOf, isSettled, standingOf } from "../../src/report/kitchen-standing.ts";
import type { Standing } from "../../src/report/kitchen-standing.ts";
import type { KitchenAnalysis } from "../../src/kitchen-analysis-types.ts";
import { manyCultures, sampleKitchen, untestedKitchen } from "./sample-kitchen.ts";

const of = (id: string, analysis: KitchenAnalysis = sampleKitchen()): Standing =>
  standingOf(
    analysis,
    analysis.kitchen.appliances.find((one) => one.id === id)!,
  );

const ids = (all: readonly { readonly culture: string }[]): string[] =>
  all.map(({ culture }) => culture);

it("puts each culture in one place, whatever the kitchen", () => {
  for (const analysis of [sampleKitchen(), manyCultures(), untestedKitchen()]) {
    for (const appliance of analysis.kitchen.appliances) {
      const { held, change, open, possible, unknown, not } = standingOf(analysis, appliance);
      const placed = [
        ...[...held, ...open, ...possible, ...(change === null ? [] : [change])].map(
          ({ requirement }) => requirement,
        ),
        ...unknown,
        ...not,
      ];
      expect(ids(placed).toSorted()).toEqual(ids(analysis.requirements).toSorted());
    }
  }
});

it("takes what a test proved before anything predicted", () => {
  const { held, open, not } = of("warm-cooker");
  expect(ids(held.map(({ requirement }) => requirement))).toEqual(["yoghurt"]);
  expect(ids(open.map(({ requirement }) => requirement))).toEqual(["warm-blend"]);
  expect(ids(not)).toEqual(["reuteri"]);
});

type Found = KitchenAnalysis["setUps"][number];

/** What tested set-ups hold of one culture, or of all, they now miss. */
const missing =
  (culture: string | null) =>
  (one: Found): Found => ({
    ...one,
    verdicts: one.verdicts.map((each) =>
      culture === null || each.requirement.culture === culture
        ? Object.assign({}, each, { verdict: "misses" as const })
        : each,
    ),
  });

/** The box's advice as it is, but for what is given of it. */
const boxAdvised = (given: Record<string, object>): KitchenAnalysis => {
  const whole = sampleKitchen();
  const appliances = whole.advice.appliances.map((one) =>
    one.appliance === "box"
      ? { ...one, cultures: one.cultures.map((each) => ({ ...each, ...given[each.culture] })) }
      : one,
  );
  return { ...whole, advice: { ...whole.advice, appliances } };
};

it("chooses one change: not where another appliance is likelier, first what nothing tested holds", () => {
  expect(of("box").change!.requirement.culture).toBe("yoghurt");
  const elsewhere = of("box").possible[0]!.advice.elsewhere;
  expect(elsewhere).not.toBeNull();
  const none = boxAdvised({ yoghurt: { elsewhere } });
  expect(of("box", none).change).toBeNull();
  const both = boxAdvised({ reuteri: { elsewhere: null } });
  expect(of("box", both).change!.requirement.culture).toBe("yoghurt");
  // Nothing tested holds reuteri any more: that comes first, though less likely.
  const unheld = { ...both, setUps: both.setUps.map(missing("reuteri")) };
  expect(of("box", unheld).change!.requirement.culture).toBe("reuteri");
});

it("tells what is only unknown beyond the tests from what an appliance cannot do", () => {
  const best = { best: null, chance: null };
  const advised = boxAdvised({
    "warm-blend": { answer: "unknown", ...best },
    yoghurt: { answer: "cannot", ...best },
  });
  const missed = { ...advised, setUps: advised.setUps.map(missing(null)) };
  const { unknown, not } = of("box", missed);
  expect([ids(unknown), ids(not)]).toEqual([["warm-blend"], ["yoghurt"]]);
});

it("is settled where the advice is to leave a tested set-up that holds as it is", () => {
  const analysis = sampleKitchen();
  const cooker = analysis.kitchen.appliances.find(({ id }) => id === "step-cooker")!;
  const advice = adviceOf(analysis, cooker)!.cultures[0]!;
  const standing = standingOf(analysis, cooker);
  expect(isSettled(standing, advice)).toBe(true);
  expect(isSettled(standing, { ...advice, answer: "may" })).toBe(false);
  expect(isSettled({ ...standing, held: [] }, advice)).toBe(false);
  expect(adviceOf(analysis, { id: "none" })).toBeNull();
});
