/** The demo's kitchen, analysed as the program does it, and one night of it alone. */
import { readFile } from "node:fs/promises";
import { fileURLToPath } from "node:url";
import { analyse } from "../../src/analysis.ts";
import type { Analysis } from "../../src/analysis.ts";
import { openLoggerFile } from "../../src/folder/logger-file.ts";
import { openRawFile } from "../../src/folder/open-raw-file.ts";
import { analyseKitchen } from "../../src/kitchen-analysis.ts";
import type { KitchenAnalysis } from "../../src/kitchen-analysis-types.ts";
import { parseKitchen } from "../../src/kitchen/parse-kitchen.ts";
import type { Outcome } from "../../src/problem.ts";
import { problemText } from "../../src/problem.ts";
import { fraction } from "../../src/quantity.ts";
import { requirement } from "./sample-analysis.ts";

const folder = fileURLToPath(new URL("../../fixtures/kitchen/", import.meta.url));
const ignored = (): void => {};

const valueOf = <Value>(outcome: Outcome<Value>): Value => {
  if (!outcome.ok) throw new Error(problemText(outcome.problem));
  return outcome.value;
};

/** The whole demo kitchen, as on a day after its last test. */
export const demoKitchen = async (): Promise<KitchenAnalysis> => {
  const text = await readFile(`${folder}kitchen.yaml`, "utf8");
  const said = {
    version: "0.1.0",
    today: "2026-11-20",
    share: 0.95,
    confidence: 0.95,
    appliance: null,
  };
  return valueOf(
    await analyseKitchen(valueOf(parseKitchen(text, "kitchen.yaml")), said, (file) =>
      openRawFile(folder, file, ignored),
    ),
  );
};

/** One logger's night of the demo, jar and bath, asked about two cultures. */
export const demoNight = async (): Promise<Analysis> => {
  const name = "cooker-warm-program.csv";
  const file = valueOf(await openLoggerFile(`${folder}readings/${name}`, ignored, name));
  const request = {
    version: "0.1.0",
    requirements: [
      requirement("yoghurt-thermophilic", 38, 43, 45, 12),
      requirement("kefir", 20, 25, null, 24),
    ],
    thermometer: null,
    room: null,
    runToRun: null,
    share: fraction(0.95),
    confidence: fraction(0.95),
    shownUnit: "degC",
    reading: {},
  } as const;
  return valueOf(await analyse(request, [file]));
};
