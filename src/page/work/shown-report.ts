/** A report's parts as the screen takes them: its names as plain text, its body as markup. */
import type { HtmlParts } from "../../report/html-page.ts";
import type { ShownReport } from "../protocol.ts";
import { plainText } from "./plain-text.ts";

/** What only the command line can be told stands in brackets behind a blank; no markup of ours looks like that. */
const optionHint = / \(--[a-z][^()<>]*\)/gu;

export const shownReport = (
  { title, heading, byline, main }: HtmlParts,
  summary: string,
): ShownReport => ({
  title: plainText(title),
  heading: plainText(heading),
  byline,
  main: main.replaceAll(optionHint, ""),
  summary,
});
