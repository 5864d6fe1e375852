import { lethalRate } from "../../../src/culture/lethal-rate.ts";
import {
  fitCooling,
  minutesTo,
  straightened,
  unstraightened,
} from "../../../src/culture/newton-cooling.ts";
import { value } from "../reference-values.ts";
import type { ReferenceGroup } from "../reference-values.ts";

const sterilising = { celsius: 121.1, z: 10 };
// prettier-ignore
const rates: readonly (readonly [number, string])[] = [
  [100, "0.007762"], [105, "0.024547"], [110, "0.077625"], [111.1, "0.1"], [115, "0.245471"],
  [118, "0.489779"], [121.1, "1"], [124, "1.949845"],
];
// prettier-ignore
const units: readonly (readonly [number, string])[] = [
  [62, "1.940449"], [65, "5.245122"], [70, "27.511303"], [72, "53.384281"],
];

/** Lethal rate. */
export const lethality: ReferenceGroup = {
  title: "Lethal rate",
  about: ["culture/lethal-rate"],
  blocks: [
    {
      source:
        "M. Mullan, dairyscience.info, F value of a thermal process: example at 110 degC, reference 121.11 degC, z 10 degC",
      asked: { absolute: 5e-4 },
      because: "half of the last printed place",
      values: [value("rate at 110 degC", "0.077", lethalRate(110, { celsius: 121.11, z: 10 }))],
    },
    {
      source: "10^((T - 121.1) / 10) in Python; formula of the same pages",
      asked: { absolute: 1e-6 },
      because: "printed to six decimals",
      values: rates.map(([celsius, rate]) =>
        value(`rate at ${celsius} degC`, rate, lethalRate(celsius, sterilising)),
      ),
    },
    {
      source: "the brewers' 1.393^(T - 60) (relation from memory) in Python",
      asked: { absolute: 1e-6 },
      because: "printed to six decimals",
      values: units.map(([celsius, rate]) =>
        value(
          `units per minute at ${celsius} degC`,
          rate,
          lethalRate(celsius, { celsius: 60, z: 1 / Math.log10(1.393) }),
        ),
      ),
    },
  ],
};

/** A bead of 20 degC in a gas of 200 degC, turned into a cooling from 380 and back. */
const solderBead = (seconds: number): number => {
  const law = { surroundings: 200, excess: 0 };
  return 400 - unstraightened(straightened(380, law) - seconds / 1.116, law);
};

/** Time from `start` above the surroundings down to `level`, by a fit of exact readings before. */
const timeTo = (start: number, surroundings: number, constant: number, level: number): number => {
  const times = Float64Array.of(-0.2 * constant, -0.1 * constant, 0);
  const fit = fitCooling(
    {
      minutes: times,
      celsius: times.map((t) => surroundings + (start - surroundings) * Math.exp(-t / constant)),
      uncertainty: new Float64Array(3).fill(0.05),
    },
    { surroundings, excess: 0 },
  )!;
  return minutesTo(fit, level).minutes;
};

/** Lumped body, Cengel's bead: h / (density, heat capacity, length). */
const beadRate = 210 / (8500 * 320 * (0.001 / 6));

/** Newton's law. */
export const cooling: ReferenceGroup = {
  title: "First-order response (Newton's law)",
  about: ["culture/newton-cooling"],
  blocks: [
    {
      source:
        "Lienhard & Lienhard, A Heat Transfer Textbook, example 1.4: solder bead, 1.116 s, 20 degC into gas of 200 degC; recomputed with SciPy 1.17.1",
      asked: { absolute: 1e-6 },
      because: "printed to six decimals",
      values: [
        value("degC after 1 s", "126.528358", solderBead(1)),
        value("degC after 2 s", "170.010655", solderBead(2)),
        value("degC after 5 s", "197.960570", solderBead(5)),
      ],
    },
    {
      source:
        "Incropera & DeWitt, example 5.1 (inputs seen in a variant): 25 to 199 degC in gas of 200 degC, time constant 1 s, printed 5.2 s; recomputed with SciPy 1.17.1",
      asked: { absolute: 1e-6 },
      because: "printed to six decimals",
      values: [
        value("seconds, as printed", "5.2", timeTo(375, 200, 1, 201), "as printed"),
        value("seconds", "5.164786", timeTo(375, 200, 1, 201)),
      ],
    },
    {
      source:
        "Cengel, Heat and Mass Transfer, example 4-1 (book identified from memory): thermocouple bead, 99 % of a step, printed 10 s",
      asked: { absolute: 5e-4 },
      because: "half of the third decimal of the recomputed 9.941 s",
      values: [
        value("seconds, as printed", "10", timeTo(100, 0, 1 / beadRate, 1), "as printed"),
        value("seconds", "9.941", timeTo(100, 0, 1 / beadRate, 1)),
      ],
    },
  ],
};
