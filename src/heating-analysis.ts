/** The door for a heating step's log: one file in, what it shows of the heating and the cooling out, as plain data. */
import type { AnalysedFile, HashedSource, ThermometerStatement } from "./analysis-types.ts";
import { heatingCoolDown, type CoolDownLevel } from "./culture/heating-cool-down.ts";
import { heatingStep } from "./culture/heating-step.ts";
import type { HeatingCoolDown, HeatingStep, HeatingTarget } from "./culture/heating-types.ts";
import type { Surroundings } from "./culture/read-cooling.ts";
import type { Notice } from "./notice.ts";
import { done, failed, type Outcome } from "./problem.ts";
import type { TemperatureUnit } from "./quantity.ts";
import { meansProbe } from "./readings/columns/probe-names.ts";
import { readReadings } from "./readings/read-readings.ts";
import type { ReadingOptions } from "./readings/readings-file.ts";
import type { Series } from "./readings/series.ts";
import { applyCorrection, statementAt } from "./thermometer/correction-at.ts";
import type { CorrectionModel } from "./thermometer/correction-model.ts";
import { readingBehind } from "./thermometer/reading-behind.ts";

export interface HeatingRequest {
  readonly version: string;
  readonly target: HeatingTarget;
  /** What it is to cool below, in the order they are told; none: nobody asked. */
  readonly levels: readonly CoolDownLevel[];
  /** What the culture is called; null where none was named. */
  readonly culture: { readonly id: string; readonly name: string } | null;
  /** `id` null: not one of a kitchen's. */
  readonly thermometer: { readonly id: string | null; readonly model: CorrectionModel };
  /** What is known of the thermometer that the person should know. */
  readonly notices: readonly Notice[];
  /** null: the file's only one. */
  readonly probe: string | null;
  readonly surroundings: Surroundings;
  readonly confidence: number;
  readonly shownUnit: TemperatureUnit;
  readonly reading: ReadingOptions;
}

export interface HeatingAnalysis extends Pick<
  HeatingRequest,
  "version" | "culture" | "notices" | "surroundings" | "confidence" | "shownUnit"
> {
  readonly file: AnalysedFile;
  readonly probe: string;
  readonly step: HeatingStep;
  readonly coolDowns: readonly HeatingCoolDown[];
  /** At the reading behind the target. */
  readonly thermometer: ThermometerStatement;
  readonly thermometerId: string | null;
}

/** Reads the file, corrects the probe's readings, and judges heating and cooling. */
export const analyseHeating = async (
  request: HeatingRequest,
  source: HashedSource,
): Promise<Outcome<HeatingAnalysis>> => {
  const read = await readReadings(source, request.reading);
  if (!read.ok) return read;
  const probe = pickProbe(read.value.probes, request.probe);
  if (!probe.ok) return probe;
  const { version, culture, notices, surroundings, confidence, shownUnit } = request;
  return done({
    version,
    culture,
    notices,
    surroundings,
    confidence,
    shownUnit,
    file: { readings: read.value, sha256: source.sha256() },
    probe: probe.value.name,
    ...judge(probe.value, request),
  });
};

const judge = (
  { minutes, celsius, resolution }: Series,
  { target, levels, surroundings, confidence, thermometer: { id, model } }: HeatingRequest,
): Pick<HeatingAnalysis, "step" | "coolDowns" | "thermometer" | "thermometerId"> => {
  const readings = { minutes, celsius: applyCorrection(model, celsius) };
  const thermometer = { model, resolution };
  return {
    step: heatingStep(readings, target, thermometer, confidence),
    coolDowns: levels.map((level) =>
      heatingCoolDown(readings, target, level, thermometer, surroundings),
    ),
    thermometer: statementAt(model, readingBehind(model, target.celsius)),
    thermometerId: id,
  };
};

/** The probe said; else the only one that is not the room's. Which of several stood in the milk is asked. */
const pickProbe = (probes: readonly Series[], said: string | null): Outcome<Series> => {
  const names = probes.map(({ name }) => `"${name}"`).join(", ");
  if (said !== null) {
    const found = probes.find((probe) => meansProbe(said, probe));
    if (found !== undefined) return done(found);
    return failed("probe-unknown", { option: "--probe", probe: said, probes: names });
  }
  const milk = probes.filter(({ role }) => role !== "room");
  const [only] = milk.length === 0 ? probes : milk;
  if (only !== undefined && (milk.length === 1 || probes.length === 1)) return done(only);
  return failed("option-missing", {
    option: "--probe NAME",
    why: `the file has several probes (${names}), and one of them stood in the milk`,
  });
};
