/** One probe's night: the curve, the hold close up, its figures, and its time against each window. */
import type { Analysis, ProbeAnalysis } from "../../analysis.ts";
import type { Verdict } from "../../culture/verdict-types.ts";
import type { Series } from "../../readings/series.ts";
import { dwellParts, dwellSpec } from "../charts/dwell.ts";
import type { DwellParts } from "../charts/dwell.ts";
import { holdSpec } from "../charts/hold-close-up.ts";
import { nightSpec } from "../charts/night.ts";
import { holdTable } from "../hold-lines.ts";
import { markup } from "../markup.ts";
import type { Markup } from "../markup.ts";
import { percent, percentInWords } from "../number-format.ts";
import { askedRange, askedTemperature, temperatureRange } from "../temperature-text.ts";
import { clockTime, duration } from "../time-text.ts";
import { cultureName, quotedProbeName } from "../wording/answers.ts";
import { phaseName, roleNames } from "../wording/names.ts";
import type { Writing } from "../writing.ts";
import { figure, keyEntry } from "./figure.ts";
import { pairsTable } from "./pairs-table.ts";

interface Page {
  readonly analysis: Analysis;
  readonly probe: ProbeAnalysis;
  readonly writing: Writing;
  /** Unique on the page. */
  readonly id: string;
}

const startOf = ({ analysis, probe }: Page): number | null =>
  analysis.files[probe.fileIndex]?.readings.startWallClock ?? null;

const contextOf = ({ analysis, probe }: Page): readonly Series[] =>
  analysis.probes
    .filter((other) => other.fileIndex === probe.fileIndex && other !== probe)
    .map(({ series }) => series)
    .filter(({ role }) => role !== "food");

const phaseSentence = ({ probe, writing }: Page): string =>
  probe.phases
    .map(
      (phase) =>
        `${phaseName(phase)} ${duration(phase.toMinute - phase.fromMinute, writing.space)}`,
    )
    .join(", ");

/** What the chart shows, for those who cannot see it. */
const nightDescription = (page: Page): string => {
  const { probe, writing, analysis } = page;
  const { hold } = probe.night;
  const held =
    hold === null
      ? "No hold was found."
      : `${percent(analysis.share, " ")} of the hold lies between ${temperatureRange(writing, hold.band.low, hold.band.high)}.`;
  const windows = probe.verdicts.map(
    ({ requirement }) => `The window is ${askedRange(writing, requirement.low, requirement.high)}.`,
  );
  return `Temperature over time. In order: ${phaseSentence(page)}. ${held} ${windows.join(" ")}`;
};

const windowName = ({ requirement }: Verdict, writing: Writing): string => {
  const culture = cultureName(requirement);
  const range = askedRange(writing, requirement.low, requirement.high);
  return culture === null ? `window, ${range}` : `window of ${culture}, ${range}`;
};

const windowKeys = ({ probe, writing }: Page): readonly Markup[] =>
  probe.verdicts.flatMap((verdict) => {
    const { ceiling } = verdict.requirement;
    const window = keyEntry("window", windowName(verdict, writing));
    return ceiling === null
      ? [window]
      : [window, keyEntry("ceiling", `never above ${askedTemperature(writing, ceiling)}`)];
  });

const bandKeys = ({ probe, analysis, writing }: Page): readonly Markup[] => {
  if (probe.night.hold === null) return [];
  const band = keyEntry(
    "band",
    `holding band, ${percent(analysis.share, writing.space)} of the hold`,
  );
  return probe.guardedBand === null
    ? [band]
    : [band, keyEntry("guard", "guarded band, doubt included")];
};

const contextKeys = (page: Page): readonly Markup[] =>
  contextOf(page).map((series) =>
    keyEntry(series.role === "room" ? "room" : "bath", `${series.name}, ${roleNames[series.role]}`),
  );

