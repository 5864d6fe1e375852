/** Temperatures at which the catalogue's organisms grow, degC. Strains differ by several degrees. */
import { celsius } from "../quantity.ts";
import type { FigureSource, GrowthLimits, SourcedTemperature } from "./culture.ts";

export const published = (work: string, printed: string): FigureSource => ({
  kind: "published",
  work,
  printed,
});

/** A figure and what the work prints where that is a range, of which it is the middle. */
type Figure = number | readonly [value: number, printed: string] | null;

/** Limits that all come from one work. */
const limits =
  (work: string) =>
  (organism: string, minimum: Figure, optimum: Figure, maximum: Figure): GrowthLimits => ({
    organism,
    minimum: sourced(work, minimum),
    optimum: sourced(work, optimum),
    maximum: sourced(work, maximum),
  });

const sourced = (work: string, figure: Figure): SourcedTemperature | null => {
  if (figure === null) return null;
  const [value, printed] = typeof figure === "number" ? [figure, `${figure}`] : figure;
  return { celsius: celsius(value), source: published(work, printed) };
};

/** Its own sources are Walstra et al. (1999) and Stanley (1998). */
export const starterTable =
  "Hui (ed.), Food Biochemistry and Food Processing, table 26.1: growth temperatures of starter bacteria";
const collections =
  "Engqvist (2018), BMC Microbiology 18:177: temperature at which culture collections grow it";
const strainTable = "Sato et al. (2020), TEMPURA: growth temperatures of type strains";
const mouldTable = "a mould reference page that quotes handbooks; these were not seen";
export const tempehTest = "colony sizes of one measured strain, on a tempeh science page";
export const nattoChapter =
  "chapter on natto of a food fermentation handbook, seen as extracts that do not name it";
const speciesDigest = "digest of Bergey's Manual of Systematic Bacteriology, vol. 3 (2009)";

const starter = limits(starterTable);

export const thermophilus = starter("Streptococcus thermophilus", 20, 40, 50);
export const bulgaricus = starter(
  "Lactobacillus delbrueckii subsp. bulgaricus",
  22,
  [42.5, "40 to 45"],
  52,
);
export const helveticus = starter("Lactobacillus helveticus", [21, "20 to 22"], 42, 54);
export const acidophilus = starter("Lactobacillus acidophilus", [21, "20 to 22"], 37, [
  46.5,
  "45 to 48",
]);
export const lactis = starter(
  "Lactococcus lactis subsp. lactis",
  [9, "8 to 10"],
  [30, "28 to 32"],
  40,
);
export const cremoris = starter("Lactococcus lactis subsp. cremoris", [9, "8 to 10"], 22, [
  38,
  "37 to 39",
]);
export const leuconostoc = starter(
  "Leuconostoc mesenteroides subsp. cremoris",
  [7, "4 to 10"],
  [22.5, "20 to 25"],
  37,
);
/** Grown at these, which is not to say that they grow best there; their limits were not found. */
export const reuteri = limits(collections)("Limosilactobacillus reuteri", null, 36, null);
export const gasseri = limits(collections)("Lactobacillus gasseri", null, 37, null);
export const coagulans = limits(strainTable)("Heyndrickxia coagulans", 30, [48.5, "40 to 57"], 61);
/** Known to grow at 15 degC; no lower limit was found. */
export const kefiri = limits(speciesDigest)("Lentilactobacillus kefiri", null, null, [
  45,
  "no growth at 45",
]);
export const oligosporus: GrowthLimits = {
  // The page prints 45 degC beside 107.6 degF, which is 42 degC.
  ...limits(mouldTable)("Rhizopus oligosporus", 12, null, [42, "107.6 degF, 42 degC"]),
  optimum: sourced(tempehTest, 34),
};
export const oryzae = limits(mouldTable)("Aspergillus oryzae", null, [34, "32 to 36"], 44);
export const natto = limits(nattoChapter)(
  "Bacillus subtilis var. natto",
  null,
  [40, "about 40"],
  [55, "no growth above 55"],
);
