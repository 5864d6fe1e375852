/** What is said of a test that will be typed: as the options have it, else asked where somebody can be. */
import type { Kitchen } from "../../kitchen/kitchen.ts";
import { done } from "../../problem.ts";
import type { Outcome } from "../../problem.ts";
import type { Shell } from "../command-result.ts";
import type { NewProbe } from "../kitchen/new-test.ts";
import { askSetUp } from "../kitchen/set-up-asked.ts";
import { askThermometer } from "../kitchen/thermometer-asked.ts";
import type { EnterOptions } from "./enter-shape.ts";
import { enteredProbes } from "./entered-probes.ts";
import type { SaidOfTest } from "./entered-test.ts";

const withThermometer = async (
  probes: readonly NewProbe[],
  kitchen: Kitchen,
  { thermometer }: EnterOptions,
  { asks }: Shell,
): Promise<Outcome<readonly NewProbe[]>> => {
  if (!asks || thermometer.length > 0) return done(probes);
  const asked = await askThermometer(kitchen, "Which thermometer was read?");
  return asked.ok ? done(probes.map((one) => ({ ...one, thermometer: asked.value }))) : asked;
};

/** Fails where something is missing and nobody can be asked, or is not in the kitchen. */
export const saidOfTest = async (
  kitchen: Kitchen,
  options: EnterOptions,
  shell: Shell,
): Promise<Outcome<SaidOfTest>> => {
  const named = enteredProbes(options, kitchen);
  if (!named.ok) return named;
  const setUp = await askSetUp(kitchen, options, shell);
  if (!setUp.ok) return setUp;
  const probes = await withThermometer(named.value, kitchen, options, shell);
  if (!probes.ok) return probes;
  const { room, name, fill, notes } = options;
  return done({
    ...setUp.value,
    name: name ?? null,
    fill: fill ?? null,
    room: room === undefined ? null : { low: room.low.celsius, high: room.high.celsius },
    notes: notes ?? null,
    probes: probes.value,
  });
};

/** A test in no kitchen: its readings only become a file. */
export const saidOfFile = (file: string, probes: readonly NewProbe[]): SaidOfTest => ({
  name: file,
  appliance: "",
  setting: null,
  container: "",
  fill: null,
  room: null,
  notes: null,
  probes,
});
