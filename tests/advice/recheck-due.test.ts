import { describe, expect, it } from "vitest";
import { type DueInput, recheckDue, setUpDue } from "../../src/advice/recheck-due.ts";
import type { DueReason } from "../../src/advice/recheck-types.ts";
import { batch } from "./constructed-batches.ts";
import { step } from "./constructed.ts";

// Constructed kitchens; the rules are those of the project's own design (common practice, no source).

const setUp = { appliance: "cooker", setting: step(38), container: "jars" };
const tested = (date: string | null, more: Partial<typeof setUp> = {}) => ({
  setUp: { ...setUp, ...more },
  date,
});
const known = (more: Partial<DueInput> = {}): DueInput => ({
  batches: [batch({ date: "2026-05-01" })],
  tests: [tested("2026-04-01")],
  appliances: [{ id: "cooker", movedOn: null }],
  containers: [{ id: "jars", changedOn: null }],
  today: "2026-05-02",
  ...more,
});
const reasonsIn = (more: Partial<DueInput>): readonly DueReason[] =>
  recheckDue(known(more)).flatMap(({ reasons }) => reasons);

describe("recheckDue", () => {
  it("asks for nothing where the batches are sound and the test is fresh", () => {
    expect(recheckDue(known())).toEqual([]);
    expect(recheckDue(known({ batches: [], tests: [] }))).toEqual([]);
  });

  it("tells of a set-up with its last test and every reason", () => {
    const batches = [
      batch({ date: "2026-04-10", generation: 1, separated: "a little" }),
      batch({ date: "2026-04-20", generation: 2, separated: "much" }),
      batch({ date: "2026-05-01", generation: 3, separated: "much" }),
    ];
    const appliances = [{ id: "cooker", movedOn: "2026-04-02" }];
    const containers = [{ id: "jars", changedOn: "2026-04-02" }];
    const tests = [tested("2026-03-01"), tested("2026-04-01"), tested("2026-02-01")];
    expect(recheckDue(known({ batches, tests, appliances, containers }))).toEqual([
      {
        setUp,
        lastTested: "2026-04-01",
        reasons: [
          { code: "separated-later", generation: 3, date: "2026-05-01" },
          { code: "two-in-three", separated: 2, of: 2 },
          { code: "appliance-moved", date: "2026-04-02" },
          { code: "container-changed", date: "2026-04-02" },
        ],
        usual: [{ date: "2026-04-10", separated: "a little" }],
      },
    ]);
  });

  it("is silent on the first generation, but tells it when asked", () => {
    const input = known({ batches: [batch({ generation: 1, separated: "much" })] });
    expect(recheckDue(input)).toEqual([]);
    expect(setUpDue(input, setUp)).toMatchObject({
      reasons: [],
      usual: [{ date: "2026-05-01", separated: "much" }],
    });
  });

  it("forgets what lies before a newer test", () => {
    const batches = [
      batch({ date: "2026-04-10", generation: 1, separated: "much" }),
      batch({ date: "2026-04-20", generation: 2, separated: "much" }),
    ];
    const input = known({ batches, tests: [tested("2026-04-21")] });
    expect(setUpDue(input, setUp)).toMatchObject({ reasons: [], usual: [] });
  });

  describe("a set-up never tested", () => {
    it("is due from its first batch on", () => {
      const batches = [batch(), batch({ date: "2026-05-02" })];
      expect(reasonsIn({ batches, tests: [] })).toEqual([{ code: "never-tested", batches: 2 }]);
    });

    it.each([{ setting: step(39) }, { container: "basin" }, { appliance: "box" }])(
      "is one of its own: a test of %j is none of it",
      (other) => {
        const tests = [tested("2026-04-01", other as Partial<typeof setUp>)];
        expect(reasonsIn({ tests })).toEqual([{ code: "never-tested", batches: 1 }]);
      },
    );

    it("is not one whose test has no date", () => {
      expect(reasonsIn({ tests: [tested(null)] })).toEqual([]);
    });
  });

  describe("a season without a test", () => {
    // 2026-02-01 and 92 days are 2026-05-04: 27 left of February, 31, 30, and 4.
    it.each([
      ["2026-05-03", []],
      ["2026-05-04", [{ code: "season", monthsAgo: 3 }]],
      ["2026-07-31", [{ code: "season", monthsAgo: 5 }]],
    ])("tested 2026-02-01, today %s", (today, reasons) => {
      expect(reasonsIn({ tests: [tested("2026-02-01")], today })).toEqual(reasons);
    });

    it("passes over the new year", () => {
      const tests = [tested("2025-11-15")];
      const batches = [batch({ date: "2026-01-10" })];
      // 15 left of November, 31, 31, and 15 of February.
      expect(reasonsIn({ tests, batches, today: "2026-02-14" })).toEqual([]);
      const reasons = reasonsIn({ tests, batches, today: "2026-02-15" });
      expect(reasons).toEqual([{ code: "season", monthsAgo: 3 }]);
    });

    it.each([
      ["2026-05-01", 1],
      ["2026-04-30", 0],
    ])("counts only where it was used in the last season: %s", (date, count) => {
      // 2026-05-01 and 92 days are 2026-08-01: 30 left of May, 30, 31, and 1.
      const input = { batches: [batch({ date })], today: "2026-08-01" };
      expect(reasonsIn({ ...input, tests: [tested("2026-01-01")] })).toHaveLength(count);
    });
  });

  describe("an appliance moved, a container changed", () => {
    it.each([
      ["2026-03-31", 0],
      ["2026-04-01", 0],
      ["2026-04-02", 1],
    ])("on %s, tested 2026-04-01", (date, count) => {
      const moved = reasonsIn({ appliances: [{ id: "cooker", movedOn: date }] });
      expect(moved).toEqual(
        Array.from({ length: count }, () => ({ code: "appliance-moved", date })),
      );
      const changed = reasonsIn({ containers: [{ id: "jars", changedOn: date }] });
      expect(changed).toEqual(
        Array.from({ length: count }, () => ({ code: "container-changed", date })),
      );
    });

    it("another's does not matter", () => {
      const appliances = [{ id: "box", movedOn: "2026-05-01" }];
      const containers = [{ id: "basin", changedOn: "2026-05-01" }];
      expect(reasonsIn({ appliances, containers })).toEqual([]);
    });

    it("after a test of unknown day: it cannot be shown to be newer", () => {
      const appliances = [{ id: "cooker", movedOn: "2020-01-01" }];
      expect(reasonsIn({ appliances, tests: [tested(null)] })).toHaveLength(1);
    });
  });

  describe("which set-ups are in use", () => {
    const appliances = [
      { id: "cooker", movedOn: "2026-05-01" },
      { id: "box", movedOn: "2026-05-01" },
    ];
    const other = tested("2026-04-01", { setting: step(41) });
    const box = tested("2026-04-01", { appliance: "box" });

    it("those of the log; of an appliance the log is silent about, the tested ones", () => {
      const tests = [other, tested("2026-04-01"), box];
      const due = recheckDue(known({ tests, appliances }));
      expect(due.map((one) => one.setUp)).toEqual([setUp, box.setUp]);
    });

    it("each once", () => {
      const batches = [batch(), batch({ setting: step(38.000001) }), batch()];
      expect(recheckDue(known({ batches, tests: [] }))).toMatchObject([
        { reasons: [{ code: "never-tested", batches: 3 }] },
      ]);
    });
  });
});
