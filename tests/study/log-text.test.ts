import { expect, it } from "vitest";
import { logText } from "./log-text.ts";

it("writes time, food and room, and a word for what is no number", () => {
  const log = {
    seconds: Float64Array.of(0, 60),
    celsius: Float64Array.of(39.5, NaN),
    second: { role: "room" as const, celsius: Float64Array.of(20.1, 20) },
    resolution: 0.1,
    intervalSeconds: 60,
  };
  const text = logText(log, Date.UTC(2024, 0, 31, 23, 59, 30));
  expect(text).toBe(
    "Time,Jar (degC),Air (degC)\n2024-01-31 23:59:30,39.5,20.1\n2024-02-01 00:00:30,Err,20\n",
  );
  expect(logText({ ...log, second: null }, 0).split("\n")[1]).toBe("1970-01-01 00:00:00,39.5");
});
