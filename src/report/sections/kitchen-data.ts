/** What was read from each test's files, what was set aside, and what the program noticed. */
import { noticeText } from "../../notice.ts";
import { readTests } from "../kitchen-page.ts";
import type { KitchenPage } from "../kitchen-page.ts";
import { markup } from "../markup.ts";
import type { Markup } from "../markup.ts";
import { fileBlock, noticeList } from "./data-quality.ts";

/** Notices of the kitchen and of whole tests, each once, without those its file already tells. */
const otherNotices = ({ analysis }: KitchenPage): readonly string[] => {
  const tests = readTests(analysis);
  const told = new Set(
    tests.flatMap((test) =>
      test.analysis.files.flatMap(({ readings }) => readings.notices.map(noticeText)),
    ),
  );
  const all = [...analysis.notices, ...tests.flatMap((test) => test.analysis.notices)].map(
    noticeText,
  );
  return [...new Set(all)].filter((text) => !told.has(text));
};

export const kitchenData = (page: KitchenPage): Markup | null => {
  const files = readTests(page.analysis).flatMap((test) => test.analysis.files);
  const others = otherNotices(page);
  if (files.length === 0 && others.length === 0) return null;
  return markup`
<section aria-labelledby="data">
<h2 id="data">The readings</h2>
${files.map((file) => fileBlock(file, page.writing))}
${others.length === 0 ? null : markup`<h3>Also noted</h3>\n${noticeList(others, page.writing)}`}
</section>`;
};
