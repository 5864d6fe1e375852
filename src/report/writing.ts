import type { TemperatureUnit } from "../quantity.ts";

/** How text is written: which unit comes first, and which signs the reader's screen can show. */
export interface Writing {
  readonly unit: TemperatureUnit;
  /** Between a number and its unit. */
  readonly space: string;
  /** Only ASCII: "degC" and "+-". */
  readonly ascii: boolean;
}

const noBreakSpace = "\u00a0";

/** For HTML: a number is never parted from its unit at a line's end. */
export const markupWriting = (unit: TemperatureUnit): Writing => ({
  unit,
  space: noBreakSpace,
  ascii: false,
});

/** For JSON: plain spaces. */
export const plainWriting = (unit: TemperatureUnit): Writing => ({
  unit,
  space: " ",
  ascii: false,
});

/** For terminals: wrapping heeds the no-break spaces and then makes them plain. */
export const terminalWriting = (unit: TemperatureUnit, ascii: boolean): Writing => ({
  unit,
  space: noBreakSpace,
  ascii,
});

export const plusMinus = (writing: Writing): string => (writing.ascii ? "+-" : "±");
export const unitSign = (writing: Writing, unit: TemperatureUnit): string =>
  writing.ascii ? unit : unit === "degC" ? "°C" : "°F";
export const otherUnit = (unit: TemperatureUnit): TemperatureUnit =>
  unit === "degC" ? "degF" : "degC";

/** Sentences of problem.ts and notice.ts are plain ASCII; outside quotes their units get their signs. */
export const withSigns = (writing: Writing, sentence: string): string =>
  writing.ascii
    ? sentence
    : sentence
        .split('"')
        .map((part, index) => (index % 2 === 0 ? signed(part, writing.space) : part))
        .join('"');

const signed = (part: string, space: string): string =>
  part
    .replaceAll(/(\d) (deg[CF]|min|s)\b/g, `$1${space}$2`)
    .replaceAll(/\bdeg([CF])\b/g, "°$1")
    .replaceAll("+-", "±")
    .replaceAll(/(\d)\.\.(-?\d)/g, "$1 to $2");
