import { describe, expect, it } from "vitest";
import { adviceItemId, kitchenAdvice } from "../../../src/report/sections/kitchen-advice.ts";
import { kitchenAnswers } from "../../../src/report/sections/kitchen-answers.ts";
import { kitchenAssumed } from "../../../src/report/sections/kitchen-assumed.ts";
import { kitchenMatch, pairing } from "../../../src/report/sections/kitchen-match.ts";
import { kitchenNext } from "../../../src/report/sections/kitchen-next.ts";
import { kitchenResponse } from "../../../src/report/sections/kitchen-response.ts";
import { pairingText } from "../../../src/report/wording/matches.ts";
import { markupWriting } from "../../../src/report/writing.ts";
import type { KitchenAnalysis } from "../../../src/kitchen-analysis-types.ts";
import { visibleText } from "../drawing.ts";
import { oneAppliance, sampleKitchen, untestedKitchen } from "../sample-kitchen.ts";

const writing = markupWriting("degC");
const page = (analysis: KitchenAnalysis) => ({ analysis, writing });
const whole = page(sampleKitchen());
const nothing = page({
  ...sampleKitchen(),
  advice: {
    ...sampleKitchen().advice,
    appliances: [],
    match: { places: [], weakest: null, floor: 0.5 },
    next: { tests: [], open: [] },
  },
});

