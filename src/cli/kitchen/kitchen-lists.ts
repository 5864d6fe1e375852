/** What a kitchen holds, as tables for a terminal. */
import type { Appliance, Container, Control, Kitchen } from "../../kitchen/kitchen.ts";
import { celsiusDifferenceToFahrenheit, celsiusToFahrenheit } from "../../quantity.ts";
import type { TemperatureUnit } from "../../quantity.ts";
import { short } from "../../report/number-format.ts";
import { columns } from "./columns.ts";

interface Page {
  readonly width: number;
  readonly ascii: boolean;
}

const stepsText = (
  { low, high, step }: Extract<Control, { kind: "steps" }>,
  unit: TemperatureUnit,
): string => {
  const shown = (value: number): string =>
    short(unit === "degC" ? value : celsiusToFahrenheit(value), 2);
  const size = unit === "degC" ? step : celsiusDifferenceToFahrenheit(step);
  return `${shown(low)} to ${shown(high)} ${unit} in steps of ${short(size, 2)}`;
};

export const controlText = (control: Control, unit: TemperatureUnit): string => {
  if (control.kind === "fixed") return "nothing to set";
  if (control.kind === "programs") return `programs ${control.programs.join(", ")}`;
  if (control.kind === "marks") return `marks ${control.marks.join(", ")}`;
  return stepsText(control, unit);
};

const thermostatText = ({ thermostat }: Appliance): string => {
  if (thermostat === null) return "thermostat not known";
  return thermostat ? "with thermostat" : "no thermostat";
};

/** What it is called, where that tells more than its id and what it is. */
const ownName = (
  { id, name }: { readonly id: string; readonly name: string },
  what: string,
): string => ([id, what].includes(name.toLowerCase()) || name === id ? "" : name);

const testsText = (count: number): string => `${count} ${count === 1 ? "test" : "tests"}`;

export const applianceList = ({ appliances, tests, shownUnit }: Kitchen, page: Page) =>
  columns(
    appliances.map((one) => [
      one.id,
      testsText(tests.filter(({ appliance }) => appliance === one.id).length),
      [
        ownName(one, one.kind),
        one.kind,
        controlText(one.control, shownUnit),
        thermostatText(one),
        one.movedOn === null ? "" : `moved or repaired ${one.movedOn}`,
      ]
        .filter((text) => text !== "")
        .join("; "),
    ]),
    page,
  );

const vesselText = ({ volume, count }: Container): string => {
  const litres = volume === null ? "" : `${short(volume, 3)} L`;
  if (count === null || count === 1) return litres;
  return litres === "" ? `${count} of them` : `${count} of ${litres}`;
};

export const containerList = ({ containers, tests }: Kitchen, page: Page) =>
  columns(
    containers.map((one) => [
      one.id,
      testsText(tests.filter(({ container }) => container === one.id).length),
      [
        ownName(one, one.stands),
        one.stands,
        vesselText(one),
        one.changedOn === null ? "" : `changed ${one.changedOn}`,
      ]
        .filter((text) => text !== "")
        .join("; "),
    ]),
    page,
  );
