import { nearestName } from "../nearest-name.ts";
import { celsius, hours } from "../quantity.ts";
import { done, failed, type Outcome } from "../problem.ts";
import type { Culture, FigureSource, GrowthLimits } from "./culture.ts";

const commonPractice: FigureSource = { kind: "common practice" };
const published = (work: string): FigureSource => ({ kind: "published", work });
const fermentedMilks = published(
  "McGee, On Food and Cooking (2004), table of fermented milks; window drawn about its figure by common practice",
);
const foodBiochemistry = published(
  "Hui (ed.), Food Biochemistry and Food Processing, table 26.1: growth temperatures of starter bacteria",
);

const growth = (
  organism: string,
  limits: readonly [number | null, number | null, number | null],
  source: FigureSource,
): GrowthLimits => {
  const [minimum, optimum, maximum] = limits.map((value) =>
    value === null ? null : celsius(value),
  );
  return {
    organism,
    minimum: minimum ?? null,
    optimum: optimum ?? null,
    maximum: maximum ?? null,
    source,
  };
};

const culture = (
  id: string,
  name: string,
  figures: { low: number; target: number; high: number; ceiling: number; hours: number },
  source: FigureSource,
  limits: readonly GrowthLimits[],
): Culture => ({
  id,
  name,
  low: celsius(figures.low),
  target: celsius(figures.target),
  high: celsius(figures.high),
  ceiling: celsius(figures.ceiling),
  hours: hours(figures.hours),
  source,
  growth: limits,
});

const thermophilus = growth("Streptococcus thermophilus", [20, 40, 50], foodBiochemistry);
const bulgaricus = growth(
  "Lactobacillus delbrueckii subsp. bulgaricus",
  [22, 42.5, 52],
  published(
    "Hui (ed.), Food Biochemistry and Food Processing, table 26.1: optimum 40 to 45, its middle",
  ),
);
const lactococcus = growth("Lactococcus lactis subsp. lactis", [9, 30, 40], foodBiochemistry);
const cremoris = growth("Lactococcus lactis subsp. cremoris", [9, 22, 38], foodBiochemistry);
const reuteri = growth("Limosilactobacillus reuteri", [null, 37, null], {
  kind: "from memory",
  work: "Bergey's Manual of Systematic Bacteriology, vol. 3 (2009)",
});
const gasseri = growth(
  "Lactobacillus gasseri",
  [null, 37, null],
  published("Engqvist (2018), BMC Microbiology 18:177: temperature at which collections grow it"),
);
const coagulans = growth(
  "Heyndrickxia coagulans",
  [30, 48, 61],
  published("Sato et al. (2020), TEMPURA: optimum 40 to 57, about its middle"),
);

/** Cultures known by name. Windows are for holding, not for safety: see the cautions in every report. */
export const cultures: readonly Culture[] = [
  culture(
    "reuteri",
    "Low long-hold milk culture (Limosilactobacillus reuteri)",
    { low: 36.5, target: 38, high: 39.5, ceiling: 43, hours: 36 },
    commonPractice,
    [reuteri],
  ),
  culture(
    "gasseri",
    "Long-hold milk culture (Lactobacillus gasseri)",
    { low: 36, target: 38, high: 40, ceiling: 43, hours: 36 },
    commonPractice,
    [gasseri],
  ),
  culture(
    "warm-blend",
    "Warmer long-hold blend (L. reuteri, L. gasseri, H. coagulans)",
    { low: 39.5, target: 41, high: 42.5, ceiling: 43, hours: 36 },
    commonPractice,
    [reuteri, gasseri, coagulans],
  ),
  culture(
    "yoghurt",
    "Yoghurt, short set (S. thermophilus, L. bulgaricus)",
    { low: 41, target: 43, high: 45, ceiling: 48, hours: 5 },
    fermentedMilks,
    [thermophilus, bulgaricus],
  ),
  culture(
    "yoghurt-long-set",
    "Yoghurt, long set (S. thermophilus, L. bulgaricus)",
    { low: 28, target: 30, high: 32, ceiling: 45, hours: 12 },
    fermentedMilks,
    [thermophilus, bulgaricus],
  ),
  culture(
    "acidophilus",
    "Acidophilus milk (Lactobacillus acidophilus)",
    { low: 35, target: 37, high: 39, ceiling: 43, hours: 18 },
    commonPractice,
    [growth("Lactobacillus acidophilus", [21, 37, 46.5], foodBiochemistry)],
  ),
  culture(
    "helveticus",
    "Warm milk culture (Lactobacillus helveticus)",
    { low: 40, target: 42, high: 44, ceiling: 48, hours: 12 },
    commonPractice,
    [growth("Lactobacillus helveticus", [21, 42, 54], foodBiochemistry)],
  ),
  culture(
    "buttermilk",
    "Cultured buttermilk, mesophilic (Lactococcus, Leuconostoc)",
    { low: 20, target: 22, high: 24, ceiling: 30, hours: 16 },
    fermentedMilks,
    [
      lactococcus,
      cremoris,
      growth("Leuconostoc mesenteroides subsp. cremoris", [7, 22.5, 37], foodBiochemistry),
    ],
  ),
  culture(
    "creme-fraiche",
    "Crème fraîche, mesophilic (Lactococcus)",
    { low: 18, target: 20, high: 23, ceiling: 30, hours: 20 },
    fermentedMilks,
    [lactococcus, cremoris],
  ),
  culture(
    "kefir",
    "Kefir (grains)",
    { low: 18, target: 20, high: 24, ceiling: 30, hours: 24 },
    fermentedMilks,
    [
      growth("Lentilactobacillus kefiri", [null, null, 45], {
        kind: "published",
        work: "digest of Bergey's Manual of Systematic Bacteriology, vol. 3: grows at 15, not at 45",
      }),
    ],
  ),
  culture(
    "tempeh",
    "Tempeh (Rhizopus oligosporus)",
    { low: 28, target: 31, high: 34, ceiling: 41, hours: 36 },
    commonPractice,
    [
      growth(
        "Rhizopus oligosporus",
        [12, 34, 42],
        published("mould reference tables for the ends; a measured strain for the optimum of 34"),
      ),
    ],
  ),
  culture(
    "koji",
    "Koji (Aspergillus oryzae)",
    { low: 28, target: 32, high: 36, ceiling: 42, hours: 44 },
    commonPractice,
    [
      growth(
        "Aspergillus oryzae",
        [null, 34, 44],
        published("mould reference tables: optimum 32 to 36"),
      ),
    ],
  ),
  culture(
    "natto",
    "Natto (Bacillus subtilis var. natto)",
    { low: 38, target: 40, high: 42, ceiling: 50, hours: 22 },
    commonPractice,
    [
      growth(
        "Bacillus subtilis var. natto",
        [null, 40, 55],
        published("a food fermentation handbook's chapter on natto"),
      ),
    ],
  ),
];

/** The culture of that id; else a problem that names the nearest and all known ones. */
export const findCulture = (id: string): Outcome<Culture> => {
  const wanted = id.trim().toLowerCase();
  const found = cultures.find((one) => one.id === wanted);
  if (found !== undefined) return done(found);
  const ids = cultures.map((one) => one.id);
  return failed("culture-unknown", {
    culture: id,
    suggestion: nearestName(wanted, ids),
    known: ids.join(", "),
  });
};
