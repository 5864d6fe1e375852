import { describe, expect, it } from "vitest";
import { createStepper, heatRates, lagged, vapourPressure, type Network } from "./thermal.ts";

/** One body of time constant `seconds` that loses to the room only. */
const oneBody = (seconds: number): Network => ({
  capacities: [seconds],
  links: [],
  losses: [1],
  openLosses: [0],
  surface: null,
  heated: 0,
});

const closed = (room: number, power = 0) => ({ power, room, lidOpen: false });

function warmedFor(network: Network, start: number, room: number, seconds: number, step: number) {
  const state = Float64Array.of(start);
  const advance = createStepper(network);
  for (let index = 0; index < Math.round(seconds / step); index += 1)
    advance(state, closed(room), step);
  return state[0]!;
}

describe("createStepper", () => {
  it("follows the first-order warm-up T = 41 - 19 exp(-t / 45 min)", () => {
    // Constructed case; values of the closed form. Runge-Kutta at 10 s is exact to 1e-9 here.
    const expected = [
      [15, 27.38591],
      [30, 31.24507],
      [45, 34.01029],
      [60, 35.99165],
      [90, 38.42863],
      [120, 39.67981],
      [180, 40.652],
    ] as const;
    for (const [minutes, celsius] of expected)
      expect(warmedFor(oneBody(45 * 60), 22, 41, minutes * 60, 10)).toBeCloseTo(celsius, 5);
  });

  it("gives the solder bead of Lienhard & Lienhard, A Heat Transfer Textbook, example 1.4", () => {
    // T = 200 - 180 exp(-t / 1.116 s), 20 degC into 200 degC gas.
    const expected = [
      [1, 126.528358],
      [2, 170.010655],
      [5, 197.96057],
    ] as const;
    for (const [seconds, celsius] of expected)
      expect(warmedFor(oneBody(1.116), 20, 200, seconds, 0.01)).toBeCloseTo(celsius, 5);
  });

  it("balances heat in and heat out when settled, evaporation included", () => {
    const network: Network = {
      capacities: [500, 8000, 2000],
      links: [
        { from: 0, to: 1, conductance: 8 },
        { from: 1, to: 2, conductance: 3 },
      ],
      losses: [0.4, 0.9, 0.2],
      openLosses: [0, 0, 0],
      surface: { node: 1, area: 0.03, coefficient: 7, leak: 0.1 },
      heated: 0,
    };
    const state = Float64Array.of(30, 30, 30);
    const advance = createStepper(network);
    for (let index = 0; index < 60_000; index += 1) advance(state, closed(20, 35), 10);
    const [jacket, bath, jar] = [state[0]!, state[1]!, state[2]!];
    const dry = 0.4 * (jacket - 20) + 0.9 * (bath - 20) + 0.2 * (jar - 20);
    const wet = 0.1 * 0.03 * 7 * 16 * (vapourPressure(bath) - 0.5 * vapourPressure(20));
    expect(dry + wet).toBeCloseTo(35, 8);
    // The jar stands off from the bath by loss / (loss + link) of the distance to the room.
    expect(bath - jar).toBeCloseTo((0.2 / 3.2) * (bath - 20), 8);
  });

  it("passes on between bodies exactly what one of them loses", () => {
    const network: Network = {
      capacities: [700, 3000],
      links: [{ from: 0, to: 1, conductance: 5 }],
      losses: [0, 0],
      openLosses: [0, 0],
      surface: null,
      heated: 0,
    };
    const state = Float64Array.of(60, 20);
    const advance = createStepper(network);
    for (let index = 0; index < 1000; index += 1) advance(state, closed(20), 10);
    expect(700 * state[0]! + 3000 * state[1]!).toBeCloseTo(700 * 60 + 3000 * 20, 6);
    expect(state[0]).toBeCloseTo((700 * 60 + 3000 * 20) / 3700, 6);
  });

  it("loses more heat with the lid off", () => {
    const network: Network = {
      ...oneBody(1000),
      openLosses: [2],
      surface: { node: 0, area: 0.03, coefficient: 7, leak: 0.02 },
    };
    const rates = (lidOpen: boolean): number => {
      const result = new Float64Array(1);
      heatRates(network, Float64Array.of(40), { power: 0, room: 20, lidOpen }, result);
      return result[0]!;
    };
    const drive = vapourPressure(40) - 0.5 * vapourPressure(20);
    expect(rates(false)).toBeCloseTo(-(20 + 0.02 * 0.03 * 7 * 16 * drive) / 1000, 9);
    expect(rates(true)).toBeCloseTo(-(60 + 0.03 * 7 * 16 * drive) / 1000, 9);
  });
});

describe("lagged", () => {
  it("trails a ramp of 0.2 degC/min by the closed form T = 22 + r (t - tau + tau exp(-t / tau))", () => {
    // Constructed, tau 15 min. A ramp in steps of 1 s leads by half a step: 0.2 / 120 degC = 0.0017.
    const expected = [
      [15, 23.103638],
      [30, 25.406006],
      [60, 31.054947],
    ] as const;
    for (const [minutes, celsius] of expected) {
      let value = 22;
      for (let second = 1; second <= minutes * 60; second += 1)
        value = lagged(value, 22 + (0.2 * second) / 60, 900, 1);
      expect(Math.abs(value - celsius)).toBeLessThan(0.0018);
    }
  });

  it("is the input itself without a lag", () => {
    expect(lagged(20, 40, 0, 10)).toBe(40);
  });
});

describe("vapourPressure", () => {
  it("agrees with the steam tables", () => {
    // Saturation pressure of water, IAPWS-IF97: 2.3393 kPa at 20 degC, 7.3849 kPa at 40 degC. Magnus form: within 0.4 %.
    expect(vapourPressure(20) / 2.3393).toBeCloseTo(1, 2);
    expect(Math.abs(vapourPressure(20) / 2.3393 - 1)).toBeLessThan(0.004);
    expect(Math.abs(vapourPressure(40) / 7.3849 - 1)).toBeLessThan(0.004);
  });
});
