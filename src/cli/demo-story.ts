/** Which invented nights the demo shows, and what is asked about them. */
import type { TypedOptions } from "./command-line.ts";
import { flagName } from "./flag-name.ts";

export const demoFiles: readonly string[] = [
  "cooker-warm-program.csv",
  "adjustable-cooker.csv",
  "warming-box.txt",
];

export const demoOptions: TypedOptions = {
  culture: ["reuteri", "warm-blend"],
  correction: ["0.1"],
  correctionUncertainty: ["0.1"],
  room: ["18..24"],
};

/** The options as one would type them, one line each. */
export const demoCommand: readonly string[] = Object.entries(demoOptions).flatMap(
  ([key, values]) =>
    typeof values === "boolean"
      ? [flagName(key)]
      : values.map((value) => `${flagName(key)} ${value}`),
);
