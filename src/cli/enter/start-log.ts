import { emptyLog } from "../../readings/typed/typed-log.ts";
import type { TypedLog } from "../../readings/typed/typed-types.ts";
import type { EnterOptions } from "./enter-shape.ts";
import type { SaidOfTest } from "./entered-test.ts";

/** A log without readings, as the options say; in the usual unit where they say none. */
export const startLog = (
  { probes }: SaidOfTest,
  { unit, date }: Pick<EnterOptions, "unit" | "date">,
  usual: TypedLog["unit"],
): TypedLog => {
  const firstDay = date === undefined ? null : Date.parse(`${date}T00:00Z`) / 86_400_000;
  const names = probes.map(({ name }) => name);
  return emptyLog(names, unit ?? usual, firstDay, unit === undefined);
};
