/** What is said after a water test was stored: where it is, and what the night says. */
import { toContract } from "../../report/contract.ts";
import { toTerminal } from "../../report/terminal.ts";
import { wrapText } from "../../report/wrap-text.ts";
import type { Shell } from "../command-result.ts";
import type { StoredTest } from "../../input/water-test/new-test.ts";

const noCulture =
  'No culture is listed in this kitchen, so nothing was judged. "holdband culture" lists those in the catalogue, "holdband culture yoghurt" takes one in.';

const next =
  'This judges the night by itself; "holdband report" weighs it together with the other tests.';

export const storedTestText = ({ id, files, reading }: StoredTest, shell: Shell): string => {
  const { colour, ascii, width } = shell;
  const { analysis } = reading;
  const judged = analysis?.probes.some(({ verdicts }) => verdicts.length > 0) === true;
  const night = analysis === null ? "" : toTerminal(analysis, { colour, ascii, width }).trimEnd();
  return [
    `Stored as ${id}: ${files.join(", ")}`,
    "",
    night,
    "",
    ...wrapText(judged ? next : noCulture, width),
  ].join("\n");
};

export const storedTestContract = ({
  id,
  files,
  reading,
}: StoredTest): Readonly<Record<string, unknown>> => ({
  ...(reading.analysis === null ? {} : toContract(reading.analysis)),
  test: { id, files },
});
