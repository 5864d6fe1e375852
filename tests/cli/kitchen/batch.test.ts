import { describe, expect, it } from "vitest";
import { contractOf, listing } from "../run-holdband.ts";
import { cookerNight, equippedKitchen } from "./run-kitchen.ts";

// Constructed logs in a constructed kitchen; only the days of the tests come from the demo's readings.

const cultures = "cultures: [reuteri, yoghurt]\n";
const first =
  "batch --culture reuteri --appliance step-cooker --setting 38 --container jars --date 2026-03-01 --generation 1 --separated much".split(
    " ",
  );

interface Answer {
  readonly batches: readonly {
    readonly number: number;
    readonly date: string;
    readonly setting: { readonly celsius: number };
  }[];
  readonly cautions: readonly string[];
  readonly remarks: readonly string[];
  readonly due: readonly {
    readonly reasons: readonly { readonly code: string }[];
    readonly text: string;
  }[];
}
const answerOf = (out: string): Answer => JSON.parse(out) as Answer;

describe("batch", () => {
  it("logs, takes from the last, lists, shows, changes and takes out", () => {
    const { ok, kitchen, text } = equippedKitchen(cultures);
    expect(ok("batch")).toContain("No batch was logged in this kitchen yet");
    expect(ok(...first)).toContain("Logged as batch 1, of 2026-03-01:");
    const second = ok("batch", "--culture", "reuteri", "--date", "2026-03-05", "--starter", "5%");
    expect(second).toContain("Taken: appliance step-cooker, setting 38 and container jars, as in");
    expect(kitchen().batches[1]).toMatchObject({
      appliance: "step-cooker",
      setting: { kind: "step", celsius: 38 },
      container: "jars",
      starter: 0.05,
      generation: null,
    });
    ok("batch", "--culture", "reuteri", "--date", "2026-02-20", "--notes", "the oldest");
    const days = ok("batch").match(/\d{4}-\d\d-\d\d  reuteri/g);
    expect(days).toEqual(
      ["2026-02-20", "2026-03-01", "2026-03-05"].map((day) => `${day}  reuteri`),
    );
    expect(ok("batch", "3")).toContain("Batch 3, of 2026-02-20:");
    expect(ok("batch", "2", "--separated", "a little")).toContain(
      "Changed; batch 2, of 2026-03-05",
    );
    expect(kitchen().batches[1]?.separated).toBe("a little");
    expect(ok("batch", "2", "--separated", "unknown")).toContain("now:");
    expect(kitchen().batches[1]?.separated).toBeNull();
    expect(ok("batch", "1", "--remove")).toContain("Batch 1, of 2026-03-01, was taken out. Those");
    expect(ok("batch", "2", "--remove")).not.toContain("moved up");
    expect(kitchen().batches.map(({ date }) => date)).toEqual(["2026-03-05"]);
    expect(text()).toContain("# The kitchen of these tests.");
  });

  it("needs nothing but an outcome where there is one of everything; today is said so", () => {
    const { ok, run, kitchen, folder } = equippedKitchen();
    const here = ["--kitchen", `${folder}/own`];
    ok("init", "own");
    ok("appliance", "cooker", "--kind", "cooker", "--steps", "86F..113F", "--step", "1F", ...here);
    ok("container", "jars", "--stands", "jars in water", ...here);
    ok("culture", "reuteri", ...here);
    expect(run("batch", "--separated", "none", ...here).err).toContain("--setting is needed");
    const out = ok("batch", "--separated", "none", "--setting", "100F", ...here);
    const today = new Date().toISOString().slice(0, 10);
    expect(out).toMatch(
      /culture reuteri, appliance cooker and container jars, the only one\s+here/,
    );
    expect(out).toContain(`${today}, today by`);
    const again = answerOf(ok("batch", "--separated", "none", "--json", ...here));
    expect(again.batches).toMatchObject([{ number: 2, date: today }]);
    // 100 degF is (100 - 32) / 1.8 degC; the steps of the control are sums, so not to the last digit.
    expect(again.batches[0]?.setting.celsius).toBeCloseTo((100 - 32) / 1.8, 6);
    expect(kitchen().batches).toEqual([]);
  });

  it("settles the set-up with its appliance's control", () => {
    const { ok, run, kitchen } = equippedKitchen(cultures);
    ok(...first);
    expect(run("batch", "1", "--appliance", "box").err).toContain("--setting is needed");
    ok("batch", "1", "--appliance", "box", "--setting", "2", "--container", "basin");
    const there = { appliance: "box", setting: { kind: "mark", mark: "2" }, container: "basin" };
    expect(kitchen().batches[0]).toMatchObject(there);
    ok("batch", "1", "--appliance", "warm-cooker");
    expect(kitchen().batches[0]).toMatchObject({
      appliance: "warm-cooker",
      setting: { kind: "fixed" },
      container: "basin",
    });
    ok("batch", "1", "--appliance", "bath", "--setting", "100.4F");
    expect(kitchen().batches[0]?.setting).toEqual({ kind: "step", celsius: 38 });
    expect(run("batch", "1", "--setting", "38.05").err).toContain("a step of 0.1");
  });

  it.each(["pink", "orange", "fuzzy", "off-smelling"])("cautions of anything %s", (sign) => {
    const { ok } = equippedKitchen(cultures);
    const added = ok(...first, "--trouble", sign).replaceAll("\n", " ");
    const one = ok("batch", "1").replaceAll("\n", " ");
    for (const out of [added, one]) {
      expect(out).toContain("throw all of it away. Do not scrape anything off");
      expect(out).toContain("start again from a fresh starter");
    }
    expect(answerOf(ok("batch", "1", "--trouble", "none", "--json")).cautions).toEqual([]);
  });

  it("says when a water test is due, and when separation is usual", () => {
    const { ok } = equippedKitchen(cultures);
    ok("add", cookerNight, "--appliance", "step-cooker", "--setting", "38", "--container", "jars");
    // The night was begun on 2026-02-19.
    const usual = ok(...first);
    expect(usual).toContain("first generation of a fresh starter is usual");
    expect(usual).not.toContain("generation 1, in the batch");
    const at = ["batch", "--culture", "reuteri", "--json"];
    const later = ["--date", "2026-03-09", "--generation", "2", "--separated", "a little"];
    const codes = answerOf(ok(...at, ...later)).due.flatMap(({ reasons }) =>
      reasons.map(({ code }) => code),
    );
    expect(codes).toContain("separated-later");
    ok("appliance", "step-cooker", "--moved", "2026-03-10");
    ok("container", "jars", "--changed", "2026-03-11");
    const all = answerOf(ok("batch", "--json"));
    expect(all.batches.map(({ number }) => number)).toEqual([1, 2]);
    expect(all.due).toHaveLength(1);
    expect(all.due[0]?.reasons).toEqual(
      expect.arrayContaining([
        { code: "separated-later", generation: 2, date: "2026-03-09" },
        { code: "appliance-moved", date: "2026-03-10" },
        { code: "container-changed", date: "2026-03-11" },
      ]),
    );
    expect(ok("batch")).toContain("Test step-cooker at 38");
    expect(ok("appliance", "step-cooker")).toContain("moved or repaired 2026-03-10");
    expect(ok("container", "jars")).toContain("changed 2026-03-11");
  });

  it("says that a set-up was never tested", () => {
    const { ok } = equippedKitchen(cultures);
    expect(ok(...first).replaceAll("\n", " ")).toContain("no water test of it is known");
  });

  it.each([
    [["--culture", "reutri"], "not-in-kitchen", 'Did you mean "reuteri"?'],
    [["--generation", "2"], "option-missing", "--culture is needed"],
    [["--culture", "yoghurt"], "option-missing", "--appliance is needed"],
    [["--culture", "reuteri", "--appliance", "bx"], "not-in-kitchen", "There is no appliance"],
    [["--culture", "reuteri", "--setting", "99"], "setting-invalid", "nearest 60"],
    [
      ["--culture", "reuteri", "--date", "2199-01-01"],
      "option-invalid",
      "a day that is not to come",
    ],
    [["--remove"], "option-missing", "the batch's number is needed"],
    [["1", "--remove", "--milk", "thin"], "options-contradict", "--remove"],
    [["2"], "option-invalid", "1, the only one in the log"],
    [["0", "--milk", "thin"], "option-invalid", 'found "0"'],
    [["x", "--remove"], "option-invalid", 'found "x"'],
    [["1", "--culture", "kefir"], "not-in-kitchen", "There is no culture"],
    [["1", "--starter", "5"], "option-invalid", "such as 5%"],
    [["1", "2"], "usage", "nothing more after the number"],
  ])("refuses %j and changes nothing", (words, code, says) => {
    const { ok, run, folder } = equippedKitchen(cultures);
    ok(...first);
    const before = listing(folder);
    const refused = run("batch", ...words, "--json");
    expect(refused.exitCode).toBe(2);
    expect(refused.err).toContain(says);
    expect(contractOf(refused).problem?.code).toBe(code);
    expect(listing(folder)).toEqual(before);
  });

  it.each([
    [["appliance", "box", "--moved", "2199-01-01"], "not to come"],
    [["appliance", "box", "--moved", "May"], "--moved expects a day"],
    [["container", "jars", "--changed", "2199-01-01"], "not to come"],
    [["container", "jars", "--changed", "2026-02-30"], "--changed expects a day"],
  ])("refuses %j", (words, says) => {
    const refused = equippedKitchen().run(...words);
    expect(refused).toMatchObject({ exitCode: 2, out: "" });
    expect(refused.err).toContain(says);
  });
});
