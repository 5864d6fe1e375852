/** The thermometer behind one night: checked just now, or one of the kitchen's. */
import type { AnalysisRequest, ProbeThermometer } from "../../analysis-types.ts";
import { editedKitchen } from "../../input/kitchen/edit-kitchen-text.ts";
import { kitchenEdits } from "../../input/kitchen/kitchen-edits.ts";
import { thermometerOf } from "../../input/known-ids.ts";
import { analyseThermometer } from "../../kitchen-analysis/thermometers.ts";
import type { Kitchen } from "../../kitchen/kitchen.ts";
import { parseKitchen } from "../../kitchen/parse-kitchen.ts";
import { done } from "../../problem.ts";
import type { Outcome } from "../../problem.ts";
import { questionWords } from "../../report/wording/question-words.ts";
import { statementAt } from "../../thermometer/correction-at.ts";
import { readingBehind } from "../../thermometer/reading-behind.ts";
import type { FormValues } from "../protocol.ts";
import { kitchenFile } from "./memory-store.ts";

/** Options of `thermometer` that one night's form asks too. */
const checkKeys: ReadonlySet<string> = new Set([
  "ice",
  "boiling",
  "altitude",
  "pressure",
  "pressureAt",
  "reference",
  "reads",
  "referenceUncertainty",
  "confirm",
]);

const keptKey = "kitchenThermometer";

export interface NightOptions {
  /** Options of `check`. */
  readonly check: FormValues;
  /** Readings in ice, in boiling water and beside a better thermometer. */
  readonly checks: FormValues;
  /** Id of one of the kitchen's; null for none. */
  readonly kept: string | null;
}

/** The form's values, parted by whose they are. */
export const nightOptions = (values: FormValues): NightOptions => {
  const entries = Object.entries(values).filter(([key]) => key !== keptKey);
  const kept = values[keptKey];
  return {
    check: Object.fromEntries(entries.filter(([key]) => !checkKeys.has(key))),
    checks: Object.fromEntries(entries.filter(([key]) => checkKeys.has(key))),
    kept: Array.isArray(kept) ? String(kept[0]) : null,
  };
};

/** A name that none of the kitchen's thermometers has. */
const freeId = ({ thermometers }: Kitchen): string => {
  const taken = new Set(thermometers.map(({ id }) => id));
  let id = "this-night";
  while (taken.has(id)) id += "-too";
  return id;
};

/** As if it were entered into the kitchen, whose height above the sea then counts: the same questions, the same line. */
const checkedNow = (
  kitchen: Kitchen,
  text: string,
  checks: FormValues,
  today: string,
): Outcome<ProbeThermometer> => {
  const id = freeId(kitchen);
  const edit = kitchenEdits(questionWords).thermometer([id], checks, today);
  if (!edit.ok) return edit;
  const edited = editedKitchen(text, kitchenFile, edit.value);
  if (!edited.ok) return edited;
  return ofKitchen(edited.value.after, id, today);
};

const ofKitchen = (kitchen: Kitchen, id: string, today: string): Outcome<ProbeThermometer> => {
  const known = thermometerOf(kitchen, id);
  if (!known.ok) return known;
  return done({ id, model: analyseThermometer(known.value, today).model });
};

const anyCheck = (checks: FormValues): boolean =>
  Object.keys(checks).some((key) => key !== "confirm");

/** null where nothing was said of it but what `check` knows itself. Fails as `thermometer` does. */
export const nightThermometer = (
  text: string,
  { checks, kept }: Pick<NightOptions, "checks" | "kept">,
  today: string,
): Outcome<ProbeThermometer | null> => {
  if (kept === null && !anyCheck(checks)) return done(null);
  const kitchen = parseKitchen(text, kitchenFile);
  if (!kitchen.ok) return kitchen;
  return kept === null
    ? checkedNow(kitchen.value, text, checks, today)
    : ofKitchen(kitchen.value, kept, today);
};

/** The request with that thermometer behind every probe; what it says at the middle of the window stands for it. */
export const withThermometer = (
  request: AnalysisRequest,
  thermometer: ProbeThermometer | null,
): AnalysisRequest => {
  const [window] = request.requirements;
  if (thermometer === null || window === undefined) return request;
  const { model } = thermometer;
  const middle = readingBehind(model, (window.low + window.high) / 2);
  return {
    ...request,
    thermometer: statementAt(model, middle),
    checkedThermometer: thermometer,
  };
};
