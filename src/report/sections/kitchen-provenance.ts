/** What the kitchen's report was made from: every file with its hash, what was asked, what was given. */
import type { TestAnalysis } from "../../kitchen-analysis-types.ts";
import { counted, readTests, unreadTests } from "../kitchen-page.ts";
import type { KitchenPage } from "../kitchen-page.ts";
import { markup } from "../markup.ts";
import type { Markup } from "../markup.ts";
import { grouped, percent } from "../number-format.ts";
import { askedRange } from "../temperature-text.ts";
import { requirementText } from "../wording/answers.ts";
import { cultureName } from "../wording/cultures.ts";
import { more } from "./more.ts";
import { pairsTable } from "./pairs-table.ts";
import { fileRows } from "./provenance.ts";

const optionRows = ({ analysis, writing }: KitchenPage) => {
  const { kitchen, requirements, share, confidence } = analysis;
  return [
    ...requirements.map((requirement) => ({
      label: "Asked for",
      text: `${cultureName(requirement)}: ${requirementText(requirement, writing)}`,
    })),
    {
      label: "Room, unless a test says otherwise",
      text:
        kitchen.room === null
          ? "not given"
          : askedRange(writing, kitchen.room.low, kitchen.room.high),
    },
    {
      label: "Altitude",
      text:
        kitchen.altitude === null ? "not given" : `${grouped(kitchen.altitude)}${writing.space}m`,
    },
    { label: "Share of the time", text: percent(share, writing.space) },
    { label: "Confidence", text: percent(confidence, writing.space) },
  ];
};

/** Files that could not be used, by the hash the kitchen keeps of them. */
const unreadTable = ({ test }: TestAnalysis): readonly (Markup | null)[] =>
  test.files.map(({ path, sha256 }) =>
    pairsTable(path, [
      { label: "Not used", text: `of test “${test.id}”` },
      { label: "SHA-256 when it was added", text: sha256 },
    ]),
  );

export const kitchenProvenance = (page: KitchenPage): Markup => {
  const { analysis, writing } = page;
  const files = readTests(analysis).flatMap((test) => test.analysis.files);
  const unread = unreadTests(analysis);
  const count = files.length + unread.reduce((so, { test }) => so + test.files.length, 0);
  const tables = markup`${files.map((file) => fileRows(file, writing))}
${unread.flatMap(unreadTable)}`;
  return markup`
<section aria-labelledby="provenance">
<h2 id="provenance">What this report was made from</h2>
${pairsTable("Options", optionRows(page))}
${count === 0 ? null : more(`${counted(count, "file")}, with ${count === 1 ? "its hash" : "their hashes"}`, tables)}
</section>`;
};
