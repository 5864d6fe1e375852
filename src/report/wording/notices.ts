/** Notices as the reader sees them: accuracies in both units, the signs the screen can show. */
import { noticeText } from "../../notice.ts";
import type { Notice } from "../../notice.ts";
import { tolerance } from "../temperature-text.ts";
import { withSigns } from "../writing.ts";
import type { Writing } from "../writing.ts";

export const noticeSentence = (item: Notice, writing: Writing): string =>
  withSigns(
    writing,
    noticeText(item, (celsius) => tolerance(writing, celsius)),
  );

/** Each sentence once, in the order met. */
export const noticeSentences = (items: readonly Notice[], writing: Writing): readonly string[] => [
  ...new Set(items.map((item) => noticeSentence(item, writing))),
];
