/** One water test of the kitchen: which set-up, when, from which file, with which thermometers; then its night. */
import type { ProbeAnalysis } from "../../analysis-types.ts";
import { testId } from "../kitchen-page.ts";
import type { KitchenPage, ReadTest } from "../kitchen-page.ts";
import { markup } from "../markup.ts";
import type { Markup } from "../markup.ts";
import { askedRange, correctionWithUncertainty, uncertainty } from "../temperature-text.ts";
import { begunText, calendarDay } from "../time-text.ts";
import { provenanceNames, roleNames } from "../wording/names.ts";
import { fullSetUpText } from "../wording/set-ups.ts";
import { wholeDates } from "../whole-dates.ts";
import type { Writing } from "../writing.ts";
import { more } from "./more.ts";
import { figures, nightParts } from "./night.ts";
import { answersFor } from "./probe-page.ts";

const testTitle = ({ analysis, writing }: KitchenPage, { test }: ReadTest): string =>
  fullSetUpText(analysis.kitchen, test, writing);

/** Title and day, for headings and the contents: tests of one set-up differ by it. */
export const testHeading = (page: KitchenPage, test: ReadTest): Markup => {
  const day = calendarDay(test.startedAt);
  return markup`${testTitle(page, test)}${day === null ? null : markup`, <span class="when">${day}</span>`}`;
};

const facts = ({ test, startedAt, analysis }: ReadTest, writing: Writing): string => {
  const begun = begunText(startedAt);
  const room = test.room ?? analysis.room;
  return [
    `Test “${test.id}”${begun === null ? "" : `, ${begun}`}`,
    `${analysis.files.length > 1 ? "Files" : "File"}: ${analysis.files.map(({ readings }) => readings.name).join(", ")}`,
    ...(test.fill === null ? [] : [`Filled: ${test.fill}`]),
    ...(room === null ? [] : [`Room: ${askedRange(writing, room.low, room.high)}`]),
    ...(test.notes === null ? [] : [`Notes: ${test.notes}`]),
  ].join(". ");
};

const probeLine = (probe: ProbeAnalysis, { analysis, writing }: KitchenPage): Markup => {
  const { correction, standardUncertainty, from } = probe.thermometer;
  const known = analysis.kitchen.thermometers.find(({ id }) => id === probe.thermometerId);
  const name = known?.name ?? probe.thermometerId ?? "thermometer not named";
  const corrected =
    correction === 0
      ? `no correction, standard uncertainty ${uncertainty(writing, standardUncertainty)}`
      : `corrected by ${correctionWithUncertainty(writing, correction, standardUncertainty)}, with its standard uncertainty`;
  return markup`<li>“${probe.series.name}”, ${roleNames[probe.series.role]}: ${name}, ${corrected}, ${provenanceNames[from]}</li>\n`;
};

/** Those the answers are about; a bath beside food is drawn in the food's chart. */
const shownProbes = ({ analysis }: ReadTest): readonly ProbeAnalysis[] =>
  analysis.probes.filter(
    (probe) =>
      answersFor(analysis, probe) && (probe.series.role !== "room" || analysis.probes.length === 1),
  );

/** The bath's own hold, folded away. */
const bathFigures = (page: KitchenPage, test: ReadTest, id: string): readonly Markup[] => {
  const shown = shownProbes(test);
  return test.analysis.probes.flatMap((probe) => {
    if (probe.series.role !== "bath" || shown.includes(probe)) return [];
    const table = figures({ analysis: test.analysis, probe, writing: page.writing, id });
    return table === null ? [] : [more(`The bath, “${probe.series.name}”, in figures`, table)];
  });
};

const nights = (page: KitchenPage, test: ReadTest, id: string): Promise<readonly Markup[]> => {
  const shown = shownProbes(test);
  return Promise.all(
    shown.map(async (probe, at) => {
      const part = { analysis: test.analysis, probe, writing: page.writing, id: `${id}-${at + 1}` };
      if (shown.length === 1) return nightParts(part, 3);
      return markup`<h3>“${probe.series.name}”, ${roleNames[probe.series.role]}</h3>
${await nightParts(part, 4)}`;
    }),
  );
};

export const kitchenTest = async (page: KitchenPage, test: ReadTest): Promise<Markup> => {
  const id = testId(page.analysis, test);
  return markup`
<section aria-labelledby="${id}">
<h2 id="${id}">${testHeading(page, test)}</h2>
<p class="byline small">${wholeDates(`${facts(test, page.writing)}.`)}</p>
<ul class="small probes">
${test.analysis.probes.map((probe) => probeLine(probe, page))}</ul>
${await nights(page, test, id)}
${bathFigures(page, test, id)}
</section>`;
};
