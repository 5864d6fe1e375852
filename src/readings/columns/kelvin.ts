/** What water, ice and rooms show in kelvin; a bare K over smaller numbers is a type of thermocouple. */
const coldest = 240;
const hottest = 420;

const sign =
  /kelvin|[([{<]\s*K\s*[>)\]}]|^\s*K\s*$|(?:temp\w*\.?|^\s*t\d*)\s*[_/,|-]?\s*(?:\bin\s+)?K\s*$/iu;

/** True for a heading, or a cell of a units line, that may mean kelvin. */
export const mayMeanKelvin = (text: string): boolean => sign.test(text);

/** True where such a heading stands over numbers that are temperatures in kelvin. */
export const isKelvin = (heading: string, median: number): boolean =>
  mayMeanKelvin(heading) && isKelvinLike(median);

/** True for numbers that would be temperatures in kelvin. */
export const isKelvinLike = (median: number): boolean => median >= coldest && median <= hottest;

/** "Temp (K)" without its unit. */
export const withoutKelvin = (heading: string): string =>
  heading
    .replace(/\s*(?:[([{<]\s*(?:K|kelvin)\s*[>)\]}]|[_/,|-]?\s*(?:\bin\s+)?(?:K|kelvin)\s*$)/iu, "")
    .trim();
