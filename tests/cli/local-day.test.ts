import { describe, expect, it } from "vitest";
import { localDay } from "../../src/cli/local-day.ts";

describe("localDay", () => {
  it("is the day of the machine's own calendar, with two digits each", () => {
    expect(localDay(new Date(2026, 0, 5, 0, 1))).toBe("2026-01-05");
    expect(localDay(new Date(2026, 11, 31, 23, 59))).toBe("2026-12-31");
  });
});
