/** The log of batches as a table for a terminal; as a list where the table would be too wide. */
import type { Batch, Kitchen, Setting } from "../../kitchen/kitchen.ts";
import { celsiusToFahrenheit } from "../../quantity.ts";
import type { TemperatureUnit } from "../../quantity.ts";
import { asciiText, cleanText } from "../../report/clean-text.ts";
import { short } from "../../report/number-format.ts";
import { wrapText } from "../../report/wrap-text.ts";
import { columns, gap, widthsOf } from "./columns.ts";

/** A batch with its number: its place in the log, from 1. */
export interface NumberedBatch {
  readonly number: number;
  readonly batch: Batch;
}

interface Page {
  readonly width: number;
  readonly ascii: boolean;
  readonly unit: TemperatureUnit;
}

/** Numbers by the file's order; shown by their days, the newest last. */
export const numbered = ({ batches }: Pick<Kitchen, "batches">): readonly NumberedBatch[] =>
  batches
    .map((batch, index) => ({ number: index + 1, batch }))
    .toSorted((a, b) => (a.batch.date < b.batch.date ? -1 : a.batch.date > b.batch.date ? 1 : 0));

const settingText = (setting: Setting, unit: TemperatureUnit): string | null => {
  if (setting.kind === "fixed") return null;
  if (setting.kind === "program") return setting.program;
  if (setting.kind === "mark") return `mark ${setting.mark}`;
  const [value, sign] =
    unit === "degC" ? [setting.celsius, "°C"] : [celsiusToFahrenheit(setting.celsius), "°F"];
  return `${short(value, 2)}\u00a0${sign}`;
};

const joined = (parts: readonly (string | null)[], between: string): string =>
  parts.filter((part) => part !== null && part !== "").join(between);

const setUpText = ({ appliance, setting, container }: Batch, unit: TemperatureUnit): string =>
  joined([joined([appliance, settingText(setting, unit)], " "), container], ", ");

const percent = (part: number): string => `${short(part * 100, 2)}\u00a0%`;
const yesNo = (answer: boolean | null, yes: string, no: string): string | null =>
  answer === null ? null : answer ? yes : no;

/** What its columns do not say. */
const moreText = (batch: Batch): string => {
  const { trouble, hours, milk, heated, starter, sourness, moved, notes } = batch;
  return joined(
    [
      trouble.length === 0 ? null : `trouble: ${trouble.join(", ")}`,
      hours === null ? null : `${short(hours, 1)}\u00a0h`,
      milk === null ? null : `${milk} milk`,
      yesNo(heated, "heated", "not heated"),
      starter === null ? null : `starter ${percent(starter)}`,
      sourness === null ? null : `sourness ${sourness}`,
      yesNo(moved, "moved while it set", "not moved"),
      notes,
    ],
    "; ",
  );
};

const head = ["no.", "set on", "culture", "set-up", "gen.", "separated"];

const cellsOf = ({ number, batch }: NumberedBatch, unit: TemperatureUnit): readonly string[] => [
  `${number}`,
  batch.date,
  batch.culture,
  setUpText(batch, unit),
  batch.generation === null ? "-" : `${batch.generation}`,
  batch.separated ?? "-",
];

const widthOf = (rows: readonly (readonly string[])[]): number =>
  widthsOf(rows).reduce((sum, one) => sum + one + gap.length, -gap.length);

/** A last column narrower than this is hard to read; what it would say goes below its row. */
const leastColumn = 24;

const withColumn = (rows: readonly (readonly string[])[], more: readonly string[], page: Page) =>
  columns(
    rows.map((row, at) => [...row, more[at] ?? ""]),
    page,
  );

const withLines = (rows: readonly (readonly string[])[], more: readonly string[], page: Page) => {
  const whole = { ascii: page.ascii, width: Infinity };
  const indent = " ".repeat((widthsOf(rows)[0] ?? 0) + gap.length);
  return columns(rows, whole).flatMap((line, at) => {
    const [below = ""] = columns([[more[at] ?? ""]], whole);
    return below === "" ? [line] : [line].concat(wrapText(below, page.width, indent));
  });
};

const asList = (batches: readonly NumberedBatch[], page: Page): readonly string[] =>
  columns(
    batches.map(({ number, batch }) => [
      `${number}`,
      joined(
        [
          `${batch.date} ${batch.culture}`,
          setUpText(batch, page.unit),
          batch.generation === null ? null : `generation ${batch.generation}`,
          batch.separated === null ? null : `separated: ${batch.separated}`,
          moreText(batch),
        ],
        "; ",
      ),
    ]),
    page,
  );

/** Each batch with everything said of it; "-" where nobody said. */
export const batchList = (batches: readonly NumberedBatch[], page: Page): readonly string[] => {
  // As they will stand there: degrees take more letters in ASCII.
  const shown = page.ascii ? asciiText : cleanText;
  const cells = [head, ...batches.map((one) => cellsOf(one, page.unit))];
  const rows = cells.map((row) => row.map(shown));
  const more = ["", ...batches.map(({ batch }) => moreText(batch))];
  const width = widthOf(rows);
  if (width > page.width) return asList(batches, page);
  const room = page.width - width - gap.length;
  return room >= leastColumn ? withColumn(rows, more, page) : withLines(rows, more, page);
};
