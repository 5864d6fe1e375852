import { nearestName } from "../nearest-name.ts";
import { celsius, hours } from "../quantity.ts";
import { done, failed, type Outcome } from "../problem.ts";
import type { Culture, CultureSources, FigureSource, GrowthLimits } from "./culture.ts";
import * as grows from "./organisms.ts";

const { published } = grows;
const commonPractice: FigureSource = { kind: "common practice" };
const fermentedMilks = (printed: string): FigureSource =>
  published("McGee, On Food and Cooking (2004), table of fermented milks", printed);
const incubationReview = (printed: string): FigureSource =>
  published("Rani et al., Factors affecting syneresis in yoghurt: a review", printed);

/** Figures whose source is not given are common practice: no source for them was found. */
const culture = (
  id: string,
  name: string,
  figures: { low: number; target: number; high: number; ceiling: number; hours: number },
  sources: Partial<CultureSources>,
  growth: readonly GrowthLimits[],
): Culture => ({
  id,
  name,
  low: celsius(figures.low),
  target: celsius(figures.target),
  high: celsius(figures.high),
  ceiling: celsius(figures.ceiling),
  hours: hours(figures.hours),
  sources: {
    window: commonPractice,
    target: commonPractice,
    ceiling: commonPractice,
    hours: commonPractice,
    ...sources,
  },
  growth,
});

/** Cultures known by name. Windows are for holding, not for safety: see the cautions in every report. */
export const cultures: readonly Culture[] = [
  culture(
    "reuteri",
    "Low long-hold milk culture (Limosilactobacillus reuteri)",
    { low: 36.5, target: 38, high: 39.5, ceiling: 43, hours: 36 },
    {},
    [grows.reuteri],
  ),
  culture(
    "gasseri",
    "Long-hold milk culture (Lactobacillus gasseri)",
    { low: 36, target: 38, high: 40, ceiling: 43, hours: 36 },
    {},
    [grows.gasseri],
  ),
  // 43 degC and above endangers this blend as well as the low cultures (common practice, no source).
  culture(
    "warm-blend",
    "Warmer long-hold blend (L. reuteri, L. gasseri, H. coagulans)",
    { low: 39.5, target: 41, high: 42.5, ceiling: 43, hours: 36 },
    {},
    [grows.reuteri, grows.gasseri, grows.coagulans],
  ),
  culture(
    "yoghurt",
    "Yoghurt, short set (S. thermophilus, L. bulgaricus)",
    { low: 41, target: 43, high: 45, ceiling: 48, hours: 5 },
    {
      window: fermentedMilks("41 to 45 degC"),
      target: incubationReview("42 to 43 degC"),
      hours: fermentedMilks("2 to 5 h"),
    },
    [grows.thermophilus, grows.bulgaricus],
  ),
  culture(
    "yoghurt-long-set",
    "Yoghurt, long set (S. thermophilus, L. bulgaricus)",
    { low: 28, target: 30, high: 32, ceiling: 45, hours: 12 },
    { target: fermentedMilks("30 degC"), hours: fermentedMilks("6 to 12 h") },
    [grows.thermophilus, grows.bulgaricus],
  ),
  culture(
    "acidophilus",
    "Acidophilus milk (Lactobacillus acidophilus)",
    { low: 35, target: 37, high: 39, ceiling: 43, hours: 18 },
    { target: published(grows.starterTable, "optimum 37") },
    [grows.acidophilus],
  ),
  culture(
    "helveticus",
    "Warm milk culture (Lactobacillus helveticus)",
    { low: 40, target: 42, high: 44, ceiling: 48, hours: 12 },
    { target: published(grows.starterTable, "optimum 42") },
    [grows.helveticus],
  ),
  culture(
    "buttermilk",
    "Cultured buttermilk, mesophilic (Lactococcus, Leuconostoc)",
    { low: 20, target: 22, high: 24, ceiling: 30, hours: 16 },
    { target: fermentedMilks("22 degC"), hours: fermentedMilks("14 to 16 h") },
    [grows.lactis, grows.cremoris, grows.leuconostoc],
  ),
  culture(
    "sour-cream",
    "Sour cream, mesophilic (Lactococcus, Leuconostoc)",
    { low: 20, target: 22, high: 24, ceiling: 30, hours: 16 },
    { target: fermentedMilks("22 degC"), hours: fermentedMilks("16 h") },
    [grows.lactis, grows.cremoris, grows.leuconostoc],
  ),
  culture(
    "creme-fraiche",
    "Crème fraîche, mesophilic (Lactococcus)",
    { low: 18, target: 20, high: 23, ceiling: 30, hours: 20 },
    { target: fermentedMilks("20 degC"), hours: fermentedMilks("15 to 20 h") },
    [grows.lactis, grows.cremoris],
  ),
  culture(
    "ropy-milk",
    "Ropy milk, mesophilic (Lactococcus)",
    { low: 18, target: 20, high: 22, ceiling: 28, hours: 18 },
    { target: fermentedMilks("20 degC"), hours: fermentedMilks("18 h") },
    [grows.cremoris],
  ),
  culture(
    "kefir",
    "Kefir (grains)",
    { low: 18, target: 20, high: 24, ceiling: 30, hours: 24 },
    { target: fermentedMilks("20 degC"), hours: fermentedMilks("24 h") },
    [grows.kefiri],
  ),
  culture(
    "koumiss",
    "Koumiss, warm stage (lactobacilli and yeasts)",
    { low: 25, target: 27, high: 29, ceiling: 32, hours: 5 },
    { target: fermentedMilks("27 degC"), hours: fermentedMilks("2 to 5 h") },
    [],
  ),
  culture(
    "tempeh",
    "Tempeh (Rhizopus oligosporus)",
    { low: 28, target: 31, high: 34, ceiling: 41, hours: 36 },
    { ceiling: published(grows.tempehTest, "practically none above 41") },
    [grows.oligosporus],
  ),
  culture(
    "koji",
    "Koji (Aspergillus oryzae)",
    { low: 28, target: 32, high: 36, ceiling: 42, hours: 44 },
    {},
    [grows.oryzae],
  ),
  culture(
    "natto",
    "Natto (Bacillus subtilis var. natto)",
    { low: 38, target: 40, high: 42, ceiling: 50, hours: 22 },
    { target: published(grows.nattoChapter, "about 40") },
    [grows.natto],
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
