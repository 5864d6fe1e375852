/** `enter`: readings typed by hand, at the terminal or through a pipe, into a kitchen or a file. */
import { enteredRepeatable } from "../../input/water-test/entered-options.ts";
import { commandRun } from "../command-run.ts";
import { folderOf, openKitchen } from "../kitchen/kitchen-folder.ts";
import { enterShape, outAlone } from "./enter-shape.ts";
import { fileTarget } from "./file-target.ts";
import { kitchenTarget } from "./kitchen-target.ts";
import { takeReadings } from "./take-readings.ts";
import { isFreeName } from "./write-new-file.ts";

export const enter = commandRun(enterShape, enteredRepeatable, async (_, options, shell) => {
  const alone = outAlone(options);
  if (!alone.ok) return alone;
  if (options.out === undefined) {
    const opened = await openKitchen(folderOf(options));
    if (!opened.ok) return opened;
    return takeReadings(kitchenTarget(opened.value, options, shell), options, shell);
  }
  const free = await isFreeName(options.out);
  if (!free.ok) return free;
  return takeReadings(fileTarget(options.out, options, shell), options, shell);
});
