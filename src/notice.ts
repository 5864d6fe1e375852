/**
 * Notices: things the program saw in the readings and dealt with, which the
 * person should know. A closed set of codes with facts; this file alone turns
 * them into sentences.
 */

export interface NoticeFacts {
  "unit-inferred": { unit: string; middle: number };
  "date-order-decided": { order: string; why: string };
  "clock-jump-mended": { line: number; jumpMinutes: number };
  "rows-reordered": { count: number; firstLine: number };
  "stamps-spread": { perStamp: number; seconds: number };
  "probes-split": { column: string; names: string };
  "probes-from-start": { column: string; names: string };
  "time-decided": { found: string; reading: string; why: string };
  "columns-moved": { line: number };
  "year-unknown": { found: string };
  gap: { firstLine: number; minutes: number; count: number };
  "preamble-skipped": { lines: number };
  "columns-ignored": { columns: string };
  "interval-applied": { seconds: number };
  "probes-named": { names: string };
  "assumed-thermometer": { accuracy: number };
  "probes-without-thermometer": { probes: string; accuracy: number };
  "thermometer-unchecked": { thermometer: string; accuracy: number; from: "stated" | "assumed" };
  "check-left-out": { thermometer: string; check: string };
  "check-old": { thermometer: string; months: number };
}

export type NoticeCode = keyof NoticeFacts;
export type Notice = {
  [Code in NoticeCode]: { readonly code: Code; readonly facts: NoticeFacts[Code] };
}[NoticeCode];

/** Builds a notice; the facts are checked against the code by the compiler. */
export const notice = <Code extends NoticeCode>(code: Code, facts: NoticeFacts[Code]): Notice =>
  ({ code, facts }) as Notice;

/** Writes a +-A accuracy, degC, in the reader's units. */
export type AccuracyText = (celsius: number) => string;

const sentences: {
  [Code in NoticeCode]: (facts: NoticeFacts[Code], within: AccuracyText) => string;
} = {
  "unit-inferred": ({ unit, middle }) =>
    `No unit is written in the file; the middle reading is ${middle}, so it was read as ${unit}. If that is wrong, say its unit (--unit C or --unit F).`,
  "date-order-decided": ({ order, why }) => `Dates were read ${order}: ${why}.`,
  "clock-jump-mended": ({ line, jumpMinutes }) =>
    `The clock jumps by ${jumpMinutes} min at line ${line}, as summer time does; the readings run on, so the jump was taken out.`,
  "rows-reordered": ({ count, firstLine }) =>
    `${count} ${count === 1 ? "row was" : "rows were"} out of order (first at line ${firstLine}) and put in order of time.`,
  "stamps-spread": ({ perStamp, seconds }) =>
    `The clock is printed too coarsely for the readings: ${perStamp} of them share each stamp, so they were spread evenly, ${seconds} s apart.`,
  "probes-split": ({ column, names }) =>
    `Each row holds one sensor's reading; the rows were parted by the column "${column}" into ${names}.`,
  "probes-from-start": ({ column, names }) =>
    `The file has no times and its column "${column}" names several sensors; the rows were parted by it into ${names}, each counted from its own first reading.`,
  "time-decided": ({ found, reading, why }) =>
    `Times such as "${found}" were read as ${reading}: ${why}.`,
  "columns-moved": ({ line }) =>
    `The heading at line ${line} names the columns in another order or leaves some out; the rows below it were read by that heading.`,
  "year-unknown": ({ found }) =>
    `Dates such as "${found}" have no year; days and clock are right, the year is not known.`,
  gap: ({ firstLine, minutes, count }) =>
    `${count} ${count === 1 ? "gap" : "gaps"} in the readings, the longest ${minutes} min before line ${firstLine}; nothing is filled in.`,
  "preamble-skipped": ({ lines }) =>
    `${lines} ${lines === 1 ? "line" : "lines"} above the heading ${lines === 1 ? "was" : "were"} passed over.`,
  "columns-ignored": ({ columns }) =>
    `These columns are not temperatures, so they were left alone (${columns}).`,
  "interval-applied": ({ seconds }) =>
    `Readings were placed ${seconds} s apart in the file's order, as was said (--interval).`,
  "probes-named": ({ names }) => `The file names no columns; its temperatures are called ${names}.`,
  "probes-without-thermometer": ({ probes, accuracy }, within) =>
    `No thermometer is named for ${probes}, so it was assumed good to ${within(accuracy)}. Name one under "probes" of the test in kitchen.yaml.`,
  "thermometer-unchecked": ({ thermometer, accuracy, from }, within) =>
    `"${thermometer}" has no check, so it counts as good to ${within(accuracy)} (${from}). Check it in melting ice, and in boiling water, for a surer verdict.`,
  "check-left-out": ({ thermometer, check }) =>
    `A check of "${thermometer}" (${check}) looks doubtful, so it is left out of the correction. Check again, or write "confirmed: yes" under it in kitchen.yaml.`,
  "check-old": ({ thermometer, months }) =>
    `"${thermometer}" was checked ${months} months ago. Thermometers drift; check it again.`,
  "assumed-thermometer": ({ accuracy }, within) =>
    `Nothing was said about the thermometer, so it was assumed good to ${within(accuracy)}. Say how good it is (--thermometer-accuracy) or its correction (--correction) for a surer verdict.`,
};

/** The sentence for one notice. */
export const noticeText = (item: Notice, within: AccuracyText): string =>
  (sentences[item.code] as (facts: Notice["facts"], within: AccuracyText) => string)(
    item.facts,
    within,
  );
