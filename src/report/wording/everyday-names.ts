/**
 * A person's names for things, inside a sentence: "the adjustable cooker",
 * "jars in water". Only everyday words are written small; any other first word
 * may be somebody's name, or a maker's, and stays as it was written.
 */

const everyday: ReadonlySet<string> = new Set(
  (
    "adjustable airing basin bath big bottle bottles bowl box cabinet ceramic circulating clay " +
    "closed cooker cupboard dehydrator dish fixed fridge glass heated heating in insulated jar " +
    "jars kitchen large lidded little long low loose metal mini multi new oil old on one open " +
    "oven pan plain plastic pot pots pressure rice second short shelf slow small square " +
    "stainless steel stoneware straight tall tank thermostatted third tub tubs two two-litre " +
    "upper under very vessel warm warming water wide wooden yoghurt yogurt"
  ).split(" "),
);

/** Words that already say which one is meant. */
const pointing: ReadonlySet<string> = new Set(["a", "an", "my", "our", "the", "this", "your"]);

const firstWord = (name: string): string => /^\S*/.exec(name)?.[0] ?? "";

const small = (name: string): string => name.replace(/^./u, (letter) => letter.toLowerCase());

/** "jars in water" for "Jars in water". */
export const everydayName = (name: string): string => {
  const word = small(firstWord(name));
  return everyday.has(word) || pointing.has(word) ? small(name) : name;
};

/** "the adjustable cooker"; a name that may be a proper one gets no article. */
export const theEverydayName = (name: string): string =>
  everyday.has(small(firstWord(name))) ? `the ${small(name)}` : everydayName(name);

/** As a sentence begins: nothing but an everyday word gets its capital. */
export const sentence = (text: string): string =>
  `${text.replace(/^[a-z]/, (letter) => letter.toUpperCase())}.`;
