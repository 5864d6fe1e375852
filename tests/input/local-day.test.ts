import { describe, expect, it } from "vitest";
import { localDay, notToCome } from "../../src/input/local-day.ts";

describe("localDay", () => {
  it("is the day of the machine's own calendar, with two digits each", () => {
    expect(localDay(new Date(2026, 0, 5, 0, 1))).toBe("2026-01-05");
    expect(localDay(new Date(2026, 11, 31, 23, 59))).toBe("2026-12-31");
  });
});

describe("notToCome", () => {
  const today = "2026-01-05";

  it("takes today and any day before, and refuses tomorrow", () => {
    expect(notToCome("--date", "2026-01-05", today)).toBeNull();
    expect(notToCome("--date", "2025-12-31", today)).toBeNull();
    expect(notToCome("--date", "2026-01-06", today)).toMatchObject({
      ok: false,
      problem: { code: "option-invalid", facts: { option: "--date", found: "2026-01-06" } },
    });
  });
});
