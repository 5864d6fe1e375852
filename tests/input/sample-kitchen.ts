/** A constructed kitchen for the tests of what was typed, and how its edits are tried. */
import type { EditName } from "../../src/input/kitchen/kitchen-edits.ts";
import { kitchenEdits } from "../../src/input/kitchen/kitchen-edits.ts";
import { editedKitchen } from "../../src/input/kitchen/edit-kitchen-text.ts";
import type { TypedOptions } from "../../src/input/typed-options.ts";
import type { Kitchen } from "../../src/kitchen/kitchen.ts";
import { parseKitchen } from "../../src/kitchen/parse-kitchen.ts";
import { problemText } from "../../src/problem.ts";
import type { Outcome, Problem } from "../../src/problem.ts";

export const file = "kitchen.yaml";
export const today = "2026-11-20";

export const sampleText = `holdband: 1
unit: C
# What stands in this invented kitchen.
thermometers:
  pen:
    resolution: 0.1
    accuracy: 0.5
appliances:
  step-cooker:
    kind: cooker
    steps: 30..60 by 1
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
cultures: [reuteri, yoghurt]
batches:
  - date: 2026-11-02
    culture: reuteri
    appliance: step-cooker
    setting: 38
    container: jars
    generation: 1
  - date: 2026-11-09
    culture: yoghurt
    appliance: warm-cooker
    container: basin
`;

export const valueOf = <Value>(outcome: Outcome<Value>): Value => {
  if (!outcome.ok) throw new Error(problemText(outcome.problem));
  return outcome.value;
};

/** Of an outcome that must have failed. */
export const problemOf = (outcome: Outcome<unknown> | null): Problem => {
  if (outcome === null || outcome.ok) throw new Error("it did not fail");
  return outcome.problem;
};

export const kitchenOf = (text: string): Kitchen => valueOf(parseKitchen(text, file));

export const sampleKitchen = kitchenOf(sampleText);

/** Options as one types them: `--ice 0.3` is ["ice", "0.3"], a flag is ["confirm"]. */
export const typed = (...said: readonly (readonly [string, ...string[]])[]): TypedOptions =>
  Object.fromEntries(said.map(([key, ...values]) => [key, values.length === 0 ? true : values]));

/** The doubt's code in place of its sentence. */
export const sayCode = ({ code }: { readonly code: string }): string => code;

export const tryEdit = (
  name: EditName,
  words: readonly string[],
  options: TypedOptions = {},
  text = sampleText,
) => {
  const edit = kitchenEdits(sayCode)[name](words, options, today);
  return edit.ok ? editedKitchen(text, file, edit.value) : edit;
};
