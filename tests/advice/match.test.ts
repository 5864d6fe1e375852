import { describe, expect, it } from "vitest";
import type { Candidate } from "../../src/advice/advice-types.ts";
import { matchCultures, type MatchedAppliance } from "../../src/advice/match.ts";
import type { Basis } from "../../src/advice/response-types.ts";
import type { Requirement } from "../../src/culture/verdict-types.ts";
import { celsius, fraction, hours } from "../../src/quantity.ts";

// All constructed: probabilities as given, the right places by hand.

const requirement = (culture: string): Requirement => ({
  culture,
  name: culture,
  low: celsius(40),
  high: celsius(44),
  ceiling: null,
  hours: hours(8),
  share: fraction(0.95),
});

type Offer = readonly [probability: number, basis: Basis] | null;

const offerOf = (appliance: string, offer: Offer): MatchedAppliance["best"][number] => {
  if (offer === null) return null;
  const [probability, basis] = offer;
  const chance = { probability, ceilingRisk: null, verdict: "unproven" as const };
  const candidate: Candidate = {
    setUp: { appliance, setting: { kind: "fixed" }, container: "jars" },
    basis,
    testIds: [],
    level: null,
    band: null,
    chances: [chance],
  };
  return { candidate, chance };
};

const tested = (probability: number): Offer => [probability, "tested"];

/** Appliances a, b, ... with their offers to the cultures named. */
const match = (cultures: readonly string[], ...offers: readonly (readonly Offer[])[]) =>
  matchCultures({
    requirements: cultures.map(requirement),
    appliances: offers.map((row, index) => {
      const appliance = "abc"[index]!;
      return { appliance, best: row.map((offer) => offerOf(appliance, offer)) };
    }),
    floor: 0.5,
  });

const told = ({ places }: ReturnType<typeof match>): readonly (string | null)[] =>
  places.map(({ placed, why }) => placed?.appliance ?? why);

describe("matchCultures places", () => {
  it("each culture where it is likeliest when nobody stands in its way", () => {
    const found = match(["warm", "cool"], [tested(0.9), tested(0.1)], [tested(0.2), tested(0.7)]);
    expect(told(found)).toEqual(["a", "b"]);
    expect([found.weakest, found.floor]).toEqual([0.7, 0.5]);
  });

  it("the weakest as well as can be, though the sum were higher the other way", () => {
    // a to warm and b to cool: 0.99 + 0.55. The other way round: 0.7 + 0.7.
    const found = match(["warm", "cool"], [tested(0.99), tested(0.7)], [tested(0.7), tested(0.55)]);
    expect(told(found)).toEqual(["b", "a"]);
    expect(found.weakest).toBe(0.7);
  });

  it("the first culture in the first appliance among equals", () => {
    const same = [tested(0.8), tested(0.8)];
    expect(told(match(["warm", "cool"], same, same))).toEqual(["a", "b"]);
  });

  it("as many as there are appliances, the others told that none is left", () => {
    const found = match(["one", "two", "three"], [tested(0.6), tested(0.9), tested(0.8)]);
    expect(told(found)).toEqual(["none-left", "a", "none-left"]);
    expect(found.places[0]!.alone).toMatchObject({
      appliance: "a",
      chance: { probability: 0.6 },
    });
    expect(found.places[1]!.alone).toEqual(found.places[1]!.placed);
  });

  it("at the floor, never below it", () => {
    expect(told(match(["warm"], [tested(0.5)]))).toEqual(["a"]);
    expect(told(match(["warm"], [tested(0.499)]))).toEqual(["none-can"]);
  });

  it("with the set-up and the chance that culture has there", () => {
    const { placed } = match(["warm", "cool"], [tested(0.2), tested(0.7)]).places[1]!;
    expect(placed).toEqual({ appliance: "a", ...offerOf("a", tested(0.7)) });
  });
});

describe("matchCultures says why not", () => {
  it("none can, where something was tested of one appliance", () => {
    const found = match(["warm"], [[0.4, "assumed"]], [[0.1, "extrapolated"]]);
    expect(told(found)).toEqual(["none-can"]);
    expect(found.weakest).toBeNull();
    expect(found.places[0]!.alone?.appliance).toBe("a");
  });

  it("nothing is known, where all is assumed", () => {
    expect(told(match(["warm"], [[0.4, "assumed"]], [[0.1, "assumed"]], [null]))).toEqual([
      "nothing-known",
    ]);
  });

  it("nothing is known, where no appliance offers anything", () => {
    const found = match(["warm"], [null], [null]);
    expect(told(found)).toEqual(["nothing-known"]);
    expect(found.places[0]!.alone).toBeNull();
  });

  it("none is left, even where the one taken is only assumed to serve", () => {
    const found = match(["warm", "cool"], [tested(0.9), [0.6, "assumed"]]);
    expect(told(found)).toEqual(["a", "none-left"]);
  });

  it("nothing at all in a kitchen without appliances, or without cultures", () => {
    expect(match(["warm"])).toEqual({
      places: [{ culture: "warm", placed: null, why: "nothing-known", alone: null }],
      weakest: null,
      floor: 0.5,
    });
    expect(match([], [])).toEqual({ places: [], weakest: null, floor: 0.5 });
  });
});

const alone = (...offers: readonly Offer[]) =>
  match(["warm"], ...offers.map((offer) => [offer])).places[0]!.alone?.appliance;

describe("alone, among equals", () => {
  it("is the tested one", () => {
    expect(alone([0.8, "interpolated"], [0.8, "assumed"], tested(0.8))).toBe("c");
  });

  it("is the kitchen's first where both or none were tested", () => {
    expect(alone(tested(0.8), tested(0.8))).toBe("a");
    expect(alone([0.8, "assumed"], [0.8, "interpolated"])).toBe("a");
  });

  it("is the likelier, tested or not", () => {
    expect(alone(tested(0.8), [0.81, "assumed"], null)).toBe("b");
  });
});
