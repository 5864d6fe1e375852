/** Which probes a new file has, where each sat and what thermometer it is: as said, else as found. */
import type { TestProbe } from "../../kitchen/kitchen.ts";
import { done, failed } from "../../problem.ts";
import type { Outcome } from "../../problem.ts";
import { meansProbe } from "../../readings/columns/probe-names.ts";
import type { Series } from "../../readings/series.ts";
import type { NewTestFile } from "./new-test.ts";
import type { ReadSource } from "./read-source.ts";

const thermometerOf = (
  { thermometers = [] }: NewTestFile<unknown>,
  probe: Series,
): string | null => {
  const own = thermometers.find((one) => one.probe !== null && meansProbe(one.probe, probe));
  return (own ?? thermometers.find((one) => one.probe === null))?.id ?? null;
};

/** As kitchen.yaml lists them. */
export const testProbes = (
  file: NewTestFile<unknown>,
  { readings }: ReadSource,
): readonly TestProbe[] =>
  file.probes ??
  readings.probes.map((probe) => ({
    name: probe.name,
    place: probe.role,
    thermometer: thermometerOf(file, probe),
  }));

/** A probe named on the command line that no file has: a mistyped name must not pass for one heeded. */
export const strayProbe = (
  files: readonly NewTestFile<unknown>[],
  read: readonly ReadSource[],
): Outcome<void> => {
  const probes = read.flatMap(({ readings }) => readings.probes);
  const said = files.flatMap(({ readingOptions, thermometers = [] }) => [
    ...[...(readingOptions.roles?.keys() ?? [])].map((name) => ({ option: "--probe", name })),
    ...thermometers.flatMap(({ probe: name }) =>
      name === null ? [] : { option: "--thermometer", name },
    ),
  ]);
  const stray = said.find(({ name }) => !probes.some((probe) => meansProbe(name, probe)));
  if (stray === undefined) return done(undefined);
  const names = probes.map(({ name }) => `"${name}"`).join(", ");
  return failed("probe-unknown", { option: stray.option, probe: stray.name, probes: names });
};
