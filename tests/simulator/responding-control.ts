/** Controls whose settings give known bath levels. */
import type { ApplianceKind, Control, Setting } from "../../src/kitchen/kitchen.ts";
import type { Random } from "./random.ts";

export interface RespondingControl {
  readonly control: Control;
  /** All it offers, in its order. */
  readonly settings: readonly Setting[];
  /** What the bath is held at with the room at 20 degC, degC. */
  readonly level: (setting: Setting) => number;
}

/** Common practice, no source: what such appliances are sold with. */
const controlWeights: {
  readonly [Kind in ApplianceKind]: readonly (readonly [Control["kind"], number])[];
} = {
  cooker: [
    ["fixed", 25],
    ["programs", 30],
    ["steps", 45],
  ],
  "water bath": [
    ["fixed", 10],
    ["marks", 30],
    ["steps", 60],
  ],
  "circulating bath": [["steps", 100]],
  "warming box": [
    ["fixed", 20],
    ["marks", 50],
    ["steps", 30],
  ],
  other: [
    ["fixed", 30],
    ["programs", 20],
    ["marks", 25],
    ["steps", 25],
  ],
};

/** How far a display or a printed figure is off, as a standard deviation, degC (common practice, no source). */
const biasDeviation: { readonly [Kind in ApplianceKind]: number } = {
  cooker: 2,
  "water bath": 1,
  "circulating bath": 1,
  "warming box": 3,
  other: 2.5,
};

export function sampleRespondingControl(random: Random, kind: ApplianceKind): RespondingControl {
  const bias = random.normal(0, biasDeviation[kind]);
  const control = random.weighted(controlWeights[kind]);
  if (control === "fixed") return fixed(random.uniform(34, 44) + bias);
  if (control === "programs") return sampledPrograms(random, bias);
  if (control === "marks") return sampledMarks(random);
  return stepsWith(sampledSteps(random, kind), sampledLine(random, kind, bias));
}

const fixed = (level: number): RespondingControl => ({
  control: { kind: "fixed" },
  settings: [{ kind: "fixed" }],
  level: () => level,
});

const programNames = ["warm", "ferment", "keep", "gentle"];

/** Two to four programs in no order; now and then one for keeping food hot. */
function sampledPrograms(random: Random, bias: number): RespondingControl {
  const programs = programNames.slice(0, random.integer(2, 4));
  const levels = programs.map(
    () => bias + (random.chance(0.15) ? random.uniform(50, 65) : random.uniform(30, 46)),
  );
  return {
    control: { kind: "programs", programs },
    settings: programs.map((program) => ({ kind: "program", program })),
    level: (setting) =>
      levels[setting.kind === "program" ? programs.indexOf(setting.program) : 0] ?? NaN,
  };
}

/** Three to nine marks, rising, no two steps alike. */
function sampledMarks(random: Random): RespondingControl {
  const marks = Array.from({ length: random.integer(3, 9) }, (_, index) => String(index + 1));
  const [lowest, highest] = [random.uniform(24, 34), random.uniform(42, 56)];
  const rises = marks.slice(1).map(() => random.uniform(0.5, 1.5));
  const whole = rises.reduce((sum, rise) => sum + rise, 0);
  const levels = [lowest];
  for (const rise of rises) levels.push(levels.at(-1)! + ((highest - lowest) * rise) / whole);
  return {
    control: { kind: "marks", marks },
    settings: marks.map((mark) => ({ kind: "mark", mark })),
    level: (setting) => levels[setting.kind === "mark" ? marks.indexOf(setting.mark) : 0] ?? NaN,
  };
}

type Steps = Extract<Control, { kind: "steps" }>;

const rounded = (value: number): number => Math.round(value * 1e9) / 1e9;

function sampledSteps(random: Random, kind: ApplianceKind): Steps {
  const isFine = kind === "circulating bath" && random.chance(0.7);
  if (isFine) return { kind: "steps", low: 20, high: random.choice([50, 60]), step: 0.1 };
  if (random.chance(0.25)) {
    const [low, high] = [random.choice([70, 80, 86]), random.choice([115, 125, 140])];
    const inCelsius = (fahrenheit: number): number => rounded((fahrenheit - 32) / 1.8);
    return { kind: "steps", low: inCelsius(low), high: inCelsius(high), step: rounded(1 / 1.8) };
  }
  const [low, high] = [random.choice([20, 25, 30]), random.choice([45, 50, 60])];
  return { kind: "steps", low, high, step: random.choice([0.5, 1, 1]) };
}

export interface LevelLine {
  /** Off by this at a setting of 40 degC. */
  readonly bias: number;
  readonly slope: number;
  /** degC per degC squared. */
  readonly curvature: number;
}

function sampledLine(random: Random, kind: ApplianceKind, bias: number): LevelLine {
  const isBath = kind === "water bath" || kind === "circulating bath";
  const slope = isBath ? random.uniform(0.96, 1.04) : random.uniform(0.9, 1.1);
  return { bias, slope, curvature: random.chance(0.3) ? random.normal(0, 0.002) : 0 };
}

/** level = 40 + bias + slope (setting - 40) + curvature (setting - 40)^2. */
export function stepsWith(control: Steps, line: LevelLine): RespondingControl {
  const count = Math.round((control.high - control.low) / control.step) + 1;
  const settings = Array.from({ length: count }, (_, index): Setting => ({
    kind: "step",
    celsius: rounded(control.low + index * control.step),
  }));
  const level = (setting: Setting): number => {
    const from40 = setting.kind === "step" ? setting.celsius - 40 : NaN;
    return 40 + line.bias + line.slope * from40 + line.curvature * from40 ** 2;
  };
  return { control, settings, level };
}
