/** Typed readings into a kitchen: stored as CSV and listed as a water test. */
import type { Shell } from "../command-result.ts";
import { answered } from "../command-run.ts";
import type { OpenKitchen } from "../kitchen/kitchen-folder.ts";
import { draftFolder } from "./draft-files.ts";
import type { EnterOptions } from "./enter-shape.ts";
import type { EnterTarget } from "./enter-target.ts";
import { enteredTest } from "../../input/water-test/entered-test.ts";
import { askSaidOfTest } from "./said-asked.ts";

export const kitchenTarget = (
  { folder, kitchen }: OpenKitchen,
  options: EnterOptions,
  shell: Shell,
): EnterTarget => ({
  draftFolder: draftFolder(folder),
  isOwn: ({ test }) => test.appliance !== "",
  said: () => askSaidOfTest(kitchen, options, shell),
  usualUnit: kitchen.shownUnit,
  keep: async (test, log) => {
    // Judging and drawing are a large part of the program; the prompt comes up without them.
    const { storeInFolder } = await import("../kitchen/store-in-folder.ts");
    const { storedTestContract, storedTestText } = await import("../kitchen/stored-test-text.ts");
    const stored = await storeInFolder(folder, enteredTest(test, log), shell);
    if (!stored.ok) return stored;
    const { value } = stored;
    return answered(options, shell, storedTestText(value, shell), storedTestContract(value));
  },
});
