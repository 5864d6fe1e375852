/**
 * What each token of a stamp's shape stands for: an index into the tokens, or
 * -1. Found once for each shape, by patterns over its letters (see Scan).
 */
export interface Layout {
  /** `open`: two parts whose order (day, month) the shape does not tell. */
  readonly date: "none" | "known" | "open";
  /** The month is a word. */
  readonly named: boolean;
  /** Dates with dots between their parts. */
  readonly dotted: boolean;
  /** No token for seconds: 10:30 may be hours and minutes, or minutes and seconds. */
  readonly twoPart: boolean;
  /** -1 where the date has none. */
  readonly year: number;
  /** Month, or the first part of an open date. */
  readonly month: number;
  /** Day, or the second part of an open date. */
  readonly day: number;
  /** Date in one number, 20261125. */
  readonly compactDate: number;
  readonly days: number;
  readonly hour: number;
  readonly minute: number;
  readonly second: number;
  readonly fraction: number;
  /** Time in one number, 223005 or 2230. */
  readonly compactTime: number;
  readonly half: number;
  readonly zulu: number;
  readonly offsetSign: number;
  readonly offsetHour: number;
  readonly offsetMinute: number;
  /** Offset in one number, 0100. */
  readonly compactOffset: number;
}

const any = "[dtYHBx]";
const dates = [
  "(?<compactDate>B)",
  "(?<year>Y)(?<mark>[-/.]) ?(?<month>d)\\k<mark> ?(?<day>d)\\.?",
  "(?<first>d)(?<mark>[-/.]) ?(?<second_>d)\\k<mark> ?(?<year>[Yd])\\.?",
  "(?:M ?,? ?)?(?<day>d)[-/. ]*(?<month>M)[-/., ]*(?<year>[Yd])",
  "(?:M ?,? ?)?(?<month>M)[-/. ]*(?<day>d)[-/., ]+(?<year>[Yd])",
  "(?<year>Y)[-/. ]*(?<month>M)[-/. ]*(?<day>d)",
];
/** Without a year; only before a clock, blanks between. */
const yearlessDates = [
  "(?<first>d)(?<mark>[-/])(?<second_>d)",
  "(?<first>d)(?<mark>\\.) ?(?<second_>d)\\.?",
  "(?:M ?,? ?)?(?<day>d)[-/. ]*(?<month>M)\\.?",
  "(?:M ?,? ?)?(?<month>M)[-/. ]*(?<day>d)",
];
const fraction = `(?:[.,:](?<fraction>${any}))?`;
const colons = (hour: string): string =>
  `(?<hour>${hour}):(?<minute>d)(?::(?<second>d)${fraction})?`;
const units = "(?<hour>[dtY]) ?h(?: ?(?<minute>d)(?: ?m)?(?: ?(?<second>d)(?: ?s)?)?)?";
const datedTimes = [
  colons("d"),
  units,
  "(?<hour>d)\\.(?<minute>d)(?:\\.(?<second>d))?",
  `(?<compactTime>[HY])${fraction}`,
  "(?<hour>d)(?= ?a)",
];
const bareUnits = "(?<hour>[dtY]) ?h ?(?<minute>d)(?: ?m)?(?: ?(?<second>d)(?: ?s)?)?";
const bareTimes = [colons("[dtYx]"), bareUnits, "(?<hour>d)(?= ?a)"];
const elapsedTimes = [
  `(?<minute>${any}):(?<second>d)[.,](?<fraction>${any})`,
  `(?<days>[dtY])(?: ?D[, ]*|\\.|-)${colons("d")}`,
  `(?<days>[dtY]) ?D[, ]*${units.replace("[dtY]", "d")}`,
  "(?<minute>[dtY]) ?m ?(?<second>d)(?: ?s)?",
];
const zone =
  "(?: ?z)?(?: ?(?<zulu>Z))?(?: ?(?<offsetSign>[-+])(?:(?<offsetHour>d)(?::(?<offsetMinute>d))?|(?<compactOffset>Y)))?(?: ?z)?";
const glue = "(?:[ T,]+|:| ?- ?)";
const timeOfDay = (time: string): string => `(?:(?<before>a) ?)?${time}(?: ?(?<after>a))?`;

/** Whole shapes, the likelier reading first. */
const patterns = (): RegExp[] => {
  // "Nov 25 22:10:15" is a clock after a date, not the year 22 and ten past nothing.
  const sources = yearlessDates.map((date) => `${date}[ T,]+${timeOfDay(colons("d"))}${zone}`);
  for (const time of datedTimes) {
    for (const date of dates) {
      sources.push(`${date}${glue}${timeOfDay(time)}${zone}`);
      sources.push(`${timeOfDay(time)}(?: ?[Zz])?${glue}${date}`);
    }
    sources.push(
      `(?:M ?,? ?)?(?<month>M) (?<day>d) ${timeOfDay(time)}(?: ?(?:z|(?<zulu>Z)))? (?<year>Y)`,
    );
  }
  for (const time of bareTimes) sources.push(`${timeOfDay(time)}${zone}`);
  sources.push(...elapsedTimes, ...dates);
  return sources.map((source) => new RegExp(`^${source}$`, "d"));
};

let compiled: RegExp[] | null = null;

/** The layout of a shape, or null where it is no stamp's. */
export const layoutOf = (shape: string): Layout | null => {
  compiled ??= patterns();
  for (const pattern of compiled) {
    const match = pattern.exec(shape);
    if (match !== null) return layoutFrom(match);
  }
  return null;
};

const layoutFrom = (match: RegExpExecArray): Layout => {
  const groups = match.indices?.groups ?? {};
  const at = (name: string): number => groups[name]?.[0] ?? -1;
  const open = at("first") >= 0;
  const dated = open || at("day") >= 0 || at("compactDate") >= 0;
  return {
    date: open ? "open" : dated ? "known" : "none",
    named: match.groups?.["month"] === "M",
    dotted: match.groups?.["mark"] === ".",
    twoPart: at("hour") >= 0 && at("minute") >= 0 && at("second") < 0,
    year: at("year"),
    month: open ? at("first") : at("month"),
    day: open ? at("second_") : at("day"),
    compactDate: at("compactDate"),
    days: at("days"),
    hour: at("hour"),
    minute: at("minute"),
    second: at("second"),
    fraction: at("fraction"),
    compactTime: at("compactTime"),
    half: Math.max(at("before"), at("after")),
    zulu: at("zulu"),
    offsetSign: at("offsetSign"),
    offsetHour: at("offsetHour"),
    offsetMinute: at("offsetMinute"),
    compactOffset: at("compactOffset"),
  };
};
