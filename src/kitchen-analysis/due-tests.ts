/** The door for a batch just logged: which set-ups call for a water test, without deciding any. */
import { recheckDue, setUpDue } from "../advice/recheck-due.ts";
import type { RecheckDue } from "../advice/recheck-types.ts";
import type { Kitchen, SetUp } from "../kitchen/kitchen.ts";
import { setUpKey } from "../kitchen/set-up.ts";
import type { OpenTestFile } from "./kitchen-options.ts";
import { testDays } from "./test-days.ts";

/** Every set-up in use that calls for one. Reads all tests, one after the other. */
export const dueTests = async (
  kitchen: Kitchen,
  today: string,
  open: OpenTestFile,
): Promise<readonly RecheckDue[]> =>
  recheckDue({ ...kitchen, today, tests: await testDays(kitchen.tests, open) });

/** What is to be said of one set-up; its reasons may be none. Reads its tests only. */
export const dueOfSetUp = async (
  kitchen: Kitchen,
  setUp: SetUp,
  today: string,
  open: OpenTestFile,
): Promise<RecheckDue> => {
  const own = kitchen.tests.filter((test) => setUpKey(test) === setUpKey(setUp));
  return setUpDue({ ...kitchen, today, tests: await testDays(own, open) }, setUp);
};
