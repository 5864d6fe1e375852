/** The chart of the whole test with its key, caption and the words that stand for it. */
import type { Verdict } from "../../culture/verdict-types.ts";
import { nightPlot } from "../charts/night.ts";
import type { Markup } from "../markup.ts";
import { percent } from "../number-format.ts";
import { temperature, temperatureRange } from "../temperature-text.ts";
import { clockTime, duration } from "../time-text.ts";
import { phaseName, roleNames, verdictNames } from "../wording/names.ts";
import { figure, keyEntry } from "./figure.ts";
import { contextOf, startOf, windowName } from "./probe-page.ts";
import type { ProbePage } from "./probe-page.ts";
import { chance } from "./verdict-clauses.ts";

const phaseSentence = ({ probe, writing }: ProbePage): string =>
  probe.phases
    .map(
      (phase) =>
        `${phaseName(phase)} ${duration(phase.toMinute - phase.fromMinute, writing.space)}`,
    )
    .join(", ");

const heldText = ({ probe, writing, analysis }: ProbePage): string => {
  const { hold } = probe.night;
  if (hold === null) return "No hold was found.";
  const { guardedBand: guarded } = probe;
  const doubt =
    guarded === null
      ? ""
      : `; with the doubt, ${temperatureRange(writing, guarded.low, guarded.high)}`;
  return `The hold averages ${temperature(writing, hold.mean)}; ${percent(analysis.share, " ")} of it is ${temperatureRange(writing, hold.band.low, hold.band.high)}${doubt}.`;
};

/** "Its band lies above the window of Yoghurt, 41 to 45 °C (...): misses by this test alone (< 1 %)." */
const againstWindow = ({ probe, writing, analysis }: ProbePage, verdict: Verdict): string => {
  const { hold } = probe.night;
  const where = hold === null ? "" : `Its band ${bandPlace(hold.band, verdict)} the `;
  const word = verdictNames[verdict.verdict].toLowerCase();
  const text = `${where}${windowName(verdict, writing)}: ${word} by this test alone (${chance(verdict, analysis.confidence, writing)}).`;
  return text.replace(/^w/, "W");
};

const bandPlace = (band: { readonly low: number; readonly high: number }, verdict: Verdict) => {
  const { low, high } = verdict.requirement;
  if (band.low > high) return "lies above";
  if (band.high < low) return "lies below";
  if (band.low >= low && band.high <= high) return "lies inside";
  return `reaches ${band.high > high ? "above" : "below"}`;
};

/** What the chart shows, for those who cannot see it. */
const nightDescription = (page: ProbePage): string =>
  [
    `Temperature over time. In order: ${phaseSentence(page)}.`,
    heldText(page),
    ...page.probe.verdicts.map((verdict) => againstWindow(page, verdict)),
  ].join(" ");

const bandKeys = ({ probe, analysis, writing }: ProbePage): readonly Markup[] => {
  if (probe.night.hold === null) return [];
  const band = keyEntry(
    "band",
    `holding band, ${percent(analysis.share, writing.space)} of the hold`,
  );
  return probe.guardedBand === null
    ? [band]
    : [band, keyEntry("guard", "guarded band, doubt included")];
};

const contextKeys = (page: ProbePage): readonly Markup[] =>
  contextOf(page).map((series) =>
    keyEntry(series.role === "room" ? "room" : "bath", `${series.name}, ${roleNames[series.role]}`),
  );

const nightCaption = (page: ProbePage): string => {
  const clock = clockTime(startOf(page), 0);
  const since =
    clock === null
      ? "Hours count from the first reading."
      : `Hours count from the first reading; below them the logger’s clock, which began at ${clock}.`;
  return `${since} A gap in the line is a gap in the readings.`;
};

export const nightFigure = (page: ProbePage): Promise<Markup> =>
  figure({
    id: `${page.id}-night`,
    title: `The whole test, probe ${page.probe.series.name}`,
    description: nightDescription(page),
    plot: (size) =>
      nightPlot(
        {
          probe: page.probe,
          context: contextOf(page),
          startWallClock: startOf(page),
          unit: page.analysis.shownUnit,
        },
        size,
      ),
    key: [
      keyEntry("line", "readings, thermometer corrected"),
      ...bandKeys(page),
      ...contextKeys(page),
    ],
    caption: nightCaption(page),
  });
