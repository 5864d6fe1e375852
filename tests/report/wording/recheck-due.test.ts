import { describe, expect, it } from "vitest";
import type { DueReason, RecheckDue } from "../../../src/advice/recheck-types.ts";
import { dueText, usualText } from "../../../src/report/wording/recheck-due.ts";
import { plainWriting, terminalWriting } from "../../../src/report/writing.ts";

// A constructed set-up.
const names = {
  appliances: [
    {
      id: "cooker",
      name: "Adjustable cooker",
      kind: "cooker",
      control: { kind: "steps", low: 30, high: 60, step: 1 },
      thermostat: null,
      movedOn: null,
    },
  ],
  containers: [
    {
      id: "jars",
      name: "Jars",
      stands: "jars in water",
      volume: null,
      count: null,
      changedOn: null,
    },
  ],
} as const;
const due = (reasons: readonly DueReason[], more: Partial<RecheckDue> = {}): RecheckDue => ({
  setUp: { appliance: "cooker", setting: { kind: "step", celsius: 38 }, container: "jars" },
  lastTested: "2026-02-01",
  reasons,
  usual: [],
  ...more,
});
const text = (...reasons: readonly DueReason[]): string =>
  dueText(due(reasons), names, plainWriting("degC")) ?? "";

const later = { code: "separated-later", generation: 3, date: "2026-05-01" } as const;
const twice = { code: "two-in-three", separated: 2, of: 3 } as const;

describe("dueText", () => {
  it("is silent without a reason", () => {
    expect(dueText(due([]), names, plainWriting("degC"))).toBeNull();
  });

  it("names the set-up, what to do, why, and that no source stands behind it", () => {
    expect(text(later)).toBe(
      "Test the adjustable cooker at 38 °C (100.4 °F), jars, once with water before the next batch: whey separated in generation 3, in the batch of 2026-05-01 (common practice, no source).",
    );
    const fahrenheit = dueText(due([later]), names, terminalWriting("degF", true));
    expect(fahrenheit).toContain("at 100.4\u00a0degF (38\u00a0degC), jars");
  });

  it.each<readonly [DueReason, string]>([
    [{ ...later, generation: null }, "in the batch of 2026-05-01, whose generation nobody said"],
    [twice, "separated in 2 of the last 3 batches"],
    [{ ...twice, of: 2 }, "separated in each of the last 2 batches"],
    [{ code: "never-tested", batches: 1 }, "a batch was made in it, and no water test of it"],
    [{ code: "never-tested", batches: 4 }, "4 batches were made in it"],
    [{ code: "season", monthsAgo: 5 }, "its last test, of 2026-02-01, is 5 months old"],
    [
      { code: "appliance-moved", date: "2026-03-01" },
      "moved or repaired on 2026-03-01, after its last test, of 2026-02-01",
    ],
    [{ code: "container-changed", date: "2026-03-01" }, "container was changed on 2026-03-01"],
  ])("%j", (reason, says) => expect(text(reason)).toContain(says));

  it("says each thing once, in one sentence", () => {
    const all = text(later, twice, twice, { code: "season", monthsAgo: 5 });
    expect(all).toContain("batch: whey separated in 2 of the last 3 batches; its last test");
    expect(all).not.toContain("generation 3");
    expect(all.match(/whey/g)).toHaveLength(1);
  });
});

describe("the last test", () => {
  const season = { code: "season", monthsAgo: 5 } as const;
  const moved = { code: "appliance-moved", date: "2026-03-01" } as const;
  const changed = { code: "container-changed", date: "2026-03-02" } as const;

  it.each([[[season, moved, changed]], [[moved, changed]], [[changed]], [[season, changed]]])(
    "is named once, %#",
    (reasons) => expect(text(...reasons).match(/2026-02-01/g)).toHaveLength(1),
  );

  it("is not named where its day is not known", () => {
    const unknown = dueText(due([moved], { lastTested: null }), names, plainWriting("degC"));
    expect(unknown).toContain("moved or repaired on 2026-03-01 (common");
  });
});

describe("usualText", () => {
  it("tells it from what is a reason", () => {
    expect(usualText({ usual: [] })).toBeNull();
    const usual = [{ date: "2026-05-01", separated: "much" }] as const;
    expect(usualText({ usual })).toContain("first generation of a fresh starter is usual");
  });
});
