/** A kitchen, a shell and a prompter for tests of `enter`; all invented. */
import { mkdirSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import type { Shell } from "../../../src/cli/command-result.ts";
import type { Prompter } from "../../../src/cli/enter/prompter.ts";
import { root, temporaryFolder, write } from "../run-holdband.ts";

const kitchenText = `holdband: 1
unit: C
thermometers:
  pen:
    resolution: 0.1
    accuracy: 0.3
appliances:
  step-cooker:
    name: Adjustable cooker
    kind: cooker
    steps: 30..60 by 1
    thermostat: yes
  box:
    kind: warming box
    control: fixed
containers:
  jars:
    stands: jars in water
cultures:
  - reuteri
`;

/** A kitchen folder that is gone after the test. */
export const testKitchen = (text = kitchenText): string => {
  const folder = temporaryFolder();
  mkdirSync(join(folder, "readings"));
  write(folder, "kitchen.yaml", text);
  return folder;
};

/** Eight readings by hand: cold water, then a level near 38 (constructed). */
export const night = [
  "21:30 20.1",
  "22:30 36.4",
  "23:30 38.2 # lid opened",
  "0:30 38.1",
  "2:00 38.3",
  "4:10 38.0",
  "6:00 38.2",
  "7:00 38.1",
];

/** The morning after, by the clock where the test runs. */
export const shellWith = (input: string, more: Partial<Shell> = {}): Shell => ({
  version: "0.0.0",
  packageRoot: pathToFileURL(root),
  colour: false,
  ascii: false,
  width: 80,
  progress: null,
  asks: false,
  now: () => new Date(2026, 9, 4, 8, 0),
  input: (async function* () {
    yield new TextEncoder().encode(input);
  })(),
  ...more,
});

/** Types the lines one after the other, then stops as Ctrl-C would; `shown` is all it was told. */
export const scripted = (
  lines: readonly string[],
): { readonly prompter: Prompter; readonly shown: () => string } => {
  const left = [...lines];
  let shown = "";
  const show = (text: string): void => {
    shown += `${text}\n`;
  };
  const line = (prompt: string): Promise<string | null> => {
    const next = left.shift() ?? null;
    show(prompt + (next ?? ""));
    return Promise.resolve(next);
  };
  const prompter = { line, say: show, echo: show, warn: show, close: () => undefined };
  return { prompter, shown: () => shown };
};
