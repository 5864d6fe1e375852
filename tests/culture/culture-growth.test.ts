import { describe, expect, it } from "vitest";
import { growthOfCultures } from "../../src/culture/culture-growth.ts";
import { growthOverHold } from "../../src/culture/growth-over-hold.ts";
import type { GrowthCourse } from "../../src/culture/growth-over-hold.ts";
import * as organisms from "../../src/culture/organisms.ts";
import type { Requirement } from "../../src/culture/verdict-types.ts";
import { asked } from "./nights.ts";

// A constructed night: an hour from 20 to 30 degC, then ten hours at 30.
const course: GrowthCourse = {
  minutes: Float64Array.from({ length: 661 }, (_, minute) => minute),
  celsius: Float64Array.from({ length: 661 }, (_, minute) => Math.min(30, 20 + minute / 6)),
  phases: [
    { kind: "warm-up", fromMinute: 0, toMinute: 60 },
    { kind: "hold", fromMinute: 60, toMinute: 660 },
  ],
};

const culture = (id: string, growth: Requirement["growth"]): Requirement => ({
  ...asked(28, 32, 10),
  culture: id,
  ...(growth === undefined ? {} : { growth }),
});

const { thermophilus, bulgaricus, lactis, cremoris, reuteri, coagulans } = organisms;

describe("growthOfCultures", () => {
  it("gives each organism the figures of the model, with its limits", () => {
    const [yoghurt] = growthOfCultures([culture("yoghurt", [thermophilus, bulgaricus])], course);
    expect(yoghurt!.culture).toBe("yoghurt");
    expect(yoghurt!.organisms).toEqual([
      { ...growthOverHold(course, thermophilus), limits: thermophilus },
      { ...growthOverHold(course, bulgaricus), limits: bulgaricus },
    ]);
    // By hand: (50 - T)(T - 20)^2 / 4000 with the limits 20, 40, 50 is exactly 1/2 at 30 degC.
    expect(yoghurt!.organisms[0]!.meanRate).toBeCloseTo(0.5, 12);
    expect(yoghurt!.organisms[0]!.equivalentHours).toBeCloseTo(5, 12);
    expect(yoghurt!.notModelled).toEqual([]);
  });

  it("names the organisms it cannot reckon, and why", () => {
    const [blend, milk] = growthOfCultures(
      [culture("blend", [reuteri, coagulans]), culture("milk", [lactis, cremoris])],
      course,
    );
    expect(blend!.organisms.map(({ organism }) => organism)).toEqual([coagulans.organism]);
    expect(blend!.notModelled).toEqual([
      { organism: reuteri.organism, because: "limit not known" },
    ]);
    // The optimum of 22 lies below the middle of 9 and 38, which the model does not allow.
    expect(milk!.organisms.map(({ organism }) => organism)).toEqual([lactis.organism]);
    expect(milk!.notModelled).toEqual([
      { organism: cremoris.organism, because: "limits do not fit the model" },
    ]);
  });

  it("says nothing of a window typed by hand, nor of a culture without organisms", () => {
    expect(
      growthOfCultures([culture("window", undefined), culture("koumiss", [])], course),
    ).toEqual([]);
  });

  it("has no figures without a hold", () => {
    const idle = { ...course, phases: [{ kind: "idle", fromMinute: 0, toMinute: 660 }] as const };
    expect(growthOfCultures([culture("yoghurt", [thermophilus])], idle)).toEqual([
      { culture: "yoghurt", organisms: [], notModelled: [] },
    ]);
  });

  it("reckons an organism of two cultures alike", () => {
    const [one, other] = growthOfCultures(
      [culture("short", [thermophilus]), culture("long", [thermophilus])],
      course,
    );
    expect(other!.organisms).toEqual(one!.organisms);
  });
});
