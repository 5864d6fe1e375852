/** The judges' figures as text for a terminal. */
import {
  answerShares,
  calibration,
  candidateChances,
  chosenChances,
  count,
  coverage,
  gapAllowed,
  gapOf,
  isWrongCan,
  isWrongCannot,
  judgedAnswers,
  mean,
  median,
  recommendation,
  thermometerGapOf,
  type Count,
  type Decile,
  type JudgedAnswer,
} from "./study-judges.ts";
import type { CaseRecord, LevelRecord } from "./study-record.ts";

const percent = ({ met, of }: Count): string =>
  of === 0 ? "-" : `${((100 * met) / of).toFixed(1)} % (${met}/${of})`;
const cell = (text: string): string => text.padStart(20);
const head = (text: string): string => text.padEnd(30);
const fixed = (value: number, digits = 2): string =>
  Number.isNaN(value) ? "-" : value.toFixed(digits);

/** Items by a word for each, every group under its word. */
const groups = <Item>(
  items: readonly Item[],
  by: (item: Item) => string,
): readonly (readonly [string, readonly Item[]])[] =>
  [...new Set(items.map(by))]
    .toSorted()
    .map((word) => [word, items.filter((item) => by(item) === word)]);

type LevelOf = LevelRecord & { readonly of: CaseRecord };

function coverageText(records: readonly CaseRecord[]): readonly string[] {
  const all: LevelOf[] = records.flatMap((of) => of.levels.map((level) => ({ ...level, of })));
  const row = (name: string, levels: readonly LevelOf[]): string => {
    const { said, at50, at80, at95, width, bias } = coverage(levels);
    const cells = [said, at50, at80, at95].map((one) => cell(percent(one)));
    return `${head(name)}${cells.join("")}${cell(fixed(width))}${cell(fixed(bias))}`;
  };
  const by = (name: string, word: (level: LevelOf) => string): readonly string[] =>
    groups(all, word).map(([value, levels]) => row(`  ${name} ${value}`, levels));
  return [
    "",
    "(a) fresh runs within the expected level",
    head("") + ["low..high", "50 %", "80 %", "95 %", "median u", "bias"].map(cell).join(""),
    row("all", all),
    ...by("control", ({ of }) => of.control),
    ...by("thermostat", ({ of }) => (of.thermostatted ? "yes" : "no")),
    ...by("thermometer", ({ of }) => (of.checked ? "checked" : "unchecked")),
    ...by("used tests", ({ of }) => String(of.usedTests)),
    ...by("basis", ({ basis }) => basis),
    ...by("kind", ({ of }) => of.kind),
  ];
}

function recommendationText(all: readonly JudgedAnswer[]): readonly string[] {
  const row = (name: string, part: readonly JudgedAnswer[]): string => {
    const { close, closeWhereServed, closeByThermometer, meanGap } = recommendation(part);
    const cells = [close, closeWhereServed, closeByThermometer].map((one) => cell(percent(one)));
    return `${head(name)}${cells.join("")}${cell(fixed(meanGap, 3))}`;
  };
  const by = (name: string, word: (answer: JudgedAnswer) => string): readonly string[] =>
    groups(all, word).map(([value, part]) => row(`  ${name} ${value}`, part));
  return [
    "",
    `(b) true share inside within ${gapAllowed} of the best offered, two used tests or more`,
    head("") + ["all", "best >= 0.5", "but thermometer", "mean lost"].map(cell).join(""),
    row("all", all),
    row(
      "answered can or may",
      all.filter(({ answer }) => answer === "can" || answer === "may"),
    ),
    ...by("control", ({ of }) => of.control),
    ...by("thermostat", ({ of }) => (of.thermostatted ? "yes" : "no")),
    ...by("thermometer", ({ of }) => (of.checked ? "checked" : "unchecked")),
    ...by("used tests", ({ of }) => String(of.usedTests)),
    ...by("best's setting tested", ({ bestSettingTested }) => (bestSettingTested ? "yes" : "no")),
    ...by("basis", ({ basis }) => basis ?? "none"),
    ...by("answer", ({ answer }) => answer),
    ...whereFrom(all),
  ];
}

const containerOf = (setUp: string | null): string => setUp?.split(", ").at(-1) ?? "";

