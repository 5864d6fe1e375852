/** What `thermometer` answers: one thermometer in full, a check that is not kept, or the list. */
import { kitchenName } from "../../folder/kitchen-bytes.ts";
import { analyseThermometer } from "../../kitchen-analysis/thermometers.ts";
import type { Kitchen, KitchenThermometer } from "../../kitchen/kitchen.ts";
import { done } from "../../problem.ts";
import type { Outcome } from "../../problem.ts";
import { thermometerEntry } from "../../report/kitchen-contract.ts";
import { askedTemperature, correctionWithUncertainty } from "../../report/temperature-text.ts";
import { thermometerContract, thermometerText } from "../../report/thermometer-terminal.ts";
import { checkedText } from "../../report/wording/thermometers.ts";
import { terminalWriting } from "../../report/writing.ts";
import type { CommandResult, Shell } from "../command-result.ts";
import { answered } from "../command-run.ts";
import { localDay } from "../../input/local-day.ts";
import { columns } from "./columns.ts";
import { doubtful } from "../../input/kitchen/doubts.ts";
import { thermometerOf } from "../../input/known-ids.ts";
import { windowsAsked } from "../../input/kitchen/windows-asked.ts";
import { newChecks } from "../../input/kitchen/new-checks.ts";
import { questionWords } from "../../report/wording/question-words.ts";
import { thermometerFindings } from "./thermometer-findings.ts";
import type { ThermometerOptions } from "../../input/kitchen/thermometer-options.ts";

/** Typed once, the height need not be typed again. */
const altitudeNote = (
  kitchen: Kitchen | null,
  { altitude }: ThermometerOptions,
  stored: string | null,
): string =>
  stored === null || altitude === undefined || kitchen === null || kitchen.altitude !== null
    ? ""
    : `\nWith "altitude: ${altitude.written}" in ${stored}, later checks need no --altitude.\n`;

const answer = (
  thermometer: KitchenThermometer,
  kitchen: Kitchen | null,
  options: ThermometerOptions,
  shell: Shell,
  stored: string | null,
): Outcome<CommandResult> => {
  const windows = windowsAsked(options, kitchen);
  if (!windows.ok) return windows;
  const found = thermometerFindings(thermometer, windows.value, localDay(shell.now()));
  const findings = { ...found, shownUnit: shownUnit(kitchen, options), stored };
  return answered(
    options,
    shell,
    thermometerText(findings, shell) + altitudeNote(kitchen, options, stored),
    thermometerContract(findings, shell.version),
  );
};

/** The kitchen's, else that of the first reading typed. */
const shownUnit = (kitchen: Kitchen | null, { ice, boiling, reads }: ThermometerOptions) =>
  kitchen?.shownUnit ?? [...ice, ...boiling, ...reads][0]?.writtenUnit ?? "degC";

export const showThermometer = (
  kitchen: Kitchen,
  id: string,
  options: ThermometerOptions,
  shell: Shell,
  stored: boolean,
): Outcome<CommandResult> => {
  const thermometer = thermometerOf(kitchen, id);
  if (!thermometer.ok) return thermometer;
  return answer(thermometer.value, kitchen, options, shell, stored ? kitchenName : null);
};

const howToKeep =
  "Nothing was stored. In a kitchen folder a name keeps it: holdband thermometer pen ...";

/** A check worked out on the spot. */
export const checkUnkept = (
  kitchen: Kitchen | null,
  options: ThermometerOptions,
  shell: Shell,
): Outcome<CommandResult> => {
  const { name = "Your thermometer", accuracy, resolution } = options;
  const thermometer: KitchenThermometer = {
    id: "",
    name,
    resolution: resolution?.celsius ?? null,
    accuracy: accuracy?.celsius ?? null,
    checks: newChecks(options, kitchen?.altitude ?? null, localDay(shell.now())),
  };
  const doubts = doubtful(null, thermometer, shownUnit(kitchen, options), questionWords);
  if (doubts !== null) return doubts;
  const result = answer(thermometer, kitchen, options, shell, null);
  if (!result.ok || options.json) return result;
  return done({ ...result.value, out: `${result.value.out}\n\n${howToKeep}` });
};

const noneYet =
  'There are no thermometers in this kitchen yet; "holdband thermometer --help" shows how to check one.';

/** Where long holds stand. */
const listedReading = 38;

export const listThermometers = (
  { thermometers, shownUnit: unit }: Kitchen,
  options: ThermometerOptions,
  shell: Shell,
): Outcome<CommandResult> => {
  const writing = terminalWriting(unit, shell.ascii);
  const all = thermometers.map((one) => analyseThermometer(one, localDay(shell.now())));
  const rows = all.map((one) => {
    const at = one.corrections.find(({ reading }) => reading === listedReading);
    const add =
      at === undefined ? "" : correctionWithUncertainty(writing, at.correction, at.expanded);
    return [one.thermometer.id, `add ${add}`, checkedText(one) ?? "not checked"];
  });
  const near = askedTemperature(writing, listedReading).replaceAll("\u00a0", " ");
  const head = `Near ${near}, with expanded uncertainty:`;
  const text = rows.length === 0 ? noneYet : [head, ...columns(rows, shell)].join("\n");
  return answered(options, shell, text, { thermometers: all.map(thermometerEntry) });
};
