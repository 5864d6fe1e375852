/** What is said of a test that will be typed: as the options have it, else asked where somebody can be. */
import type { EnteredOptions } from "../../input/water-test/entered-options.ts";
import { enteredProbes } from "../../input/water-test/entered-probes.ts";
import type { SaidOfTest } from "../../input/water-test/entered-test.ts";
import { saidOfTest } from "../../input/water-test/said-of-test.ts";
import type { Kitchen } from "../../kitchen/kitchen.ts";
import { done } from "../../problem.ts";
import type { Outcome } from "../../problem.ts";
import type { Shell } from "../command-result.ts";
import { askSetUp } from "../kitchen/set-up-asked.ts";
import { askThermometer } from "../kitchen/thermometer-asked.ts";

const askThermometers = async (
  kitchen: Kitchen,
  { thermometer }: EnteredOptions,
): Promise<Outcome<EnteredOptions["thermometer"]>> => {
  if (thermometer.length > 0) return done(thermometer);
  const asked = await askThermometer(kitchen, "Which thermometer was read?");
  if (!asked.ok) return asked;
  return done(asked.value === null ? [] : [{ probe: null, id: asked.value }]);
};

/** Fails where something is missing and nobody can be asked, or is not in the kitchen. */
export const askSaidOfTest = async (
  kitchen: Kitchen,
  options: EnteredOptions,
  shell: Shell,
): Promise<Outcome<SaidOfTest>> => {
  if (!shell.asks) return saidOfTest(kitchen, options);
  const probes = enteredProbes(options, kitchen);
  if (!probes.ok) return probes;
  const setUp = await askSetUp(kitchen, options, shell);
  if (!setUp.ok) return setUp;
  const thermometer = await askThermometers(kitchen, options);
  if (!thermometer.ok) return thermometer;
  const { appliance, setting, container } = setUp.value;
  const said = { ...options, appliance, container, thermometer: thermometer.value };
  return saidOfTest(kitchen, setting === null ? said : { ...said, setting });
};
