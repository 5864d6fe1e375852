/** Typed readings into a CSV file of their own, and no kitchen. */
import { basename, dirname, resolve } from "node:path";
import { done } from "../../problem.ts";
import { typedCsv } from "../../readings/typed/typed-csv.ts";
import type { Shell } from "../command-result.ts";
import { answered } from "../command-run.ts";
import { quoted } from "../kitchen/shell-word.ts";
import type { EnterOptions } from "./enter-shape.ts";
import type { EnterTarget } from "./enter-target.ts";
import { summaryText } from "./enter-text.ts";
import { enteredProbes } from "../../input/water-test/entered-probes.ts";
import { readProbesOnly } from "../../input/water-test/entered-test.ts";
import { saidOfFile } from "../../input/water-test/said-of-test.ts";
import { writeNewFile } from "./write-new-file.ts";

export const fileTarget = (file: string, options: EnterOptions, shell: Shell): EnterTarget => ({
  draftFolder: dirname(resolve(file)),
  isOwn: ({ test }) => test.appliance === "" && test.name === basename(file),
  said: async () => {
    const probes = enteredProbes(options, null);
    return probes.ok ? done(saidOfFile(basename(file), probes.value)) : probes;
  },
  usualUnit: "degC",
  keep: async (_, typed) => {
    const log = readProbesOnly(typed);
    const written = await writeNewFile(file, typedCsv(log));
    if (!written.ok) return written;
    const { unit, probes, readings } = log;
    const text = `Written to ${file}: ${summaryText(log)}.\n"holdband add ${quoted(file)}" takes it into a kitchen.`;
    return answered(options, shell, text, { file, readings: readings.length, unit, probes });
  },
});
