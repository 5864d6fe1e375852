/** One probe's night: the curve, the hold close up, its figures, and its time against each window. */
import { holdPlot } from "../charts/hold-close-up.ts";
import { heading } from "../heading.ts";
import type { HeadingLevel } from "../heading.ts";
import { driftText, holdTable, swingText } from "../hold-lines.ts";
import { markup } from "../markup.ts";
import type { Markup } from "../markup.ts";
import { temperature, temperatureRange } from "../temperature-text.ts";
import { clockTime, duration } from "../time-text.ts";
import { quotedProbeName } from "../wording/answers.ts";
import { sentence } from "../wording/everyday-names.ts";
import { phaseName, roleNames } from "../wording/names.ts";
import { dwellBlock } from "./dwell.ts";
import { figure } from "./figure.ts";
import { nightFigure } from "./night-chart.ts";
import { growthPart } from "./growth.ts";
import { more } from "./more.ts";
import { headedPairsTable } from "./pairs-table.ts";
import { answersFor, startOf } from "./probe-page.ts";
import type { ProbePage } from "./probe-page.ts";

const holdFigure = async (page: ProbePage, level: HeadingLevel): Promise<Markup | null> => {
  const { probe, analysis, writing, id } = page;
  const { hold } = probe.night;
  const plot = holdPlot(probe, analysis.shownUnit);
  if (hold === null || plot === null || !answersFor(analysis, probe)) return null;
  const drawing = await figure({
    id: `${id}-hold`,
    title: `The hold close up, probe ${probe.series.name}`,
    description: `Readings of the hold between ${temperatureRange(writing, hold.min, hold.max)}, and beside them bars for the time spent at each temperature: half of it below ${temperature(writing, hold.median)}. ${sentence(`${swingText(hold.swing, writing)}; ${driftText(hold.drift, writing)}`)}`,
    plot,
    key: [],
    caption:
      "Left: the hold, with window and bands marked as above. Right: the longer the bar, the more time was spent at that temperature.",
  });
  return markup`${heading(level, "The hold, close up")}\n${drawing}`;
};

const phaseTable = (page: ProbePage): Markup | null => {
  const start = startOf(page);
  const { space } = page.writing;
  const rows = page.probe.phases.map((phase) => {
    const from = clockTime(start, phase.fromMinute) ?? duration(phase.fromMinute, space);
    const to = clockTime(start, phase.toMinute) ?? duration(phase.toMinute, space);
    return {
      label: phaseName(phase),
      text: `${from} to ${to}, ${duration(phase.toMinute - phase.fromMinute, space)}`,
    };
  });
  return headedPairsTable("What happened when", rows);
};

/** The main figures in view, the others folded away. */
export const figures = ({ probe, analysis, writing }: ProbePage): Markup | null => {
  const { main, others } = holdTable(probe, analysis.share, analysis.confidence, writing);
  if (main.length === 0) return null;
  const further = headedPairsTable("More figures of the hold", others);
  return markup`${headedPairsTable("The hold in figures", main)}
${further === null ? null : more("More figures", further)}`;
};

/** Everything about one probe, its parts' headings at `level`. */
export const nightParts = async (page: ProbePage, level: HeadingLevel): Promise<Markup> => {
  const { probe } = page;
  const dwells = probe.verdicts
    .map((verdict, at) => dwellBlock(page, verdict, at))
    .filter((block) => block !== null);
  const phases = phaseTable(page);
  const table = figures(page);
  return markup`${await nightFigure(page)}
${await holdFigure(page, level)}
${dwells.length === 0 ? null : markup`${heading(level, "Time inside and outside")}\n${dwells}`}
${table === null ? null : markup`${heading(level, "In figures")}\n${table}`}
${growthPart(page, level)}${phases === null ? null : more("What happened when", phases)}`;
};

/** The same under the probe's own heading. */
export const nightSection = async (page: ProbePage): Promise<Markup> => {
  const { analysis, probe } = page;
  const name = quotedProbeName(probe.series, probe.file, analysis.files.length > 1);
  return markup`
<section aria-labelledby="${page.id}">
<h2 id="${page.id}">The test: ${name}, ${roleNames[probe.series.role]}</h2>
${await nightParts(page, 3)}
</section>`;
};
