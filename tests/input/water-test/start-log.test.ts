import { describe, expect, it } from "vitest";
import { saidOfFile } from "../../../src/input/water-test/said-of-test.ts";
import { startLog } from "../../../src/input/water-test/start-log.ts";
import { dateText } from "../../../src/readings/typed/wall-clock.ts";

const test = saidOfFile("x.csv", [{ name: "Jar", place: "food", thermometer: null }]);

describe("startLog", () => {
  it("takes date and unit as said", () => {
    const log = startLog(test, { unit: "degF", date: "2026-10-03" }, "degC");
    expect(log).toMatchObject({ unit: "degF", unitAssumed: false, dayAssumed: false });
    expect(dateText(log.firstDay ?? 0)).toBe("2026-10-03");
  });

  it("else leaves the date open and the unit to the first letter", () => {
    expect(startLog(test, { unit: undefined, date: undefined }, "degF")).toMatchObject({
      unit: "degF",
      unitAssumed: true,
      firstDay: null,
      dayAssumed: true,
    });
  });
});
