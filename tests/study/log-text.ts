/** A simulated log as a plain CSV file. */
import type { SimulatedLog } from "../simulator/case-types.ts";

const cell = (value: number): string => (Number.isNaN(value) ? "Err" : String(value));

export function logText(
  { seconds, celsius, second }: SimulatedLog,
  startWallClock: number,
): string {
  const rows = Array.from(seconds, (elapsed, at) => {
    const time = new Date(startWallClock + elapsed * 1000).toISOString().slice(0, 19);
    const food = `${time.replace("T", " ")},${cell(celsius[at]!)}`;
    return second === null ? food : `${food},${cell(second.celsius[at]!)}`;
  });
  const heading = second === null ? "Time,Jar (degC)" : "Time,Jar (degC),Air (degC)";
  return `${[heading, ...rows].join("\n")}\n`;
}
