/** The options that a person would type, as the core's request. */
import type { AnalysisRequest } from "../../src/analysis.ts";
import { celsius, celsiusDifference, fraction, hours } from "../../src/quantity.ts";
import type { ProbeRole } from "../../src/readings/series.ts";

/** `--name value` and `--name=value` by name; `--probe` may come several times. */
export function optionValues(options: readonly string[]): ReadonlyMap<string, readonly string[]> {
  const values = new Map<string, readonly string[]>();
  for (let index = 0; index < options.length; index += 1) {
    const [name = "", joined] = options[index]!.split(/=(.*)/s);
    const value = joined ?? options[(index += 1)] ?? "";
    values.set(name, [...(values.get(name) ?? []), value]);
  }
  return values;
}

export function requestOf(options: readonly string[]): AnalysisRequest {
  const values = optionValues(options);
  const number = (name: string): number => Number(values.get(name)?.[0] ?? NaN);
  const optional = (name: string): number | null => (values.has(name) ? number(name) : null);
  const accuracy = optional("--thermometer-accuracy");
  const ceiling = optional("--ceiling");
  const room = values.get("--room")?.[0]?.split("..").map(Number);
  const share = fraction(0.95);
  return {
    version: "0",
    requirements: [
      {
        culture: "window",
        name: "",
        low: celsius(number("--low")),
        high: celsius(number("--high")),
        ceiling: ceiling === null ? null : celsius(ceiling),
        hours: hours(number("--hours")),
        share,
      },
    ],
    thermometer: {
      correction: celsiusDifference(optional("--correction") ?? 0),
      standardUncertainty: celsiusDifference(
        accuracy === null ? number("--correction-uncertainty") : accuracy / Math.sqrt(3),
      ),
      from: "stated",
      accuracy: accuracy === null ? null : celsiusDifference(accuracy),
    },
    room: room === undefined ? null : { low: room[0]!, high: room[1]! },
    runToRun: celsiusDifference(number("--run-to-run")),
    share,
    confidence: 0.95,
    shownUnit: "degC",
    reading: readingOptions(values),
  };
}

function readingOptions(values: ReturnType<typeof optionValues>): AnalysisRequest["reading"] {
  const roles = (values.get("--probe") ?? []).map((text) => {
    const cut = text.lastIndexOf("=");
    return [text.slice(0, cut), text.slice(cut + 1) as ProbeRole] as const;
  });
  const interval = values.get("--interval")?.[0];
  const order = values.get("--date-order")?.[0];
  return {
    ...(roles.length === 0 ? {} : { roles: new Map(roles) }),
    ...(interval === undefined ? {} : { intervalSeconds: Number(interval.replace("s", "")) }),
    ...(order === undefined ? {} : { dateOrder: order as "day-first" | "month-first" }),
    ...(values.get("--unit")?.[0] === "F" ? { unit: "degF" as const } : {}),
  };
}
