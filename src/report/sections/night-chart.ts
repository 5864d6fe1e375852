/** The chart of the whole test with its key, caption and the words that stand for it. */
import { nightPlot } from "../charts/night.ts";
import type { Markup } from "../markup.ts";
import { percent } from "../number-format.ts";
import { askedRange, temperatureRange } from "../temperature-text.ts";
import { clockTime, duration } from "../time-text.ts";
import { cultureName } from "../wording/cultures.ts";
import { phaseName, roleNames } from "../wording/names.ts";
import { figure, keyEntry } from "./figure.ts";
import { contextOf, startOf } from "./probe-page.ts";
import type { ProbePage } from "./probe-page.ts";

const phaseSentence = ({ probe, writing }: ProbePage): string =>
  probe.phases
    .map(
      (phase) =>
        `${phaseName(phase)} ${duration(phase.toMinute - phase.fromMinute, writing.space)}`,
    )
    .join(", ");

/** What the chart shows, for those who cannot see it. */
const nightDescription = (page: ProbePage): string => {
  const { probe, writing, analysis } = page;
  const { hold } = probe.night;
  const held =
    hold === null
      ? "No hold was found."
      : `${percent(analysis.share, " ")} of the hold lies between ${temperatureRange(writing, hold.band.low, hold.band.high)}.`;
  const windows = probe.verdicts.map(
    ({ requirement }) =>
      `The window asked for (${cultureName(requirement)}) is ${askedRange(writing, requirement.low, requirement.high)}.`,
  );
  return `Temperature over time. In order: ${phaseSentence(page)}. ${held} ${windows.join(" ")}`;
};

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
