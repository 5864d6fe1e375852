/** Kitchens made by the program's own commands, for the tests of the commands over them. */
import { mkdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { parseKitchen } from "../../../src/kitchen/parse-kitchen.ts";
import type { Kitchen } from "../../../src/kitchen/kitchen.ts";
import { problemText } from "../../../src/problem.ts";
import { holdband, root, temporaryFolder, write } from "../run-holdband.ts";
import type { Run } from "../run-holdband.ts";

export const readings = join(root, "fixtures", "kitchen", "readings");
export const cookerNight = join(readings, "adjustable-cooker.csv");
export const bathNights = [join(readings, "bath-jar.csv"), join(readings, "bath-water.tsv")];

export interface RunningKitchen {
  readonly folder: string;
  /** A command given inside the folder, as words. */
  readonly run: (...words: readonly string[]) => Run;
  /** The same, which must succeed. */
  readonly ok: (...words: readonly string[]) => string;
  readonly text: () => string;
  readonly kitchen: () => Kitchen;
}

const must = (run: Run): string => {
  if (run.exitCode !== 0) throw new Error(`exit code ${run.exitCode}: ${run.err}`);
  return run.out;
};

const opened = (folder: string): RunningKitchen => {
  const run = (...words: readonly string[]): Run => holdband(words, { cwd: folder });
  const text = (): string => readFileSync(join(folder, "kitchen.yaml"), "utf8");
  const kitchen = (): Kitchen => {
    const parsed = parseKitchen(text(), "kitchen.yaml");
    if (!parsed.ok) throw new Error(problemText(parsed.problem));
    return parsed.value;
  };
  return { folder, run, ok: (...words) => must(run(...words)), text, kitchen };
};

/** As `init` leaves it; `name` is the folder's, inside one that is gone after the test. */
export const emptyKitchen = (name = "kitchen"): RunningKitchen => {
  const around = temporaryFolder();
  must(holdband(["init", name], { cwd: around }));
  return opened(join(around, name));
};

/** One appliance of each control and two containers; no culture, no thermometer, no test. */
const equipped = `holdband: 1
unit: C
# The kitchen of these tests.
appliances:
  step-cooker:
    kind: cooker
    steps: 30..60 by 1
  bath:
    kind: circulating bath
    steps: 20..60 by 0.1
  warm-cooker:
    kind: cooker
    control: fixed
  box:
    kind: warming box
    marks: [low, 2, high]
containers:
  jars:
    stands: jars in water
  basin:
    stands: basin
`;

/** Written by hand, as a person may, so that each test need not start a process for it. */
export const equippedKitchen = (more = "", name = "kitchen"): RunningKitchen => {
  const folder = join(temporaryFolder(), name);
  mkdirSync(join(folder, "readings"), { recursive: true });
  write(folder, "kitchen.yaml", equipped + more);
  return opened(folder);
};
