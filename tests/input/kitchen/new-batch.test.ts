import { describe, expect, it } from "vitest";
import { batchShape } from "../../../src/input/kitchen/batch-options.ts";
import { newBatch, takenForBatch } from "../../../src/input/kitchen/new-batch.ts";
import { problemOf, sampleKitchen, today, valueOf } from "../sample-kitchen.ts";

const said = (options: Record<string, string>) =>
  batchShape.parse(Object.fromEntries(Object.entries(options).map(([key, one]) => [key, [one]])));

describe("newBatch", () => {
  it("takes set-up and day that nobody said, and says so", () => {
    const batch = valueOf(
      newBatch(sampleKitchen, said({ culture: "reuteri", milk: "rich" }), today),
    );
    expect(batch.entry).toEqual({
      date: today,
      culture: "reuteri",
      appliance: "step-cooker",
      setting: 38,
      container: "jars",
      milk: "rich",
    });
    expect(batch.taken.map(({ what }) => what)).toEqual(["appliance", "setting", "container"]);
    expect(batch.today).toBe(today);
    expect(Object.keys(batch.entry)[0]).toBe("date");
  });

  it("takes no day where one was said, and no setting where nothing can be set", () => {
    const options = said({ culture: "yoghurt", date: "2026-11-19" });
    const { entry, today: day } = valueOf(newBatch(sampleKitchen, options, today));
    expect(entry).toMatchObject({ date: "2026-11-19", appliance: "warm-cooker" });
    expect(entry).not.toHaveProperty("setting");
    expect(day).toBeNull();
  });

  it("names what is missing and what there is to choose", () => {
    expect(problemOf(newBatch(sampleKitchen, said({}), today))).toMatchObject({
      code: "option-missing",
      facts: { option: "--culture", why: "a batch is of one culture (reuteri, yoghurt)" },
    });
    const other = said({ culture: "reuteri", appliance: "box" });
    expect(problemOf(newBatch(sampleKitchen, other, today))).toMatchObject({
      code: "option-missing",
      facts: { option: "--setting" },
    });
    const none = { ...sampleKitchen, cultures: [], batches: [] };
    expect(JSON.stringify(problemOf(newBatch(none, said({}), today)).facts)).toContain(
      "none is entered yet",
    );
  });
});

describe("takenForBatch", () => {
  it("takes nothing for a culture that is not known yet", () => {
    expect(valueOf(takenForBatch(sampleKitchen, said({ appliance: "box" })))).toMatchObject({
      culture: null,
      taken: [],
      setUp: { appliance: "box" },
    });
    expect(problemOf(takenForBatch(sampleKitchen, said({ culture: "kefir9" }))).code).toBe(
      "not-in-kitchen",
    );
  });
});
