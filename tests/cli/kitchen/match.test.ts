/** `match` as a program, in kitchens made by the program's own commands. */
import { rmSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { contractOf, listing } from "../run-holdband.ts";
import { bathNights, cookerNight, emptyKitchen, equippedKitchen } from "./run-kitchen.ts";
import type { RunningKitchen } from "./run-kitchen.ts";

const cooker = ["--appliance", "step-cooker", "--setting", "38", "--container", "jars"];
const bath = ["--appliance", "bath", "--setting", "41", "--container", "jars"];

const tested = (cultures: string): RunningKitchen => {
  const kitchen = equippedKitchen(`cultures: [${cultures}]\n`);
  kitchen.ok("add", cookerNight, ...cooker, "--name", "cooker night");
  kitchen.ok("add", ...bathNights, ...bath, "--name", "bath night");
  return kitchen;
};

interface Told {
  readonly kind: string;
  readonly requirements: readonly { readonly culture: string }[];
  readonly advice: {
    readonly appliances: readonly { readonly appliance: string }[];
    readonly match: {
      readonly places: readonly {
        readonly culture: string;
        readonly placed: { readonly appliance: string } | null;
        readonly why: string | null;
      }[];
    };
  };
}
const toldOf = (text: string): Told => JSON.parse(text) as Told;

describe("match", () => {
  it("shows every appliance against every culture, and where each goes at the same time", () => {
    const { ok, folder } = tested("reuteri, warm-blend");
    const before = listing(folder);
    const out = ok("match");
    for (const name of ["step-cooker", "bath", "warm-cooker", "box"]) expect(out).toContain(name);
    expect(out).toMatch(/If all of them run at the same time[\s\S]+reuteri:[\s\S]+warm-blend:/);
    expect(listing(folder)).toEqual(before);
  });

  it("gives the cooker that was tested at 38 degC to the lower culture", () => {
    const { places } = toldOf(tested("reuteri, warm-blend").ok("match", "--json")).advice.match;
    expect(places[0]).toMatchObject({ culture: "reuteri", placed: { appliance: "step-cooker" } });
    expect(places[1]?.placed?.appliance).not.toBe("step-cooker");
  });

  it("places only the cultures that run at the same time", () => {
    const { ok } = tested("reuteri, warm-blend, yoghurt");
    const told = toldOf(
      ok("match", "--culture", "yoghurt", "--culture", "reuteri", "--culture", "yoghurt", "--json"),
    );
    expect(told.kind).toBe("match");
    expect(told.requirements.map(({ culture }) => culture)).toEqual(["reuteri", "yoghurt"]);
    expect(told.advice.match.places.map(({ culture }) => culture)).toEqual(["reuteri", "yoghurt"]);
    expect(told.advice.appliances).toHaveLength(4);
  });

  it("refuses a culture the kitchen does not keep, and names the nearest", () => {
    const refused = tested("reuteri").run("match", "--culture", "reutery", "--json");
    expect(refused.exitCode).toBe(2);
    expect(contractOf(refused).problem).toMatchObject({
      code: "not-in-kitchen",
      text: expect.stringMatching(/culture called "reutery".+mean "reuteri"/) as string,
    });
  });

  it("gives exit code 1 with --strict where a culture has no place that would hold it", () => {
    const { ok, run } = tested("reuteri");
    expect(run("match", "--strict").exitCode).toBe(0);
    // A window no appliance here can come near.
    ok("culture", "cold", "--low", "4", "--high", "6", "--ceiling", "8", "--hours", "24");
    expect(run("match").exitCode).toBe(0);
    expect(run("match", "--strict").exitCode).toBe(1);
    expect(run("match", "--strict", "--culture", "reuteri").exitCode).toBe(0);
    const [, cold] = toldOf(ok("match", "--json")).advice.match.places;
    expect(cold).toMatchObject({ culture: "cold", placed: null });
    expect(cold?.why).not.toBeNull();
  });

  it("gives exit code 1 with --strict where all is assumed", () => {
    const { run, ok } = equippedKitchen("cultures: [reuteri]\n");
    expect(ok("match")).toMatch(/^No water test yet/);
    expect(run("match", "--strict").exitCode).toBe(1);
  });

  it("says what a kitchen lacks, one sentence for each", () => {
    const { ok, run } = emptyKitchen();
    const out = ok("match").replaceAll(/\s+/g, " ");
    for (const part of ["culture", "appliance", "container"]) {
      expect(out).toContain(`No ${part} in this kitchen yet`);
    }
    expect(toldOf(run("match", "--json").out).advice.match.places).toEqual([]);
  });

  it("is refused where tests are listed and none can be read", () => {
    const { run, folder } = tested("reuteri");
    rmSync(join(folder, "readings"), { recursive: true });
    const refused = run("match", "--json");
    expect(refused.exitCode).toBe(2);
    expect(contractOf(refused).problem?.code).toBe("no-test-readable");
  });

  it("answers the same bytes to the same question", () => {
    const { ok } = tested("reuteri, yoghurt");
    expect(ok("match", "--json")).toBe(ok("match", "--json"));
  });
});
