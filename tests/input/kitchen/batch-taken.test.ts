import { describe, expect, it } from "vitest";
import { takenCulture, takenSetUp, typedSetting } from "../../../src/input/kitchen/batch-taken.ts";
import type { SaidSetUp } from "../../../src/input/set-up.ts";
import { findCulture } from "../../../src/culture/catalogue.ts";
import type { Batch, Kitchen } from "../../../src/kitchen/kitchen.ts";
import { problemText } from "../../../src/problem.ts";
import { batch } from "../../advice/constructed-batches.ts";
import { basin, cooker, jars, mark, step } from "../../advice/constructed.ts";
import { kitchenOf } from "../../kitchen-analysis/small-kitchen.ts";

// Constructed kitchens.
const box = cooker({ id: "box", control: { kind: "marks", marks: ["1", "2"] } });
const kitchen = (more: Partial<Kitchen> = {}): Kitchen =>
  kitchenOf([], { appliances: [cooker(), box], containers: [jars, basin], ...more });
const log: readonly Batch[] = [
  batch({ culture: "low", date: "2026-05-09", setting: step(39) }),
  batch({ culture: "low", date: "2026-05-01", setting: step(38), container: "basin" }),
  batch({ culture: "low", date: "2026-05-05", appliance: "box", setting: mark("2") }),
  batch({ culture: "other", date: "2026-05-20", appliance: "box", setting: mark("1") }),
];
const filled = (said: SaidSetUp, more: Partial<Kitchen> = { batches: log }) =>
  takenSetUp(kitchen(more), "low", said);

describe("takenSetUp", () => {
  it("takes all of the last batch of that culture, by its day", () => {
    const from = { date: "2026-05-09" };
    expect(filled({})).toMatchObject({
      setUp: { appliance: "cooker", setting: "39", container: "jars" },
      taken: [
        { what: "appliance", value: "cooker", from },
        { what: "setting", value: "39", from },
        { what: "container", value: "jars", from },
      ],
    });
  });

  it("of one day the one that stands later in the log", () => {
    const batches = [...log, batch({ culture: "low", date: "2026-05-09", setting: step(40) })];
    expect(filled({}, { batches }).setUp.setting).toBe("40");
  });

  it("takes setting and container of the last batch in the appliance that was said", () => {
    expect(filled({ appliance: "box" })).toMatchObject({
      setUp: { appliance: "box", setting: "2", container: "jars" },
      taken: [{ from: { date: "2026-05-05" } }, { from: { date: "2026-05-05" } }],
    });
  });

  it("leaves what was said", () => {
    const { setUp, taken } = filled({ setting: "41", container: "basin" });
    expect(setUp).toEqual({ appliance: "cooker", setting: "41", container: "basin" });
    expect(taken).toHaveLength(1);
  });

  it("takes the only one there is, and guesses nothing else", () => {
    const one = { appliances: [cooker()], containers: [jars] };
    expect(filled({}, one)).toEqual({
      setUp: { appliance: "cooker", container: "jars" },
      taken: [
        { what: "appliance", value: "cooker", from: null },
        { what: "container", value: "jars", from: null },
      ],
    });
    expect(filled({}, {})).toEqual({ setUp: {}, taken: [] });
    expect(filled({ appliance: "nowhere" })).toEqual({
      setUp: { appliance: "nowhere" },
      taken: [],
    });
  });
});

describe("takenCulture", () => {
  it("is the only one", () => {
    const second = findCulture("reuteri");
    if (!second.ok) throw new Error(problemText(second.problem));
    const [first] = kitchen().cultures;
    expect(takenCulture(kitchen())).toMatchObject({ what: "culture", value: first?.id });
    expect(takenCulture(kitchen({ cultures: [first!, second.value] }))).toBeNull();
    expect(takenCulture(kitchen({ cultures: [] }))).toBeNull();
  });
});

describe("typedSetting", () => {
  it("is what one would type again", () => {
    expect(typedSetting(step(38.5), "degC")).toBe("38.5");
    // 100 degF is (100 - 32) / 1.8 degC, by definition of the scale.
    expect(typedSetting(step((100 - 32) / 1.8), "degF")).toBe("100F");
    expect(typedSetting(mark("2"), "degC")).toBe("2");
    expect(typedSetting({ kind: "program", program: "warm" }, "degC")).toBe("warm");
    expect(typedSetting({ kind: "fixed" }, "degC")).toBeNull();
  });
});
