import { describe, expect, it } from "vitest";
import { createController } from "./control.ts";
import { createRandom } from "./random.ts";
import { simulateRun, type Appliance, type RunPlan } from "./run.ts";

const random = () => createRandom(1, "control");

describe("createController", () => {
  it("switches at both ends of the hysteresis", () => {
    const ask = createController(
      { kind: "hysteresis", setpoint: 40, width: 2, power: 100 },
      random(),
    );
    const answers = [30, 40.5, 41, 40.5, 39.5, 39, 39.5, 41].map((value) => ask(value, 10));
    expect(answers).toEqual([100, 100, 0, 0, 0, 100, 100, 0]);
  });

  it("limits proportional-integral power to what the heater has", () => {
    const ask = createController(
      {
        kind: "proportional-integral",
        setpoint: 40,
        power: 200,
        band: 4,
        integralSeconds: 1000,
        integralLimit: 1,
        noise: 0,
      },
      random(),
    );
    expect(ask(20, 10)).toBe(200);
    // Integral (20 / 4) x 10 / 1000 = 0.05 so far; error 1 of a band of 4 asks 0.25 and adds 0.0025.
    expect(ask(39, 10)).toBeCloseTo(200 * (0.25 + 0.0525), 9);
    expect(ask(60, 10)).toBe(0);
  });

  it("leaves a constant heater alone", () => {
    const ask = createController({ kind: "constant", power: 35 }, random());
    expect([20, 60].map((value) => ask(value, 10))).toEqual([35, 35]);
  });

  it("cycles as the closed form says", () => {
    // Constructed: tau 60 min, heater-on limit 70 degC, ambient 22, band 40..42: on 4.139572 min,
    // off 6.321631 min, period 10.461203 min, mean 40.993940 degC. Each switch comes up to one
    // step late (1 s) and then carries the swing as much further: four steps a period at most.
    const appliance: Appliance = {
      network: {
        capacities: [3600],
        links: [],
        losses: [1],
        openLosses: [0],
        surface: null,
        heated: 0,
      },
      control: { kind: "hysteresis", setpoint: 41, width: 2, power: 48 },
      sensor: { node: 0, lagSeconds: 0 },
      foodNode: 0,
      bathNode: 0,
    };
    const plan: RunPlan = {
      fromSeconds: 0,
      toSeconds: 100 * 3600,
      switchOn: 0,
      switchOff: Infinity,
      powerCuts: [],
      lidOpen: [],
      initial: [22],
      room: () => 22,
    };
    const trace = simulateRun(appliance, plan, random(), 1);
    const switchOns: number[] = [];
    for (let at = 1; at < trace.power.length; at += 1)
      if (trace.power[at]! > 0 && trace.power[at - 1] === 0) switchOns.push(at);
    const [first, last] = [switchOns[0]!, switchOns.at(-1)!];
    const cycles = switchOns.length - 1;
    const heating = trace.power.slice(first, last).filter((power) => power > 0).length;
    const mean =
      trace.food.slice(first, last).reduce((sum, value) => sum + value, 0) / (last - first);
    expect(Math.abs((last - first) / cycles / 60 - 10.461203)).toBeLessThan(4 / 60);
    expect(Math.abs(heating / cycles / 60 - 4.139572)).toBeLessThan(2 / 60);
    expect(Math.abs(heating / (last - first) - 0.395707)).toBeLessThan(0.002);
    expect(Math.abs(mean - 40.99394)).toBeLessThan(0.01);
  });
});
