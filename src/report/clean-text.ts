/**
 * Names come from files, so they may hold anything. Control characters could
 * steer a terminal, and direction marks could reorder a line: each becomes a
 * visible replacement sign. Line breaks become spaces.
 */
export const cleanText = (text: string): string =>
  text
    .replaceAll(/[\t\n\r]+/g, " ")
    .replaceAll(/[\p{Cc}\p{Cs}\u200e\u200f\u202a-\u202e\u2028\u2029\u2066-\u2069]/gu, "\ufffd");

/** The same for screens that show ASCII only. */
export const asciiText = (text: string): string =>
  cleanText(text)
    .replaceAll("°", "deg")
    .replaceAll("\u2212", "-")
    .replaceAll("±", "+-")
    .replaceAll(/[\u2018\u2019]/g, "'")
    .replaceAll(/[\u201c\u201d]/g, '"')
    .replaceAll(/[^\u0020-\u007e\u00a0]/gu, "?");
