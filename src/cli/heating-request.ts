/** Options of `heating` to the request the core understands. */
import { findCulture } from "../culture/catalogue.ts";
import type { Culture } from "../culture/culture.ts";
import { findHeatingTarget, heatingTargets, milkZ } from "../culture/heating-targets.ts";
import type { HeatingTarget } from "../culture/heating-types.ts";
import type { HeatingRequest } from "../heating-analysis.ts";
import { analyseThermometer, thermometerNotices } from "../kitchen-analysis/thermometers.ts";
import type { Kitchen } from "../kitchen/kitchen.ts";
import { notice } from "../notice.ts";
import { done, failed } from "../problem.ts";
import type { Outcome } from "../problem.ts";
import {
  assumedAccuracy,
  assumedThermometer,
  correctedThermometer,
  specifiedThermometer,
} from "../thermometer/budget.ts";
import { constantCorrection } from "../thermometer/constant-correction.ts";
import { usualConfidence } from "../input/check-request.ts";
import { readingOptionsOf } from "../input/file-option-shapes.ts";
import type { HeatingOptions } from "./heating-options.ts";
import { cultureOf, thermometerOf } from "../input/known-ids.ts";

/** What is known besides the options. */
export interface HeatingContext {
  /** null: no kitchen here. */
  readonly kitchen: Kitchen | null;
  readonly version: string;
  /** ISO date, for the age of checks. */
  readonly today: string;
}

const targetOf = ({ target, minutes, step, z }: HeatingOptions): Outcome<HeatingTarget> => {
  const [usual] = heatingTargets;
  const own = { name: "own", source: "as you said" };
  const found =
    target !== undefined && minutes !== undefined
      ? done({ celsius: target.celsius, minutes, z: milkZ, from: own })
      : step === undefined
        ? done(usual!)
        : findHeatingTarget(step);
  return found.ok && z !== undefined ? done({ ...found.value, z }) : found;
};

/** The kitchen's own where it has it, else the catalogue's. */
const cultureAsked = (id: string, kitchen: Kitchen | null): Outcome<Culture> => {
  const own = kitchen === null ? null : cultureOf(kitchen, id);
  return own?.ok === true ? own : findCulture(id);
};

type Cooling = Pick<HeatingRequest, "levels" | "culture">;

const coolingOf = (
  { culture: id, until }: HeatingOptions,
  kitchen: Kitchen | null,
): Outcome<Cooling> => {
  if (until !== undefined)
    return done({ levels: [{ to: until.celsius, of: "asked" }], culture: null });
  if (id === undefined) return done({ levels: [], culture: null });
  const found = cultureAsked(id, kitchen);
  if (!found.ok) return found;
  const { name, ceiling, high } = found.value;
  return done({
    levels: [
      { to: ceiling, of: "ceiling" },
      { to: high, of: "window" },
    ],
    culture: { id: found.value.id, name },
  });
};

type Known = Pick<HeatingRequest, "thermometer" | "notices">;

const thermometerSaid = (options: HeatingOptions, context: HeatingContext): Outcome<Known> => {
  const { thermometer: id, thermometerAccuracy: accuracy } = options;
  const { correction, correctionUncertainty: uncertainty } = options;
  if (id !== undefined) return fromKitchen(id, context);
  if (correction !== undefined && uncertainty !== undefined) {
    const model = constantCorrection(correctedThermometer(correction, uncertainty));
    return done({ thermometer: { id: null, model }, notices: [] });
  }
  const said =
    accuracy === undefined ? assumedThermometer : specifiedThermometer(accuracy, "stated");
  const notices =
    accuracy === undefined ? [notice("assumed-thermometer", { accuracy: assumedAccuracy })] : [];
  return done({ thermometer: { id: null, model: constantCorrection(said) }, notices });
};

const fromKitchen = (id: string, { kitchen, today }: HeatingContext): Outcome<Known> => {
  if (kitchen === null)
    return failed("option-missing", {
      option: "--kitchen FOLDER",
      why: `there is no kitchen here whose thermometer "${id}" could be used`,
    });
  const found = thermometerOf(kitchen, id);
  if (!found.ok) return found;
  const analysis = analyseThermometer(found.value, today);
  return done({
    thermometer: { id: found.value.id, model: analysis.model },
    notices: thermometerNotices(analysis),
  });
};

/** The room said, else the kitchen's. */
const surroundingsOf = (
  { room }: HeatingOptions,
  kitchen: Kitchen | null,
): HeatingRequest["surroundings"] =>
  room === undefined ? (kitchen?.room ?? null) : { low: room.low.celsius, high: room.high.celsius };

/** Fails where a step, culture or thermometer is not known. */
export const heatingRequest = (
  options: HeatingOptions,
  context: HeatingContext,
): Outcome<HeatingRequest> => {
  const target = targetOf(options);
  if (!target.ok) return target;
  const cooling = coolingOf(options, context.kitchen);
  if (!cooling.ok) return cooling;
  const known = thermometerSaid(options, context);
  if (!known.ok) return known;
  return done({
    version: context.version,
    target: target.value,
    ...cooling.value,
    ...known.value,
    probe: options.probe ?? null,
    surroundings: surroundingsOf(options, context.kitchen),
    confidence: usualConfidence,
    shownUnit:
      options.target?.writtenUnit ??
      options.until?.writtenUnit ??
      context.kitchen?.shownUnit ??
      options.unit ??
      "degC",
    reading: readingOptionsOf({ ...options, probe: [] }),
  });
};
