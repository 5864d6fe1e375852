import { describe, expect, it } from "vitest";
import { reuteri } from "../../src/culture/organisms.ts";
import { requirementOf, testRequest } from "../../src/kitchen-analysis/test-request.ts";
import { analyseThermometer } from "../../src/kitchen-analysis/thermometers.ts";
import { checkedPen, jar, kitchenOf, options, testFile, waterTest } from "./small-kitchen.ts";

const thermometers = [analyseThermometer(checkedPen, options.today)];
const file = testFile("night.csv", [
  jar,
  { name: "Bath", place: "bath", thermometer: null },
  { name: "Lid", place: "food", thermometer: "lost" },
]);
const requestOf = (more: Partial<typeof file> = {}) => {
  const test = waterTest("night", [{ ...file, ...more }]);
  return testRequest(test, kitchenOf([test]), options, thermometers);
};

describe("testRequest", () => {
  it("asks each of the kitchen's cultures, with the share that was said", () => {
    const { requirements } = requestOf();
    expect(requirements).toMatchObject([
      { culture: "reuteri", low: 36.5, high: 39.5, share: 0.95 },
    ]);
    expect(requirements[0]!.growth).toEqual([reuteri]);
    expect(requirements[0]).toEqual(requirementOf(kitchenOf([]).cultures[0]!, 0.95));
  });

  it("gives probes their places, and those with a known thermometer its correction", () => {
    const [said] = requestOf().files!;
    expect([...said!.reading.roles!]).toEqual([
      ["Jar", "food"],
      ["Bath", "bath"],
      ["Lid", "food"],
    ]);
    expect([...said!.thermometers.keys()]).toEqual(["Jar"]);
    expect(said!.thermometers.get("Jar")).toEqual({ id: "pen", model: thermometers[0]!.model });
  });

  it("hands on what is said of the file, and nothing that is not", () => {
    const [plain] = requestOf({ probes: [] }).files!;
    expect(plain!.reading).toEqual({});
    expect(plain!.startsAt).toBeNull();
    const [full] = requestOf({
      probes: [],
      columns: ["Jar"],
      unit: "degF",
      dateOrder: "day-first",
      decimal: ",",
      intervalSeconds: 30,
      startsAt: 5,
    }).files!;
    expect(full).toEqual({
      reading: {
        columns: ["Jar"],
        unit: "degF",
        dateOrder: "day-first",
        decimal: ",",
        intervalSeconds: 30,
      },
      thermometers: new Map(),
      startsAt: 5,
    });
  });

  it("is one water test, whatever the number of files", () => {
    expect(requestOf().together).toBe(true);
  });
});