const nightCaption = (page: Page): string => {
  const clock = clockTime(startOf(page), 0);
  const since =
    clock === null
      ? "Hours count from the first reading."
      : `Hours count from the first reading; below them the logger’s clock, which began at ${clock}.`;
  return `${since} A gap in the line is a gap in the readings.`;
};

const nightFigure = (page: Page): Promise<Markup> =>
  figure({
    id: `${page.id}-night`,
    title: `The whole test, probe ${page.probe.series.name}`,
    description: nightDescription(page),
    spec: (size) =>
      nightSpec(
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
      ...windowKeys(page),
      ...bandKeys(page),
      ...contextKeys(page),
    ],
    caption: nightCaption(page),
  });

const holdFigure = async (page: Page): Promise<Markup | null> => {
  const { probe, analysis, writing, id } = page;
  const { hold } = probe.night;
  if (hold === null || probe.night.holdReadings === null) return null;
  const drawing = await figure({
    id: `${id}-hold`,
    title: `The hold close up, probe ${probe.series.name}`,
    description: `Readings of the hold between ${temperatureRange(writing, hold.min, hold.max)}, and beside them bars for the time spent at each temperature.`,
    spec: (size) => holdSpec(probe, analysis.shownUnit, size) ?? {},
    key: [],
    caption:
      "Left: the hold, with window and bands marked as above. Right: the longer the bar, the more time was spent at that temperature.",
  });
  return markup`<h3>The hold, close up</h3>\n${drawing}`;
};

const dwellWords = (parts: DwellParts, { space }: Writing) => ({
  below: `below for ${duration(parts.below, space)}`,
  inside: `inside for ${duration(parts.inside, space)}`,
  above: `above for ${duration(parts.above, space)}`,
});

const allInside = (verdict: Verdict, parts: DwellParts, writing: Writing): Markup =>
  markup`<p>All ${duration(parts.inside, writing.space)} of the hold lay inside the ${windowName(verdict, writing)}.</p>`;

const dwellBlock = async (page: Page, verdict: Verdict, at: number): Promise<Markup | null> => {
  const { probe, writing, id } = page;
  const { hold } = probe.night;
  if (verdict.dwell === null || hold === null) return null;
  const parts = dwellParts(verdict.dwell, hold.hours);
  if (parts.below + parts.above === 0) return allInside(verdict, parts, writing);
  const words = dwellWords(parts, writing);
  const longest = duration(verdict.dwell.longestOutsideMinutes, writing.space);
  return figure({
    id: `${id}-dwell-${at + 1}`,
    title: `Time against the window, probe ${probe.series.name}`,
    description: `Of the hold: ${words.below}, ${words.inside}, ${words.above}.`,
    spec: (size) => dwellSpec(parts, size),
    key: (["below", "inside", "above"] as const)
      .filter((part) => parts[part] > 0)
      .map((part) => keyEntry(part, words[part])),
    caption: `The tested hold against the ${windowName(verdict, writing)}. Inside for ${percentInWords(verdict.dwell.insideFraction, writing.space)} of it. The longest spell outside lasted ${longest}.`,
  });
};

const phaseTable = (page: Page): Markup | null => {
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
  return pairsTable("What happened when", rows);
};

/** Everything about one probe, under its own heading. */
export const nightSection = async (page: Page): Promise<Markup> => {
  const { analysis, probe, writing } = page;
  const name = quotedProbeName(probe.series, probe.file, analysis.files.length > 1);
  const found = await Promise.all(
    probe.verdicts.map((verdict, at) => dwellBlock(page, verdict, at)),
  );
  const dwells = found.filter((block) => block !== null);
  return markup`
<section aria-labelledby="${page.id}">
<h2 id="${page.id}">The test: ${name}, ${roleNames[probe.series.role]}</h2>
${await nightFigure(page)}
${await holdFigure(page)}
${dwells.length === 0 ? null : markup`<h3>Time inside and outside</h3>\n${dwells}`}
<h3>In figures</h3>
${pairsTable("The hold", holdTable(probe, analysis.share, analysis.confidence, writing))}
${phaseTable(page)}
</section>`;
};
