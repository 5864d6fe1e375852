import type { TemperatureUnit } from "../../quantity.ts";

/**
 * The unit of temperature written in a heading or in a cell of a units line:
 * "Temp (degC sign)", "T1 [degF]", "Temperature °F", "temp_c", "Temp. / C",
 * "TempF". The replacement character and "?" stand where an export lost its
 * degree sign.
 */
const patterns: readonly RegExp[] = [
  /[\u00b0\u00ba\u02da\ufffd?]\s*([CF])(?![a-z])/iu,
  /(celsius|centigrade|fahrenheit)/iu,
  /(?:^|[^a-z])deg(?:rees?|\.)?[\s_]*([CF])(?![a-z])/iu,
  /[([{<]\s*([CF])\s*[>)\]}]/iu,
  /temp(?:erature?|eratura)?[a-z]*\.?\s*\d*\s*[,:/|_-]?\s*in\s+([CF])$/iu,
  /[_/,;|]\s*([CF])$/u,
  /[_/]\s*([cf])$/u,
  /(?:temp(?:erature?|eratura)?\.?|t)\s*\d*\s+([CF])$/iu,
  /[Tt]emp(?:eratur[ea]?)?\d*([CF])$/u,
  /^[tT]\d*_?([CF])$/u,
  /^([CF])$/u,
];

const unitOfLetter = (found: string): TemperatureUnit =>
  found[0]?.toLowerCase() === "f" ? "degF" : "degC";

/** The unit of temperature in a heading, null where there is none. */
export const headingUnit = (heading: string): TemperatureUnit | null => {
  const text = heading.trim();
  if (text.includes("\u2103")) return "degC";
  if (text.includes("\u2109")) return "degF";
  for (const pattern of patterns) {
    const found = pattern.exec(text)?.[1];
    if (found !== undefined) return unitOfLetter(found);
  }
  return null;
};

const bracketed =
  /\s*[([{<]\s*(?:[\u00b0\u00ba\u02da\ufffd?]\s*|deg(?:rees?|\.)?[\s_]*)?(?:[CF]|celsius|fahrenheit|\u2103|\u2109)\s*[>)\]}]/iu;
const trailing =
  /\s*[,:/|_-]?\s*(?:\bin\s+)?(?:[\u00b0\u00ba\u02da\ufffd?]\s*[CF]|\u2103|\u2109|(?<![a-z])deg(?:rees?|\.)?[\s_]*[CF]|celsius|fahrenheit)$/iu;
const trailingLetter = /[\s/,:_|-]*[CF]$/iu;

/** The heading without its unit: what a probe is called. Empty where the unit is all there is. */
export const withoutUnit = (heading: string): string => {
  if (headingUnit(heading) === null) return heading.trim();
  const bare = heading.trim().replace(bracketed, "").replace(trailing, "").trim();
  return headingUnit(bare) === null ? bare : bare.replace(trailingLetter, "").trim();
};
