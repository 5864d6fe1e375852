/** The study's report, in Markdown. */
import { rateInterval, type Share } from "./binomial.ts";
import {
  coverage,
  deciles,
  verdictFigures,
  type Coverage,
  type VerdictFigures,
} from "./figures.ts";
import { groups } from "./groups.ts";
import { populationText } from "./population-text.ts";
import type { StudyRecord } from "./record.ts";

/** @param firstSeed of consecutive ones */
export function studyReport(records: readonly StudyRecord[], firstSeed: number): string {
  const parts = groups(records);
  const unread = records.filter(({ problem }) => problem !== null).length;
  const blocks = [
    "# Calibration study of the verdict",
    `${records.length} simulated cases, seeds ${firstSeed} to ${firstSeed + records.length - 1}; ${unread} of them without an answer. Made by \`npm run study\`; the same seeds give the same cases.`,
    populationText,
    "## How often the verdict is wrong",
    "`holds` is false where the culture's hours were not met, `misses` where they were. In brackets the 95 % interval of the rate (Wilson score) and the counts.",
    table(verdictHeading, [
      verdictRow("all", "", verdictFigures(records)),
      ...parts.map(({ by, value, records: own }) => verdictRow(by, value, verdictFigures(own))),
    ]),
    "## Does the probability mean what it says",
    "By tenths of the probability told: its mean, and the share of those cases whose hours were truly met.",
    table(
      ["told", "cases", "mean told", "came true", "95 % interval", "difference"],
      decileRows(records),
    ),
    `Brier score ${verdictFigures(records).brier.toFixed(4)} (0 is perfect; one half told always gives 0.25).`,
    "## Do the intervals contain the truth",
    coverageText,
    table(coverageHeading, [
      coverageRow("all", "", coverage(records)),
      ...parts.map(({ by, value, records: own }) => coverageRow(by, value, coverage(own))),
    ]),
  ];
  return `${blocks.join("\n\n")}\n`;
}

const coverageText = `Stated at 95 %. "Mean" is the hold's mean with its expanded uncertainty, "band" the guarded band with both ends of the true central 95 % inside, each for the run that was tested, over what truly was its hold; "hours found" is the same over the stretches that were found to be hold, so that only the thermometer and the readings can be wrong; "next" the same for another night's run over as many hours after one test, which the guarded band promises only as far as runs scatter, not for another room. "Drift" is the slope's interval against the least-squares slope of the food itself. "Start" and "end" are the hold's, within 15 min, logged tests only.`;

const verdictHeading = [
  "by",
  "",
  "cases",
  "false among `holds`",
  "false among `misses`",
  "unproven",
  "mean told",
  "came true",
];

const percent = (rate: number): string => (100 * rate).toFixed(1);

const rate = (share: Share): string => {
  if (share.of === 0) return "-";
  const { low, high } = rateInterval(share);
  return `${percent(share.met / share.of)} % (${percent(low)}..${percent(high)}; ${share.met}/${share.of})`;
};

const short = ({ met, of }: Share): string =>
  of === 0 ? "-" : `${percent(met / of)} % (${met}/${of})`;

const verdictRow = (by: string, value: string, figures: VerdictFigures): readonly string[] => [
  by,
  value,
  String(figures.cases),
  rate(figures.falseHolds),
  rate(figures.falseMisses),
  short(figures.unproven),
  figures.told.toFixed(3),
  (figures.held.met / figures.held.of).toFixed(3),
];

const decileRows = (records: readonly StudyRecord[]): readonly (readonly string[])[] =>
  deciles(records).map(({ from, told, held }) => {
    const { low, high } = rateInterval(held);
    const span = `${from.toFixed(1)}..${(from + 0.1).toFixed(1)}`;
    if (held.of === 0) return [span, "0", "-", "-", "-", "-"];
    const came = held.met / held.of;
    const interval = `${low.toFixed(3)}..${high.toFixed(3)}`;
    const apart = (came - told).toFixed(3);
    return [span, String(held.of), told.toFixed(3), came.toFixed(3), interval, apart];
  });

const coverageHeading = [
  "by",
  "",
  "mean",
  "band",
  "mean, hours found",
  "band, hours found",
  "next mean",
  "next band",
  "drift",
  "start",
  "end",
];

const coverageRow = (by: string, value: string, of: Coverage): readonly string[] => [
  by,
  value,
  ...[
    of.mean,
    of.band,
    of.sameMean,
    of.sameBand,
    of.nextMean,
    of.nextBand,
    of.drift,
    of.start,
    of.end,
  ].map(short),
];

const table = (heading: readonly string[], rows: readonly (readonly string[])[]): string =>
  [heading, heading.map(() => "---"), ...rows].map((row) => `| ${row.join(" | ")} |`).join("\n");