/** Of the answers that lose more than allowed: what with. */
function whereFrom(all: readonly JudgedAnswer[]): readonly string[] {
  const lost = all.filter((answer) => gapOf(answer) > gapAllowed);
  const line = (name: string, met: (answer: JudgedAnswer) => boolean): string =>
    `${head(name)}${cell(percent(count(lost, met)))}`;
  return [
    `  of the ${lost.length} that lose more:`,
    line("  the thermometer loses it too", (one) => thermometerGapOf(one) > gapAllowed),
    line("  no set-up advised", ({ setUp }) => setUp === null),
    line("  another container", ({ setUp, bestSetUp }) => {
      return setUp !== null && containerOf(setUp) !== containerOf(bestSetUp);
    }),
    line("  best at a setting never tested", ({ bestSettingTested }) => !bestSettingTested),
    line("  of a tested set-up", ({ basis }) => basis === "tested"),
    line("  lost over 0.2", (one) => gapOf(one) > 0.2),
  ];
}

function answersText(all: readonly JudgedAnswer[]): readonly string[] {
  const row = (name: string, part: readonly JudgedAnswer[]): string => {
    const found = answerShares(part);
    const words = [found.can, found.may, found.cannot, found.unknown].join(" / ");
    const cells = [
      words,
      percent(found.wrongCan),
      fixed(found.canFails, 3),
      percent(found.wrongCannot),
      percent(found.foundCan),
      percent(found.foundMay),
    ];
    return head(name) + cells.map(cell).join("");
  };
  const by = (name: string, word: (answer: JudgedAnswer) => string): readonly string[] =>
    groups(all, word).map(([value, part]) => row(`  ${name} ${value}`, part));
  return [
    "",
    "(c) answers; the last two: said of those that some set-up truly serves",
    head("") +
      ["can/may/cannot/unkn.", "wrong can", "can fails", "wrong cannot", "can", "can or may"]
        .map(cell)
        .join(""),
    row("all", all),
    ...by("control", ({ of }) => of.control),
    ...by("thermostat", ({ of }) => (of.thermostatted ? "yes" : "no")),
    ...by("thermometer", ({ of }) => (of.checked ? "checked" : "unchecked")),
    ...by("used tests", ({ of }) => String(of.usedTests)),
    ...by("basis", ({ basis }) => basis ?? "none"),
  ];
}

const calibrationText = (title: string, deciles: readonly Decile[]): readonly string[] => [
  "",
  `(d) ${title}`,
  head("probability") + ["count", "mean said", "mean true"].map(cell).join(""),
  ...deciles.map(
    ({ from, count: n, said, true: held }) =>
      head(`${fixed(from, 1)}..${fixed(from + 0.1, 1)}`) +
      [String(n), fixed(said, 3), fixed(held, 3)].map(cell).join(""),
  ),
];

const told = (one: JudgedAnswer): string =>
  `  ${one.of.seed} ${one.culture} ${one.of.control}, ${one.of.usedTests} used tests: ${one.answer} "${one.setUp}" (${one.basis}), said ${fixed(one.said ?? NaN)}, true ${fixed(one.trueProbability)}, share ${fixed(one.trueShare)}; best "${one.bestSetUp}" ${fixed(one.bestShare)}, ${fixed(one.bestProbability)} ${one.obstacles.join(" ")}`;

function failureText(all: readonly JudgedAnswer[], most: number): readonly string[] {
  const list = (title: string, part: readonly JudgedAnswer[]): readonly string[] =>
    part.length === 0 ? [] : ["", `${title}: ${part.length}`, ...part.slice(0, most).map(told)];
  const worst = all
    .filter(({ of }) => of.usedTests >= 2)
    .filter((one) => gapOf(one) - Math.max(0, thermometerGapOf(one)) > 0.2)
    .toSorted((a, b) => gapOf(b) - gapOf(a));
  return [
    ...list("wrong can", all.filter(isWrongCan)),
    ...list("wrong cannot", all.filter(isWrongCannot)),
    ...list("lost more than 0.2 of the share beyond what the thermometer does", worst),
  ];
}

export function studyText(records: readonly CaseRecord[], most: number): string {
  const all = judgedAnswers(records);
  const times = records.map(({ milliseconds }) => milliseconds);
  return [
    `${records.length} appliances; analysis ${fixed(mean(times), 0)} ms in the mean, ${fixed(median(times), 0)} median, ${fixed(
      times.reduce((a, b) => Math.max(a, b), 0),
      0,
    )} longest`,
    ...coverageText(records),
    ...recommendationText(all.filter(({ of }) => of.usedTests >= 2)),
    ...answersText(all),
    ...calibrationText("set-ups advised", calibration(chosenChances(all))),
    ...calibrationText("other candidates", calibration(candidateChances(all))),
    ...groups(candidateChances(all), ({ basis }) => basis).flatMap(([basis, part]) =>
      calibrationText(`other candidates, ${basis}`, calibration(part)),
    ),
    ...failureText(all, most),
  ].join("\n");
}
