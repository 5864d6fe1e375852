import { agreementOf } from "./agreement.ts";
import { constructedOnly } from "./constructed-only.ts";
import type { ReferenceBlock, ReferenceGroup } from "./reference-values.ts";

/** Bars would end a cell. */
const cell = (text: string): string => text.replaceAll("|", "\\|");

const blockLines = ({ source, asked, because, values }: ReferenceBlock): readonly string[] => [
  `**Source**: ${source}. **Tolerance**: ${because}.`,
  "",
  "| value | reference | found | agreement | asked |",
  "| --- | --- | --- | --- | --- |",
  ...values.map((one) => {
    const seen = agreementOf(one, one.asked ?? asked);
    const cells = [one.what, one.published, seen.found, seen.agreement, seen.asked];
    return `| ${cells.map(cell).join(" | ")} |`;
  }),
  "",
];

const groupLines = ({ title, about, blocks }: ReferenceGroup): readonly string[] => [
  `## ${title}`,
  "",
  `Checks ${about.map((file) => `\`src/${file}.ts\``).join(", ")}.`,
  "",
  ...blocks.flatMap(blockLines),
];

/** How many values a list of groups holds. */
export const countValues = (groups: readonly ReferenceGroup[]): number =>
  groups.flatMap(({ blocks }) => blocks.flatMap(({ values }) => values)).length;

/** The table of all values from outside, as Markdown; ends with what has none. */
export const referenceTable = (groups: readonly ReferenceGroup[]): string =>
  [
    "# Values from outside",
    "",
    `Written by \`npm run references\` from the rows the tests assert: ${countValues(groups)} values. ` +
      "Found values are shown to the digits that agree, or to the decimals of the reference; agreement is " +
      "cut to whole digits, differences to the next 1, 2 or 5, so that the last rounding of a machine " +
      "does not change this file. Where a source says from memory, the work was not read again.",
    "",
    ...groups.flatMap(groupLines),
    "## Checked by constructed cases only",
    "",
    "No value from outside was found for these, or for the part named.",
    "",
    ...constructedOnly.map(([file, how]) => `- \`${file}\`: ${how}`),
    "",
  ].join("\n");
