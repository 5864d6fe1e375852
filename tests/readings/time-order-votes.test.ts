import { describe, expect, it } from "vitest";
import { createOrderVotes, isDateInAnyOrder } from "../../src/readings/time-order-votes.ts";

const date = (first: number, second: number, shortYear = false) => ({
  first,
  second,
  year: 2026,
  shortYear,
});

describe("createOrderVotes", () => {
  it("leaves the orders in which every date exists", () => {
    const votes = createOrderVotes(undefined);
    expect(votes.take(date(3, 4, true))).toBe(true);
    expect(votes.candidates()).toEqual(["day-first", "month-first", "year-first"]);
    expect(votes.take(date(3, 4))).toBe(true);
    expect(votes.candidates()).toEqual(["day-first", "month-first"]);
    expect(votes.take(date(3, 25))).toBe(true);
    expect(votes.candidates()).toEqual(["month-first"]);
  });
  it("turns away a date against all before it", () => {
    const votes = createOrderVotes(undefined);
    votes.take(date(25, 3));
    expect(votes.take(date(3, 25))).toBe(false);
    expect(votes.candidates()).toEqual(["day-first"]);
  });
  it("holds to what was said", () => {
    const votes = createOrderVotes("month-first");
    expect(votes.take(date(25, 3))).toBe(false);
    expect(votes.take(date(3, 25))).toBe(true);
  });
});

describe("isDateInAnyOrder", () => {
  it("tells a date of the other order from a misprint", () => {
    expect(isDateInAnyOrder(date(3, 25))).toBe(true);
    expect(isDateInAnyOrder(date(25, 25))).toBe(false);
    expect(isDateInAnyOrder(date(2, 30))).toBe(false);
  });
});
