/** One night by itself. */
import type { Analysis } from "../../../analysis.ts";
import { readCheckOptions } from "../../../input/check-options.ts";
import { checkRequest } from "../../../input/check-request.ts";
import { localDay } from "../../../input/local-day.ts";
import { wallNow } from "../../../input/wall-now.ts";
import { parseKitchen } from "../../../kitchen/parse-kitchen.ts";
import { done, failed } from "../../../problem.ts";
import type { Outcome } from "../../../problem.ts";
import type { TemperatureUnit } from "../../../quantity.ts";
import { toHtmlParts } from "../../../report/html.ts";
import type { ChosenFile, FormValues, Readings, ShownReport } from "../../protocol.ts";
import { analyseFiles } from "../analyse-sources.ts";
import { kitchenFile } from "../memory-store.ts";
import { nightOptions, nightThermometer, withThermometer } from "../night-thermometer.ts";
import { shownReport } from "../shown-report.ts";
import { nightSummary } from "../summary.ts";
import { typedNight } from "../typed-file.ts";
import type { Handler, TypedFile, Workroom } from "../workroom.ts";

/** Readings as files, and the options that `check` would be given with them. */
interface Asked {
  readonly files: readonly ChosenFile[];
  readonly options: FormValues;
  readonly typed: TypedFile | null;
}

const usualUnit = ({ store }: Workroom): TemperatureUnit => {
  const kitchen = parseKitchen(store.text(), kitchenFile);
  return kitchen.ok ? kitchen.value.shownUnit : "degC";
};

/** A probe that was said and never read has no column: nothing is said of it. */
const probesRead = (options: FormValues, read: readonly string[]): FormValues => {
  const { probe, date: _, ...others } = options;
  if (!Array.isArray(probe)) return others;
  const roles = (probe as readonly string[]).filter((one) =>
    read.includes(one.slice(0, one.lastIndexOf("="))),
  );
  return roles.length === 0 ? others : { ...others, probe: roles };
};

const asFiles = (readings: Readings, options: FormValues, room: Workroom): Outcome<Asked> => {
  if (readings.kind === "files") {
    if (readings.files.length > 0) return done({ files: readings.files, options, typed: null });
    const why = "a verdict rests on readings";
    return failed("option-missing", { option: "a logger's file, or typed readings", why });
  }
  const night = typedNight(readings.lines, options, usualUnit(room), wallNow(room.now()));
  if (!night.ok) return night;
  const { file, probes } = night.value;
  const files = [{ name: file.name, content: new Blob([file.text]) }];
  return done({ files, options: probesRead(options, probes), typed: file });
};

/** Puts a night on the desk, where `save` finds it, and shows it. */
export const showNight = async (
  room: Workroom,
  analysis: Analysis,
  typed: TypedFile | null,
): Promise<ShownReport> => {
  const parts = await toHtmlParts(analysis, { renderedOn: room.now().toISOString() });
  room.desk.night = { analysis, parts, typed };
  return shownReport(parts, nightSummary(analysis));
};

export const check: Handler<"check"> = async (room, { readings, options: values }) => {
  const { check: own, ...said } = nightOptions(values);
  const asked = asFiles(readings, own, room);
  if (!asked.ok) return asked;
  const options = readCheckOptions(asked.value.options);
  if (!options.ok) return options;
  const request = checkRequest(options.value, room.version);
  if (!request.ok) return request;
  const thermometer = nightThermometer(room.store.text(), said, localDay(room.now()));
  if (!thermometer.ok) return thermometer;
  const full = withThermometer(request.value, thermometer.value);
  const analysis = await analyseFiles(full, asked.value.files, room);
  if (!analysis.ok) return analysis;
  return done(await showNight(room, analysis.value, asked.value.typed));
};
