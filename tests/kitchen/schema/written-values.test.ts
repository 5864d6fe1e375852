import { describe, expect, it } from "vitest";
import * as written from "../../../src/kitchen/schema/written-values.ts";

// Conversion factors: NIST SP 811, appendix B.8. The texts are constructed.

describe("heights", () => {
  it.each([
    ["1450 m", 1450],
    ["1450", 1450],
    ["1450m", 1450],
    ["4760 ft", 4760 * 0.3048],
    ["-430 M", -430],
    ["14500 m", null],
    ["1450 km", null],
    ["high", null],
    ["", null],
  ])("%s", (text, metres) => {
    const found = written.readAltitude(text);
    if (metres === null) expect(found).toBeNull();
    else expect(found).toBeCloseTo(metres, 9);
  });
});

describe("air pressures", () => {
  it.each([
    ["851 hPa station", 851, "station"],
    ["1013,25 mbar sea-level", 1013.25, "sea-level"],
    ["101.3 kPa Sea level", 1013, "sea-level"],
    // 29.92 inHg is the standard atmosphere, 1013.25 hPa, to its four digits.
    ["29.92 inHg sea-level", 1013.21, "sea-level"],
    ["760 mmHg station", 1013.25, "station"],
  ])("%s", (text, hectopascal, reduced) => {
    const found = written.readPressure(text);
    expect(found?.hectopascal).toBeCloseTo(hectopascal, 1);
    expect(found?.reduced).toBe(reduced);
  });

  it.each(["851 hPa", "851 station", "851 psi station", "85.1 hPa station", "station", ""])(
    "not %j",
    (text) => expect(written.readPressure(text)).toBeNull(),
  );
});

describe("volumes and counts", () => {
  it.each([
    ["0.5 L", 0.5],
    ["0,5", 0.5],
    ["500 ml", 0.5],
    ["1 qt", 0.9463529],
    ["5 dl", 0.5],
    ["0", null],
    ["-1 L", null],
    ["half", null],
    ["1 cup", null],
  ])("%s", (text, litres) => {
    if (litres === null) expect(written.readVolume(text)).toBeNull();
    else expect(written.readVolume(text)).toBeCloseTo(litres, 9);
  });

  it("counts whole things", () => {
    expect(["6", " 12 ", "0", "1.5", "six", "1e3"].map(written.readCount)).toEqual([
      6,
      12,
      null,
      null,
      null,
      null,
    ]);
  });
});

describe("dates and clocks", () => {
  it("knows which days there are", () => {
    const days = ["2026-10-03", "2024-02-29", "2026-02-29", "2026-13-01", "26-10-03", "3.10.2026"];
    expect(days.map(written.readDate)).toEqual([
      "2026-10-03",
      "2024-02-29",
      null,
      null,
      null,
      null,
    ]);
  });

  it.each([
    ["2026-10-03 22:10", Date.UTC(2026, 9, 3, 22, 10)],
    ["2026-10-03T22:10:30", Date.UTC(2026, 9, 3, 22, 10, 30)],
    ["2026-10-03 7:05", Date.UTC(2026, 9, 3, 7, 5)],
    ["2026-10-03 24:00", null],
    ["2026-10-03 22:61", null],
    ["2026-10-03", null],
    ["22:10", null],
  ])("%s", (text, at) => expect(written.readClock(text)).toBe(at));
});

describe("temperatures, ranges and times", () => {
  it("keeps to what a kitchen has", () => {
    expect(["38", "100.4F", "380", "-50", "warm"].map(written.readTemperature)).toEqual([
      38,
      expect.closeTo(38, 9),
      null,
      null,
      null,
    ]);
    expect(["212", "-40", "900"].map(written.readReading)).toEqual([212, -40, null]);
    expect(["0.1", "0", "-1", "0.9F"].map(written.readStep)).toEqual([
      0.1,
      null,
      null,
      expect.closeTo(0.5, 9),
    ]);
    expect(["0", "0.05", "-0.1"].map(written.readUncertainty)).toEqual([0, 0.05, null]);
  });

  it("takes ranges with the lower end first", () => {
    expect(written.readRoom("17..24")).toEqual({ low: 17, high: 24 });
    expect(written.readRoom("20..20")).toEqual({ low: 20, high: 20 });
    expect(["24..17", "17-24", "17", "65..75"].map(written.readRoom)).toEqual([
      null,
      null,
      null,
      null,
    ]);
  });

  it("takes hours and seconds in their own bare units", () => {
    expect(["20h", "36", "90 min", "0", "300h"].map(written.readHours)).toEqual([
      20,
      36,
      1.5,
      null,
      null,
    ]);
    expect(["30s", "30", "1min", "0"].map(written.readInterval)).toEqual([30, 30, 60, null]);
  });

  it("takes yes and no in four words, and the letters of the two scales", () => {
    expect(["yes", "No", "TRUE", "false", "maybe"].map(written.readYesNo)).toEqual([
      true,
      false,
      true,
      false,
      null,
    ]);
    expect(["C", "f", "°F", "degC", "K"].map(written.readUnit)).toEqual([
      "degC",
      "degF",
      "degF",
      "degC",
      null,
    ]);
  });
});

describe("a batch's figures", () => {
  it("generations, from 1 to 1000", () => {
    const texts = ["1", " 12 ", "1000", "0", "1001", "2.0", "-1", "second", ""];
    expect(texts.map(written.readGeneration)).toEqual([
      1,
      12,
      1000,
      ...Array.from({ length: 6 }, () => null),
    ]);
  });

  it("parts of the whole, with their sign", () => {
    const texts = ["5 %", "5%", "0,5 %", "100 %", "0 %", "12.34 %"];
    expect(texts.map(written.readPart)).toEqual([0.05, 0.05, 0.005, 1, 0, 0.1234]);
    const unread = ["5", "0.05", "101 %", "-1 %", "%", "half", "", "5 percent"];
    expect(unread.map(written.readPart)).toEqual(unread.map(() => null));
  });
});
