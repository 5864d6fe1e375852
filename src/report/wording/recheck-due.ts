/** Why a set-up calls for a water test, in one sentence; the same in every rendering. */
import type { DueReason, RecheckDue } from "../../advice/recheck-types.ts";
import type { Kitchen } from "../../kitchen/kitchen.ts";
import type { Writing } from "../writing.ts";
import { sentence } from "./everyday-names.ts";
import { theSetUp } from "./set-up-phrases.ts";

type Names = Pick<Kitchen, "appliances" | "containers">;
type Reason<Code extends DueReason["code"]> = Extract<DueReason, { readonly code: Code }>;

const practice = "common practice, no source";

const separatedLater = ({ generation, date }: Reason<"separated-later">): string =>
  generation === null
    ? `whey separated in the batch of ${date}, whose generation nobody said`
    : `whey separated in generation ${generation}, in the batch of ${date}`;

const twoInThree = ({ separated, of: looked }: Reason<"two-in-three">): string =>
  separated === looked
    ? `whey separated in each of the last ${looked} batches`
    : `whey separated in ${separated} of the last ${looked} batches`;

const neverTested = ({ batches }: Reason<"never-tested">): string =>
  `${batches === 1 ? "a batch was" : `${batches} batches were`} made in it, and no water test of it is known`;

const afterTest = (lastTested: string | null): string =>
  lastTested === null ? "" : `, after its last test, of ${lastTested}`;

/** The last test is named once. */
const changed = ({ date }: Reason<"container-changed">, { reasons, lastTested }: RecheckDue) => {
  const named = reasons.some(({ code }) => code === "season" || code === "appliance-moved");
  return `the container was changed on ${date}${named ? "" : afterTest(lastTested)}`;
};

const moved = ({ date }: Reason<"appliance-moved">, { reasons, lastTested }: RecheckDue) => {
  const named = reasons.some(({ code }) => code === "season");
  return `the appliance was moved or repaired on ${date}${named ? "" : afterTest(lastTested)}`;
};

const clause = (reason: DueReason, due: RecheckDue): string => {
  switch (reason.code) {
    case "separated-later":
      return separatedLater(reason);
    case "two-in-three":
      return twoInThree(reason);
    case "never-tested":
      return neverTested(reason);
    case "season":
      return `its last test, of ${due.lastTested}, is ${reason.monthsAgo} months old`;
    case "appliance-moved":
      return moved(reason, due);
    case "container-changed":
      return changed(reason, due);
  }
};

/** Twice in three says it already; of several cultures the first is as good as the others. */
const told = (reasons: readonly DueReason[]): readonly DueReason[] => {
  const twice = reasons.findIndex(({ code }) => code === "two-in-three");
  return reasons.filter(({ code }, at) =>
    code === "two-in-three" ? at === twice : twice === -1 || code !== "separated-later",
  );
};

/** "Test the cooker at 38 °C (100.4 °F), jars, once with water before the next batch: ..."; null where nothing is due. */
export const dueText = (due: RecheckDue, kitchen: Names, writing: Writing): string | null => {
  if (due.reasons.length === 0) return null;
  const why = told(due.reasons).map((reason) => clause(reason, due));
  const setUp = theSetUp(kitchen, due.setUp, writing);
  return sentence(
    `test ${setUp}, once with water before the next batch: ${why.join("; ")} (${practice})`,
  );
};

/** Of separation that is no reason; null where there is none. */
export const usualText = ({ usual }: Pick<RecheckDue, "usual">): string | null =>
  usual.length === 0
    ? null
    : `Separation in the first generation of a fresh starter is usual and by itself no reason for a test (${practice}).`;
