import type { Batch, Kitchen, SetUp } from "../kitchen/kitchen.ts";
import { setUpKey } from "../kitchen/set-up.ts";
import type { AdviceInput, DecidedSetUp } from "./advice-input.ts";
import type { BatchFinding, Recheck } from "./recheck-types.ts";
import { isSeparated, separationAssociation } from "./separation-association.ts";
import { separationCauses } from "./separation-causes.ts";

/** What the log and the tests say together: one finding for each set-up and culture of the log. */
export const batchFindings = (
  input: AdviceInput,
  rechecks: readonly Recheck[],
): readonly BatchFinding[] =>
  groupsOf(input).flatMap(({ setUp, culture, batches }): readonly BatchFinding[] => {
    const known = input.kitchen.cultures.find(({ id }) => id === culture);
    // Asked about some cultures only, the log still names the others.
    if (known === undefined) return [];
    const tested = testedSetUp(input, setUp);
    const now = nowOf(input, rechecks, tested, culture);
    const outside = now !== null && now.verdict === "misses";
    const finding: BatchFinding = {
      setUp,
      culture,
      batches: batches.length,
      separated: batches.filter(isSeparated).length,
      now,
      causes: outside
        ? []
        : separationCauses(batches, { culture: known, level: tested?.mean ?? null }),
      association: separationAssociation(outcomesOf(input, culture)),
    };
    return [finding];
  });

interface Group {
  readonly setUp: SetUp;
  readonly culture: string;
  readonly batches: readonly Batch[];
}

/** In the order in which they first stand in the log; only of the appliance looked at. */
const groupsOf = ({ kitchen, appliance }: AdviceInput): readonly Group[] => {
  const groups = new Map<string, { setUp: SetUp; culture: string; batches: Batch[] }>();
  for (const batch of kitchen.batches) {
    if (appliance !== null && batch.appliance !== appliance) continue;
    const key = JSON.stringify([setUpKey(batch), batch.culture]);
    const { setting, container, culture } = batch;
    const setUp = { appliance: batch.appliance, setting, container };
    const group = groups.get(key) ?? { setUp, culture, batches: [] };
    groups.set(key, group);
    group.batches.push(batch);
  }
  return [...groups.values()];
};

const testedSetUp = ({ setUps }: AdviceInput, setUp: SetUp): DecidedSetUp | null =>
  setUps.find((one) => setUpKey(one.setUp) === setUpKey(setUp)) ?? null;

/** The newest test's word; where there is only one, the set-up's verdict is that. */
const nowOf = (
  { requirements }: AdviceInput,
  rechecks: readonly Recheck[],
  tested: DecidedSetUp | null,
  culture: string,
): BatchFinding["now"] => {
  if (tested === null) return null;
  const recheck = rechecks.find((one) => setUpKey(one.setUp) === setUpKey(tested.setUp));
  const newest = recheck?.cultures.find((one) => one.culture === culture);
  if (newest !== undefined) return newest.now;
  const verdict = tested.verdicts[requirements.findIndex((one) => one.culture === culture)];
  return verdict === undefined
    ? null
    : { verdict: verdict.verdict, probability: verdict.probability };
};

/** Each batch of a culture with the margin of its set-up's band to the window. */
const outcomesOf = (input: AdviceInput, culture: string) => {
  const requirement = input.requirements.find((one) => one.culture === culture);
  return input.kitchen.batches
    .filter((batch) => batch.culture === culture)
    .map((batch) => ({ batch, margin: marginOf(input, batch, requirement) }));
};

const marginOf = (
  input: AdviceInput,
  batch: Kitchen["batches"][number],
  requirement: AdviceInput["requirements"][number] | undefined,
): number | null => {
  const tests = input.tests.flatMap(({ setUp, settled }) =>
    settled !== null && setUpKey(setUp) === setUpKey(batch) ? [settled.evidence.hold.band] : [],
  );
  const band = tests.at(-1);
  if (band === undefined || requirement === undefined) return null;
  return Math.min(band.low - requirement.low, requirement.high - band.high);
};