describe("what to use, and what to change", () => {
  const html = kitchenAdvice(whole)!.html;
  const items = html.match(/<li[\s\S]*?<\/li>/g)!.map(visibleText);

  it("has a sentence for each appliance and culture that the first answers leave open", () => {
    // Fifteen in all; of those, six hold as tested and are said in full at the head.
    expect(items.length).toBe(9);
    expect(items[0]).toMatch(/^Cannot Low long-hold milk culture The cooker with one warm program/);
    for (const item of items) expect(item).toMatch(/^(?:Can|May|Cannot|Unknown) /);
  });

  it("tells what was tested from what is predicted, in the word and in its looks", () => {
    const predicted = whole.analysis.advice.appliances.flatMap(({ cultures }) =>
      cultures
        .filter(({ answer, best }) => answer !== "can" || best!.basis !== "tested")
        .map(({ answer, best }) => /^(?:can|may)$/.test(answer) && best!.basis !== "tested"),
    );
    const lists = html.match(/<li[\s\S]*?<\/li>/g)!;
    expect(lists.map((item) => / predicted"/.test(item))).toEqual(predicted);
    expect(items.map((item) => / predicted /.test(item))).toEqual(predicted);
    expect(new Set(predicted).size).toBe(2);
  });

  it("is left out where no culture is kept or nothing was advised", () => {
    expect(kitchenAdvice(nothing)).toBeNull();
    expect(kitchenMatch(nothing)).toBeNull();
    expect(pairing(nothing)).toBeNull();
  });

  it("is where a verdict that does not hold leads to", () => {
    const answers = kitchenAnswers(whole)!.html;
    const id = adviceItemId(whole, "warm-cooker", "reuteri")!;
    expect(html).toContain(`id="${id}"`);
    const cards = answers.match(/<section class="answer [\s\S]*?<\/section>/g)!;
    expect(cards[0]).toContain(`href="#${id}"`);
    for (const card of cards) {
      expect(card.includes('class="answer holds"')).toBe(!card.includes('href="#advice-'));
    }
  });
});

describe("where each culture goes", () => {
  it("names appliance, setting, container, chance and what that rests on", () => {
    const text = visibleText(kitchenMatch(whole)!.html);
    expect(text).toContain("What to use if all run at the same time, one appliance each");
    expect(text).toContain("Adjustable cooker , 38 °C (100.4 °F), Jars in water");
    expect(text).toContain("96 % tested");
    expect(text).toContain(
      "None is put where it is less than 50 % likely to hold. What is predicted was not tested",
    );
  });

  it("says in a sentence which appliance is for which culture, and what must be changed first", () => {
    expect(visibleText(pairing(whole)!.html)).toMatch(
      /^All at the same time: Low long-hold milk culture in the adjustable cooker ?;/,
    );
    const [place] = whole.analysis.advice.match.places;
    const { placed } = place!;
    const candidate = { ...placed!.candidate, basis: "extrapolated" as const };
    const changed = { ...place!, placed: { ...placed!, candidate } };
    expect(pairingText(whole.analysis, changed)).toBe("in the adjustable cooker, once changed");
    expect(pairingText(whole.analysis, { ...place!, placed: null, why: "none-left" })).toBe(
      "no place: the appliances that could hold it are taken",
    );
  });

  it("says why a culture has no place", () => {
    const text = visibleText(kitchenMatch(page(untestedKitchen()))!.html);
    expect(text).toContain("No place: no appliance here is likely enough to hold it");
  });

  it("shares nothing out where there is one appliance", () => {
    expect(kitchenMatch(page(oneAppliance("box")))).toBeNull();
    expect(pairing(page(oneAppliance("box")))).toBeNull();
  });

  it("speaks of one culture as one", () => {
    const analysis = sampleKitchen();
    const one = page({ ...analysis, requirements: analysis.requirements.slice(0, 1) });
    expect(visibleText(kitchenMatch(one)!.html)).not.toContain("same time");
    expect(
      pairing({
        ...one,
        analysis: {
          ...one.analysis,
          advice: {
            ...analysis.advice,
            match: { ...analysis.advice.match, places: analysis.advice.match.places.slice(0, 1) },
          },
        },
      })!.html,
    ).toContain("Likeliest place");
  });
});

describe("what to test next", () => {
  it("has the test worth doing, and for each open verdict what would settle it", () => {
    const html = kitchenNext(whole)!.html;
    expect(visibleText(html)).toContain(
      "Test the warming box at mark 3, jars on the rack, for 36 h",
    );
    expect(html.match(/role="rowheader"/g)!.length).toBe(3);
    expect(html).toContain('href="#set-up-1"');
  });

  it("is left out where nothing is open", () => {
    expect(kitchenNext(nothing)).toBeNull();
  });
});

describe("what each setting should give", () => {
  it("draws each appliance that was tested, twice, and says which were not", async () => {
    const html = (await kitchenResponse(whole))!.html;
    expect(html.match(/<figure>/g)!.length).toBe(4);
    expect(html.match(/<svg /g)!.length).toBe(8);
    expect(visibleText(html)).toContain("nothing of it was tested: Cupboard over the stove.");
    expect(visibleText((await kitchenResponse(page(oneAppliance("box"))))!.html)).not.toContain(
      "Not drawn",
    );
  });

  it("is left out where nothing was tested", async () => {
    expect(await kitchenResponse(page(untestedKitchen()))).toBeNull();
  });
});

describe("what was assumed", () => {
  it("states every figure before and after the tests, for each appliance and container", () => {
    const html = kitchenAssumed(whole)!.html;
    expect(html.match(/<caption>/g)!.length).toBe(6);
    const { appliances } = whole.analysis.advice;
    const terms = appliances.reduce((so, one) => so + one.terms.length + 1, 0);
    expect(html.match(/role="rowheader"/g)!.length).toBe(terms + 3);
    const text = visibleText(html);
    expect(text).toContain("Assumed beforehand After 3 tests");
    expect(text).toContain("Assumed beforehand No test yet");
    expect(text).toContain("25.0 ± 1.2 min, measured");
    // A Student's t of 8 degrees of freedom: sqrt(8 / 6) = 1.155 (variance nu / (nu - 2), Gelman et al. 2013, table A.1).
    expect(text).toContain(
      "its middle ± its scale. The standard deviation is larger than the scale",
    );
  });

  it("is left out where there is no advice", () => {
    expect(kitchenAssumed(nothing)).toBeNull();
  });
});
