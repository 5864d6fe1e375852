import { describe, expect, it } from "vitest";
import {
  neutraliseQuotes,
  quoteStateAfter,
  tightenQuotes,
} from "../../../src/readings/text/quoted-lines.ts";

// Quoting as in RFC 4180, section 2.
describe("quoteStateAfter", () => {
  it.each([
    ['a,"b",c', false, "closed"],
    ['a,"b ""c""",d', false, "closed"],
    ['a,5" pipe,c', false, "closed"],
    ['a,"b', false, "open"],
    ["more,text", true, "open"],
    ['end",c', true, "closed"],
    ['a,"b"c', false, "broken"],
    ["", false, "closed"],
  ] as const)("%s (inside: %s) is %s", (line, inside, state) => {
    expect(quoteStateAfter(line, ",", inside)).toBe(state);
  });
});

describe("tightenQuotes", () => {
  it("lets a quote after a blank open its field", () => {
    expect(tightenQuotes('22:00, "41,2" , x', ";")).toBe('22:00, "41,2" , x');
    expect(tightenQuotes('22:00; "41,2" ;x', ";")).toBe('22:00;"41,2";x');
  });
});

describe("neutraliseQuotes", () => {
  it("leaves no field that begins with a quote", () => {
    expect(neutraliseQuotes('22:00,"41.2')).toBe('22:00, "41.2');
  });
});
