import { describe, expect, it } from "vitest";
import { cultures } from "../../../src/culture/catalogue.ts";
import { contractOf, holdband, listing, temporaryFolder } from "../run-holdband.ts";
import { emptyKitchen, equippedKitchen } from "./run-kitchen.ts";

describe("culture", () => {
  it("takes one in from the catalogue, as it is", () => {
    const { ok, kitchen, text } = emptyKitchen();
    expect(ok("culture", "yoghurt")).toContain("Taken in");
    expect(kitchen().cultures).toEqual(cultures.filter(({ id }) => id === "yoghurt"));
    expect(text()).toMatch(/^ {2}- yoghurt$/m);
    expect(ok("culture", "yoghurt")).toContain("here already");
    expect(kitchen().cultures).toHaveLength(1);
  });

  it("changes figures of one, and takes one's own", () => {
    const { ok, kitchen } = emptyKitchen();
    ok("culture", "kefir", "--hours", "30");
    ok("culture", "kefir", "--high", "75.2F");
    const own = ["--low", "37", "--high", "39", "--ceiling", "43", "--hours", "24"];
    ok("culture", "my-blend", ...own, "--name", "My blend");
    const [kefir, blend] = kitchen().cultures;
    // 75.2 degF are 24 degC, by definition of the scale.
    expect(kefir).toMatchObject({
      low: 18,
      hours: 30,
      sources: { hours: { kind: "own" }, target: { kind: "published" } },
    });
    expect(kefir?.high).toBeCloseTo(24, 9);
    expect(blend).toMatchObject({ name: "My blend", low: 37, target: 38, ceiling: 43, hours: 24 });
  });

  it("lists the kitchen's and the catalogue, in 80 columns and before there is a kitchen", () => {
    const { ok } = emptyKitchen();
    ok("culture", "kefir");
    const both = ok("culture");
    expect(both).toContain("In this kitchen:");
    for (const line of both.split("\n")) expect(line.length).toBeLessThanOrEqual(80);
    const alone = holdband(["culture"], { cwd: temporaryFolder() });
    expect(alone.exitCode).toBe(0);
    for (const { id } of cultures) expect(alone.out).toContain(`\n${id} `);
    const named = holdband(["culture", "--kitchen", "nowhere"], { cwd: temporaryFolder() });
    expect(named.err).toContain("holdband init");
  });

  it.each([
    [["kefri"], "culture-unknown", 'Did you mean "kefir"?'],
    [["blend", "--low", "37", "--high", "39"], "option-missing", "--ceiling"],
    [["kefir", "--low", "30"], "kitchen-change-refused", "low below high"],
    [
      ["blend", "--low", "98", "--high", "103", "--ceiling", "110", "--hours", "24"],
      "kitchen-change-refused",
      "below 65 degC (149 degF",
    ],
    [["kefir", "--ceiling", "20"], "kitchen-change-refused", "ceiling"],
    [["kefir", "--hours", "0"], "option-invalid", "--hours expects"],
    [["--hours", "3"], "option-missing", "name"],
  ])("refuses %j", (words, code, says) => {
    const { run, folder } = equippedKitchen();
    const before = listing(folder);
    const refused = run("culture", ...words, "--json");
    expect(refused.exitCode).toBe(2);
    expect(refused.err).toContain(says);
    expect(contractOf(refused).problem?.code).toBe(code);
    expect(listing(folder)).toEqual(before);
  });
});
