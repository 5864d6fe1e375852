/** The shape of every option of `check`. */
import * as z from "zod";
import { parseDuration, parseFraction, parseTemperatureDifference } from "../quantity-text.ts";
import { fileShapes } from "./file-option-shapes.ts";
import { flag, once, read, room, spread, temperature, within } from "./option-readers.ts";

/** How long a culture stays in, hours. */
export const holdHours = once(
  read("a time above 0 and up to 240 hours, such as 36 or 36h", (text) => {
    const seconds = within(60, 240 * 3600)(parseDuration(text, "h"));
    return seconds === null ? null : seconds / 3600;
  }),
);

export const reportFile = once(
  read("a file's name, such as night.html", (text) => (text === "" ? null : text)),
);

export const checkShape = z.object({
  ...fileShapes,
  culture: z.array(z.string()).default([]),
  low: temperature,
  high: temperature,
  ceiling: temperature,
  hours: holdHours,
  share: once(
    read("a part of the time from 0.5 to 1, such as 0.95 or 95%", (text) =>
      within(0.5, 1)(parseFraction(text)),
    ),
  ),
  confidence: once(
    read("a probability from 0.5 to 0.999, such as 0.95 or 95%", (text) =>
      within(0.5, 0.999)(parseFraction(text)),
    ),
  ),
  thermometerAccuracy: spread("a half-width"),
  correction: once(
    read("a difference between -20 and 20 degC, such as -0.4 or 0.7F", (text) =>
      within(-20, 20)(parseTemperatureDifference(text)),
    ),
  ),
  correctionUncertainty: spread("a standard uncertainty"),
  room,
  runToRun: spread("a standard deviation"),
  report: reportFile,
  json: flag,
  strict: flag,
});

export type CheckOptions = z.infer<typeof checkShape>;
