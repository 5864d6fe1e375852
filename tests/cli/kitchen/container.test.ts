import { describe, expect, it } from "vitest";
import { contractOf } from "../run-holdband.ts";
import { emptyKitchen, equippedKitchen } from "./run-kitchen.ts";

describe("container", () => {
  it("enters, shows, lists and changes", () => {
    const { ok, kitchen } = emptyKitchen();
    expect(ok("container")).toContain("no containers in this kitchen yet");
    ok("container", "jars", "--stands", "Jars in water", "--volume", "250 mL", "--count", "6");
    expect(kitchen().containers).toEqual([
      {
        id: "jars",
        name: "jars",
        stands: "jars in water",
        volume: 0.25,
        count: 6,
        changedOn: null,
      },
    ]);
    expect(ok("container", "jars")).toBe("jars  0 tests  jars in water; 6 of 0.25 L\n");
    ok("container", "jars", "--count", "8");
    expect(kitchen().containers[0]).toMatchObject({ volume: 0.25, count: 8 });
    const { containers } = JSON.parse(ok("container", "--json")) as { containers: unknown };
    expect(containers).toEqual(kitchen().containers);
  });

  it.each([
    [["tub"], "not-in-kitchen", "Known: jars, basin"],
    [["tub", "--count", "2"], "option-missing", "--stands"],
    [["tub", "--stands", "upside down"], "option-invalid", "jars in air"],
    [["tub", "--stands", "basin", "--count", "0"], "option-invalid", "--count expects"],
    [["tub", "--stands", "basin", "--volume", "-1L"], "option-invalid", "--volume expects"],
    [["--stands", "basin"], "option-missing", "name"],
  ])("refuses %j", (words, code, says) => {
    const refused = equippedKitchen().run("container", ...words, "--json");
    expect(refused.exitCode).toBe(2);
    expect(refused.err).toContain(says);
    expect(contractOf(refused).problem?.code).toBe(code);
  });
});
