import { describe, expect, it } from "vitest";
import {
  fixed,
  grouped,
  percent,
  percentInWords,
  roundTogether,
  short,
} from "../../src/report/number-format.ts";

describe("roundTogether", () => {
  // The two pairs with which the Particle Data Group's rule is usually shown:
  // K. Nakamura et al. (Particle Data Group), J. Phys. G 37, 075021 (2010),
  // introduction 5.3; also the reference manual of the R package errors,
  // format.errors(digits = "pdg"). The next two are the examples printed in the
  // documentation of the Ruby gem pdground, the next two in the guidance of the
  // STAR experiment for tables (PRD 98, 030001 (2018), introduction 5.3).
  it.each([
    [0.827, 0.119, "0.83", "0.12"],
    [0.827, 0.367, "0.8", "0.4"],
    [12.2135, 0.03215, "12.214", "0.032"],
    [12.2135, 0.06515, "12.21", "0.07"],
    [0.279008, 0.0123261, "0.279", "0.012"],
    [0.279008, 0.000766099, "0.2790", "0.0008"],
  ])("writes %d with %d as %s and %s", (value, doubt, shown, shownDoubt) => {
    expect(roundTogether(value, doubt)).toMatchObject({ value: shown, uncertainty: shownDoubt });
  });

  // JCGM 100:2008, 7.2.6: y = 10,057 62 ohm with u = 27 milliohm is given as
  // 10,058 ohm; u = 28,05 kHz as 28 kHz.
  it("agrees with the worked roundings of JCGM 100, 7.2.6", () => {
    expect(roundTogether(10.05762, 0.027)).toMatchObject({ value: "10.058", uncertainty: "0.027" });
    expect(roundTogether(1000, 28.05)).toMatchObject({ value: "1000", uncertainty: "28" });
  });

  // The rule's own borders: 354 | 355 and 949 | 950.
  it.each([
    [0.354, "0.35"],
    [0.355, "0.4"],
    [0.949, "0.9"],
    [0.95, "1.0"],
    [0.9994, "1.0"],
    [9.6, "10"],
    [440, "400"],
    [0.00961, "0.010"],
  ])("rounds %d to %s", (doubt, shown) => {
    expect(roundTogether(1, doubt).uncertainty).toBe(shown);
  });

  it("keeps two decimals where no uncertainty is known", () => {
    expect(roundTogether(40.8123, 0)).toMatchObject({ value: "40.81", uncertainty: "0" });
    expect(roundTogether(40.8123, Number.NaN).value).toBe("40.81");
  });
});

describe("plain numbers", () => {
  it("never writes a negative zero", () => {
    expect(fixed(-0.04, 1)).toBe("0.0");
    expect(fixed(-0.06, 1)).toBe("-0.1");
  });

  it("drops needless zeros and groups thousands", () => {
    expect(short(38, 1)).toBe("38");
    expect(short(39.5, 1)).toBe("39.5");
    expect(grouped(43200)).toBe("43,200");
    expect(grouped(5_000_000)).toBe("5,000,000");
    expect(grouped(999)).toBe("999");
  });

  it("writes 0 % and 100 % only for exactly that", () => {
    const shares = [0, 1e-9, 0.0099, 0.01, 0.414, 0.99, 0.9901, 1 - 1e-12, 1];
    expect(shares.map((share) => percent(share, " "))).toEqual([
      "0 %",
      "< 1 %",
      "< 1 %",
      "1 %",
      "41 %",
      "99 %",
      "> 99 %",
      "> 99 %",
      "100 %",
    ]);
    expect(percentInWords(0.997, " ")).toBe("more than 99 %");
  });
});
