import type { AnalysedFile, AnalysisRequest, ProbeThermometer } from "./analysis-types.ts";
import { readNight } from "./hold/night.ts";
import type { ProbeNight } from "./hold/hold.ts";
import { meansProbe } from "./readings/columns/probe-names.ts";
import type { Series } from "./readings/series.ts";
import { median } from "./stats/median.ts";
import type { ThermometerStatement } from "./thermometer/budget.ts";
import { constantCorrection } from "./thermometer/constant-correction.ts";
import { applyCorrection, statementAt } from "./thermometer/correction-at.ts";
import type { CorrectionModel } from "./thermometer/correction-model.ts";
import { readingBehind } from "./thermometer/reading-behind.ts";

/** One probe's readings corrected by its thermometer, and its night found; no culture asked yet. */
export interface ReadProbe {
  readonly fileIndex: number;
  readonly file: string;
  readonly test: number;
  /** Corrected. */
  readonly series: Series;
  /** At the hold's mean reading, or at the median reading where there is no hold. */
  readonly thermometer: ThermometerStatement;
  /** null: the one said, or assumed, for all. */
  readonly thermometerId: string | null;
  readonly night: ProbeNight;
}

/** Corrects every probe of the files and finds its night. */
export const readProbes = (
  request: AnalysisRequest,
  files: readonly AnalysedFile[],
  common: ThermometerStatement,
): readonly ReadProbe[] =>
  files.flatMap(({ readings }, fileIndex) => {
    const own = request.files?.[fileIndex]?.thermometers ?? new Map<string, ProbeThermometer>();
    const test = request.together === true ? 0 : fileIndex;
    return readings.probes.map((probe) => ({
      ...readProbe(
        probe,
        thermometerOf(probe, own) ?? request.checkedThermometer ?? null,
        common,
        request.share,
      ),
      fileIndex,
      file: readings.name,
      test,
    }));
  });

const thermometerOf = (
  probe: Series,
  own: ReadonlyMap<string, ProbeThermometer>,
): ProbeThermometer | null => {
  for (const [said, thermometer] of own) if (meansProbe(said, probe)) return thermometer;
  return null;
};

const readProbe = (
  probe: Series,
  own: ProbeThermometer | null,
  common: ThermometerStatement,
  share: number,
): Pick<ReadProbe, "series" | "night" | "thermometer" | "thermometerId"> => {
  const model = own?.model ?? constantCorrection(common);
  const series = corrected(probe, model);
  const night = readNight(series, { share });
  const reading =
    night.hold === null ? median(probe.celsius) : readingBehind(model, night.hold.mean);
  return {
    series,
    night,
    thermometer: statementAt(model, reading),
    thermometerId: own?.id ?? null,
  };
};

/** Without a correction the readings stay the very same. */
const corrected = (probe: Series, model: CorrectionModel): Series =>
  model.correction === 0 && model.slope === 0
    ? probe
    : { ...probe, celsius: applyCorrection(model, probe.celsius) };
