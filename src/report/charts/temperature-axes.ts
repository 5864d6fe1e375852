/** The person's unit on the left, the other on the right, each with its own round ticks. */
import type { TemperatureUnit } from "../../quantity.ts";
import { otherUnit } from "../writing.ts";
import { colour, fromOther, signOf, toOther } from "./chart-theme.ts";
import type { Size, Spec } from "./chart-theme.ts";
import { multiples, roundStep } from "./scale-range.ts";
import type { Stretch } from "./scale-range.ts";

export const leftAxis = (unit: TemperatureUnit, domain: Stretch, ticks: number): Spec => {
  const values = multiples(domain, roundStep(domain.high - domain.low, ticks));
  const last = values[values.length - 1];
  return {
    values,
    labelExpr: `datum.value === ${last ?? 0} ? datum.label + ' ${signOf(unit)}' : datum.label`,
    grid: true,
  };
};

/** Ticks and labels as marks just right of the plot, since they share the left scale. */
export const rightAxis = (
  unit: TemperatureUnit,
  domain: Stretch,
  ticks: number,
  plotWidth: number,
  size: Size,
): Spec => {
  const other = {
    low: toOther(unit, domain.low),
    high: toOther(unit, domain.high),
  };
  const step = roundStep(other.high - other.low, ticks);
  const values = multiples(other, step);
  const decimals = step < 1 ? 1 : 0;
  const last = values.length - 1;
  return {
    data: {
      values: values.map((value, index) => ({
        at: fromOther(unit, value),
        label: value.toFixed(decimals) + (index === last ? ` ${signOf(otherUnit(unit))}` : ""),
      })),
    },
    mark: {
      type: "text",
      align: "left",
      baseline: "middle",
      color: colour.muted,
      fontSize: size.text,
    },
    encoding: {
      x: { value: plotWidth + 7 },
      y: { field: "at", type: "quantitative" },
      text: { field: "label" },
    },
  };
};
