/** The summary as text for a terminal. */
import type { CaseScore } from "./score-types.ts";
import type { Share, Summary, Verdicts } from "./score-summary.ts";

const percent = ({ met, of }: Share): string =>
  of === 0 ? "-" : `${((100 * met) / of).toFixed(1)} % (${met}/${of})`;

const line = (name: string, text: string): string => `${name.padEnd(38)} ${text}`;

const short = ({ met, of }: Share): string => `${met}/${of}`.padStart(9);

const verdictCells = ({ falseHolds, falseMisses, unproven }: Verdicts): string =>
  short(falseHolds) + short(falseMisses) + short(unproven);

const figure = (value: number): string =>
  (Number.isNaN(value) ? "-" : value.toFixed(3)).padStart(10);

export function summaryText(summary: Summary): string {
  const { bandError: band, verdicts } = summary;
  return [
    line("cases", String(summary.cases)),
    line("read without options", percent(summary.readWithoutOptions)),
    line("read with the options left open", percent(summary.readWithTheirOptions)),
    ...Object.entries(summary.start).map(([name, share]) =>
      line(`within 15 min, ${name}`, percent(share)),
    ),
    line("within 15 min, start, by hand", percent(summary.startByHand)),
    line("within 15 min, end", percent(summary.end)),
    line("  or before the food has left it", percent(summary.endOrLeftRange)),
    line("no hold said where there is none", percent(summary.noHoldSeen)),
    line(
      "band edges off by",
      `${band.median.toFixed(3)} degC (median), ${band.ninetieth.toFixed(3)} (90 %)`,
    ),
    line("false among holds", percent(verdicts.falseHolds)),
    line("false among misses", percent(verdicts.falseMisses)),
    line("unproven", percent(verdicts.unproven)),
    line("Brier score", summary.brierScore.toFixed(4)),
    "",
    "probability   cases   mean said   truly held",
    ...summary.reliability.map(
      ({ from, count, meanProbability, trueShare }) =>
        `${from.toFixed(1)}..${(from + 0.1).toFixed(1)}    ${String(count).padStart(7)}  ${figure(meanProbability)}   ${figure(trueShare)}`,
    ),
    "",
    `${"".padEnd(32)}    start      end    holds   misses unproven`,
    `${"".padEnd(32)}  <15 min  <15 min    false    false`,
    ...summary.splits.map(
      ({ by, value, start, end, verdicts: part }) =>
        `${by.padEnd(14)}${value.padEnd(18)}${short(start)}${short(end)}${verdictCells(part)}`,
    ),
  ].join("\n");
}

const told = ({ seed }: CaseScore, text: string): string =>
  `  --case ${String(seed).padEnd(7)}${text}`;

/** Failures worth a look, each with what makes it again. */
export function failureText(scores: readonly CaseScore[], most: number): string {
  const list = (title: string, items: readonly string[]): readonly string[] =>
    items.length === 0 ? [] : ["", `${title}: ${items.length}`, ...items.slice(0, most)];
  const faults = scores.filter(({ fault }) => fault !== null);
  const wrong = (word: string, holds: boolean): readonly string[] =>
    scores
      .filter(({ answer, truth }) => answer?.verdict === word && truth.holds === holds)
      .map((score) =>
        told(score, `p ${score.answer!.probability.toFixed(3)} ${score.description}`),
      );
  const late = scores.filter(
    ({ answer, truth, byHand }) =>
      answer !== null &&
      !byHand &&
      truth.starts.start !== null &&
      Math.abs((answer.startMinute ?? Infinity) - truth.starts.start) > 15,
  );
  const lateLines = late.map((score) =>
    told(
      score,
      `${score.answer!.startMinute?.toFixed(0) ?? "none"} for ${score.truth.starts.start!.toFixed(0)} min; ${score.description}`,
    ),
  );
  const differing = scores.filter(
    ({ program, answer }) => program && !sameAnswer(program.answer, answer),
  );
  return [
    ...list(
      "not read back",
      faults.map((score) => told(score, `${JSON.stringify(score.fault)} ${score.dialect}`)),
    ),
    ...list("false among holds", wrong("holds", false)),
    ...list("false among misses", wrong("misses", true)),
    ...list("start off by more than 15 min", lateLines),
    ...list(
      "the built program answers otherwise",
      differing.map((score) =>
        told(score, score.program!.message || JSON.stringify(score.program!.answer)),
      ),
    ),
    "",
    "Again: npx tsx tests/simulator/score.ts --case N --keep FOLDER (and the same --structure)",
  ].join("\n");
}

const sameAnswer = (one: CaseScore["answer"], other: CaseScore["answer"]): boolean =>
  one === null || other === null
    ? one === other
    : one.verdict === other.verdict && Math.abs(one.probability - other.probability) < 1e-6;
