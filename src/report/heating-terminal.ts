/** `heating` on a terminal: the answer, why, what the log shows of the heat, then the cool-down. */
import type { HeatingAnalysis } from "../heating-analysis.ts";
import { grouped } from "./number-format.ts";
import { askedTemperature, expandedUncertainty, temperature } from "./temperature-text.ts";
import { coloured, labelled, paragraph } from "./terminal-page.ts";
import type { TerminalOptions } from "./terminal-page.ts";
import { begunText } from "./time-text.ts";
import { noticeSentences } from "./wording/notices.ts";
import { provenanceNames, setAsideNames, verdictNames } from "./wording/names.ts";
import { probabilityText } from "./wording/probability.ts";
import {
  askedText,
  coolDownText,
  coolingText,
  equivalentText,
  heatingCautions,
  heatingNext,
  heatingReasonText,
  spellLength,
  spellText,
} from "./wording/heating.ts";
import type { HeatingWords } from "./wording/heating.ts";
import { terminalWriting, withSigns } from "./writing.ts";

interface HeatingScreen extends TerminalOptions {
  readonly analysis: HeatingAnalysis;
  readonly words: HeatingWords;
}

const headline = (screen: HeatingScreen): string[] => {
  const { step, confidence } = screen.analysis;
  const word = `[${verdictNames[step.verdict].toUpperCase()}]`;
  const chance = probabilityText(step.probability, confidence, screen.words.writing.space);
  const text = `${chance} likely to have stood at ${askedText(step, screen.words)} without a break`;
  const [first = "", ...rest] = paragraph(text, screen, `${word} `, "  ");
  return [coloured(word, step, screen) + first.slice(word.length), ...rest];
};

const reasonLines = ({ analysis, words, ...screen }: HeatingScreen): string[] =>
  analysis.step.reasons.flatMap((reason) =>
    paragraph(heatingReasonText(reason, words), screen, "  - ", "    "),
  );

const nextLines = ({ analysis, words, ...screen }: HeatingScreen): string[] => {
  const next = heatingNext(analysis.step, words);
  return next === null ? [] : labelled("Do next", next, screen);
};

const heatLines = (screen: HeatingScreen): string[] => {
  const { step } = screen.analysis;
  const { writing } = screen.words;
  const held =
    step.heldAt === null
      ? []
      : labelled(
          "Held",
          `${temperature(writing, step.heldAt)} or above for ${spellLength(step.target.minutes, writing.space)} without a break; highest ${temperature(writing, step.peak)}`,
          screen,
        );
  return [
    ...labelled("Spell", spellText(step, screen.words), screen),
    ...held,
    ...labelled("Effect", equivalentText(step, screen.words), screen),
    ...labelled("Asked", withSigns(writing, step.target.from.source), screen),
  ];
};

const doubtLines = ({ analysis, words: { writing }, ...screen }: HeatingScreen): string[] => {
  const { step, thermometerId } = analysis;
  const [largest] = step.uncertainty;
  const named = thermometerId === null ? "" : ` by ${thermometerId}`;
  const mostly =
    largest === undefined ? "" : `; mostly ${largest.source} (${provenanceNames[largest.from]})`;
  const text = `${expandedUncertainty(writing, step.expandedUncertainty)} at ${askedTemperature(writing, step.target.celsius)}${named}${mostly}`;
  return labelled("Doubt", text, screen);
};

const coolLines = ({ analysis, words, ...screen }: HeatingScreen): string[] => {
  if (analysis.coolDowns.length > 0)
    return [
      ...analysis.coolDowns.flatMap((cool) => labelled("Cool", coolDownText(cool, words), screen)),
      ...[coolingText(analysis.coolDowns, words)].flatMap((text) =>
        text === null ? [] : labelled("Cooling", text, screen),
      ),
    ];
  const ask = "say --culture ID or --until 43C to be told when it is cool enough";
  return labelled("Cool", ask, screen);
};

const fileLines = ({ analysis, words, ...screen }: HeatingScreen): string[] => {
  const { readings } = analysis.file;
  const begun = begunText(words.startWallClock);
  const aside = readings.setAside.map(
    ({ reason, count, firstLine }) =>
      `${grouped(count)} (${setAsideNames[reason]}; first at line ${firstLine})`,
  );
  const parts = [
    `${readings.name}, ${analysis.probe}: ${grouped(readings.rowsUsed)} of ${grouped(readings.rowsRead)} rows used`,
    ...(begun === null ? [] : [begun]),
    ...(aside.length === 0 ? [] : [`set aside: ${aside.join("; ")}`]),
  ];
  return labelled("Readings", parts.join("; "), screen);
};

/** The answer as text, lines parted by "\n", ending in one. */
export const toHeatingTerminal = (analysis: HeatingAnalysis, options: TerminalOptions): string => {
  const writing = terminalWriting(analysis.shownUnit, options.ascii);
  const { readings } = analysis.file;
  const words = {
    writing,
    startWallClock: readings.startWallClock,
    confidence: analysis.confidence,
  };
  const screen: HeatingScreen = { ...options, analysis, words };
  const notices = noticeSentences([...readings.notices, ...analysis.notices], writing);
  return [
    ...headline(screen),
    ...reasonLines(screen),
    ...nextLines(screen),
    ...heatLines(screen),
    ...coolLines(screen),
    ...doubtLines(screen),
    ...fileLines(screen),
    ...notices.flatMap((text) => labelled("Note", text, screen)),
    ...heatingCautions.flatMap((text) => labelled("Caution", text, screen)),
    "",
  ].join("\n");
};
