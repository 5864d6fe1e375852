import { describe, expect, it } from "vitest";
import { wallNow } from "../../src/input/wall-now.ts";

describe("wallNow", () => {
  it("is the local clock read as if in UTC, whatever the zone", () => {
    const now = new Date(2026, 9, 4, 8, 5, 30);
    expect(new Date(wallNow(now) * 1000).toISOString()).toBe("2026-10-04T08:05:30.000Z");
  });
});
