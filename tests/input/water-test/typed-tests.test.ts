import { describe, expect, it } from "vitest";
import { storeTest } from "../../../src/input/water-test/store-test.ts";
import { testOfFiles, testOfLines } from "../../../src/input/water-test/typed-tests.ts";
import { equippedKitchen } from "../../cli/kitchen/run-kitchen.ts";
import { write } from "../../cli/run-holdband.ts";
import { kitchenOf, problemOf, sampleKitchen, today, typed, valueOf } from "../sample-kitchen.ts";
import { memory } from "./memory-store.ts";

const setUp = [
  ["appliance", "step-cooker"],
  ["setting", "38"],
  ["container", "jars"],
] as const;
const lines = "22:30 20.4\n23:30 37.8 # lid on\n2:00 38.1\n6:00 38.0\n";
/** Noon of the next day, seconds from 1970. */
const now = Date.UTC(2026, 9, 4, 12) / 1000;

describe("testOfLines", () => {
  it("makes a test of typed lines, its comments among the notes", () => {
    const test = valueOf(
      testOfLines(lines, sampleKitchen, typed(...setUp, ["notes", "calm"]), now),
    );
    expect(test).toMatchObject({ appliance: "step-cooker", notes: "calm; 23:30 lid on" });
    expect(test.files[0]?.source.text).toContain("2026-10-04T06:00,38.0");
  });

  it("fails at a line with its number, at a set-up not all said, and at an option", () => {
    const bad = testOfLines("22:30 38\nlater\n", sampleKitchen, typed(...setUp), now);
    expect(problemOf(bad)).toMatchObject({ code: "reading-unread", facts: { line: 2 } });
    expect(problemOf(testOfLines(lines, sampleKitchen, {}, now)).code).toBe("option-missing");
    const unit = testOfLines(lines, sampleKitchen, typed(...setUp, ["unit", "K"]), now);
    expect(problemOf(unit).code).toBe("option-invalid");
  });
});

describe("testOfFiles", () => {
  const csv = "Time,Jar (°C)\n2026-10-03T22:00,20.5\n2026-10-03T23:30,37.9\n2026-10-04T06:00,38\n";
  const files = [{ name: "night.csv", path: "night.csv", source: { text: csv } }];

  it("lists the same test as the program, byte for byte", async () => {
    const { folder, ok, text } = equippedKitchen();
    const { store, text: ours } = memory(text());
    const said = [...setUp, ["fill", "2 L"], ["room", "17..20"], ["probe", "Jar=food"]] as const;
    const test = valueOf(testOfFiles(files, kitchenOf(text()), typed(...said), today));
    valueOf(await storeTest(store, test, { version: "0.0.0", today }));
    write(folder, "night.csv", csv);
    ok("add", "night.csv", ...said.flatMap(([key, value]) => [`--${key}`, value]));
    expect(ours()).toBe(text());
    expect(kitchenOf(ours()).tests).toHaveLength(1);
  });

  it("fails where an option has two values, or a start lies ahead", () => {
    const twice = typed(...setUp.slice(1), ["appliance", "box", "step-cooker"]);
    expect(problemOf(testOfFiles(files, sampleKitchen, twice, today)).code).toBe(
      "options-contradict",
    );
    const ahead = typed(...setUp, ["starts", "2026-11-22 10:00"]);
    expect(problemOf(testOfFiles(files, sampleKitchen, ahead, today)).code).toBe("option-invalid");
  });
});
