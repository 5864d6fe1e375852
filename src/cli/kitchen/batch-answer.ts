/** What `batch` answers: the batches, what was taken, what is to be thrown away, which tests are due. */
import type { RecheckDue } from "../../advice/recheck-types.ts";
import { openRawFile } from "../../folder/open-raw-file.ts";
import { dueOfSetUp, dueTests } from "../../kitchen-analysis/due-tests.ts";
import type { OpenTestFile } from "../../kitchen-analysis.ts";
import type { Kitchen } from "../../kitchen/kitchen.ts";
import type { Outcome } from "../../problem.ts";
import { asciiText, cleanText } from "../../report/clean-text.ts";
import { dueText, usualText } from "../../report/wording/recheck-due.ts";
import { spoiltBatchText } from "../../report/wording/spoilt-batch.ts";
import { wrapText } from "../../report/wrap-text.ts";
import { plainWriting, terminalWriting } from "../../report/writing.ts";
import type { CommandResult, Shell } from "../command-result.ts";
import { answered } from "../command-run.ts";
import { localDay } from "../../input/local-day.ts";
import { startProgress } from "../progress.ts";
import { batchList } from "./batch-list.ts";
import type { NumberedBatch } from "./batch-list.ts";

export interface BatchAnswer {
  readonly folder: string;
  readonly kitchen: Kitchen;
  /** Above the table; null for none. */
  readonly title: string | null;
  readonly batches: readonly NumberedBatch[];
  /** Sentences after it: what was taken. */
  readonly remarks: readonly string[];
  /** Of one batch what concerns it, of the whole log what concerns any. */
  readonly about: "one" | "all";
}

const dueIn = async (
  { folder, kitchen, batches, about }: BatchAnswer,
  shell: Shell,
): Promise<readonly RecheckDue[]> => {
  let total = 0;
  const progress = startProgress(shell.progress, () => total, Date.now);
  const open: OpenTestFile = async (file) => {
    const opened = await openRawFile(folder, file, progress.add);
    if (opened.ok) total += opened.value.bytes;
    return opened;
  };
  const today = localDay(shell.now());
  const [first] = batches;
  const found =
    about === "all"
      ? dueTests(kitchen, today, open)
      : first === undefined
        ? Promise.resolve([])
        : dueOfSetUp(kitchen, first.batch, today, open).then((one) => [one]);
  return found.finally(progress.end);
};

/** Usual separation is told where it was just logged, not of the whole log. */
const dueLines = (
  { kitchen, about, batches }: BatchAnswer,
  due: readonly RecheckDue[],
  shell: Shell,
): readonly string[] => {
  const writing = terminalWriting(kitchen.shownUnit, shell.ascii);
  const fresh = about === "one" && batches[0]?.batch.generation === 1;
  return due.flatMap((one) => [
    ...(fresh ? [usualText(one)] : []).filter((text) => text !== null),
    ...[dueText(one, kitchen, writing)].filter((text) => text !== null),
  ]);
};

const cautionsOf = ({ about, batches }: BatchAnswer): readonly string[] =>
  about === "all" ? [] : batches.flatMap(({ batch }) => spoiltBatchText(batch.trouble) ?? []);

const paragraphs = (texts: readonly string[], { width, ascii }: Shell): readonly string[] =>
  texts.flatMap((text) => ["", ...wrapText(ascii ? asciiText(text) : cleanText(text), width)]);

const dueEntry = (kitchen: Kitchen) => {
  const writing = plainWriting(kitchen.shownUnit);
  return ({ setUp, ...one }: RecheckDue) => ({
    ...setUp,
    ...one,
    text: dueText({ setUp, ...one }, kitchen, writing),
  });
};

export const batchAnswer = async (
  answer: BatchAnswer,
  options: { readonly json: boolean },
  shell: Shell,
): Promise<Outcome<CommandResult>> => {
  const { kitchen, title, batches, remarks } = answer;
  const due = await dueIn(answer, shell);
  const cautions = cautionsOf(answer);
  const table = batchList(batches, { ...shell, unit: kitchen.shownUnit });
  const below = [...cautions, ...remarks, ...dueLines(answer, due, shell)];
  const lines = [...(title === null ? [] : [title]), ...table, ...paragraphs(below, shell)];
  return answered(options, shell, lines.join("\n"), {
    batches: batches.map(({ number, batch }) => Object.assign({ number }, batch)),
    remarks,
    cautions,
    due: due.filter(({ reasons }) => reasons.length > 0).map(dueEntry(kitchen)),
  });
};
