/** Cultures with their figures and where these come from, as a table for a terminal. */
import type { Culture } from "../../culture/culture.ts";
import { celsiusToFahrenheit } from "../../quantity.ts";
import type { TemperatureUnit } from "../../quantity.ts";
import { short } from "../../report/number-format.ts";
import { sourceText } from "../../report/wording/figure-sources.ts";
import { wrapText } from "../../report/wrap-text.ts";
import { columns } from "./columns.ts";

interface Page {
  readonly width: number;
  readonly ascii: boolean;
  /** The person's own unit; the other stands in brackets. */
  readonly unit: TemperatureUnit;
}

const both = (values: readonly number[], unit: TemperatureUnit): string => {
  const celsius = values.map((value) => short(value, 1)).join("-");
  const fahrenheit = values.map((value) => short(celsiusToFahrenheit(value), 1)).join("-");
  return unit === "degC" ? `${celsius} (${fahrenheit})` : `${fahrenheit} (${celsius})`;
};

/** Its figures' sources in the order of the columns. */
const sourceTexts = ({ sources }: Culture): readonly string[] =>
  [sources.window, sources.target, sources.ceiling, sources.hours].map(sourceText);

const rowOf = (culture: Culture, marks: string, unit: TemperatureUnit): readonly string[] => [
  culture.id,
  both([culture.low, culture.high], unit),
  both([culture.target], unit),
  both([culture.ceiling], unit),
  short(culture.hours, 1),
  marks,
];

/**
 * A row for each culture, then the sources its marks stand for: one mark where
 * all figures come from one source, else one for each, in the columns' order.
 */
export const cultureTable = (cultures: readonly Culture[], page: Page): readonly string[] => {
  const { unit, width } = page;
  const sources = [...new Set(cultures.flatMap(sourceTexts))];
  const marksOf = (culture: Culture): string => {
    const marks = sourceTexts(culture).map((text) => sources.indexOf(text) + 1);
    return new Set(marks).size === 1 ? `${marks[0]}` : marks.join(",");
  };
  const signs = unit === "degC" ? ["degC", "degF"] : ["degF", "degC"];
  const [first = "", second = ""] = signs.map((sign) =>
    page.ascii ? sign : sign.replace("deg", "°"),
  );
  const head = ["", `window ${first} (${second})`, "target", "ceiling", "h", "from"];
  const table = columns([head, ...cultures.map((one) => rowOf(one, marksOf(one), unit))], page);
  const notes = sources.flatMap((text, at) => wrapText(text, width, `[${at + 1}] `, "    "));
  const several = cultures.some((one) => new Set(sourceTexts(one)).size > 1);
  const order = several ? ["from: window, target, ceiling, hours, in this order"] : [];
  return [...table, "", ...order, ...notes];
};
