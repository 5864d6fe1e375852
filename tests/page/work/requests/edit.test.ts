import { describe, expect, it } from "vitest";
import { problemText } from "../../../../src/problem.ts";
import type { FormValues, Requests } from "../../../../src/page/protocol.ts";
import { holdband, temporaryFolder, write } from "../../../cli/run-holdband.ts";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { wordsOf } from "../nights.ts";
import { emptyShelf, equippedRoom, pageRoom, shelfKeeper } from "../page-room.ts";

type Edit = Requests["edit"]["asked"];

const flags = (options: FormValues): readonly string[] =>
  Object.entries(options).flatMap(([key, value]) =>
    typeof value === "boolean" ? (value ? [`--${key}`] : []) : wordsOf({ [key]: value }),
  );

// One edit after the other, on the page and by the command line's own program; all of it constructed.
const edits: readonly Edit[] = [
  {
    section: "appliance",
    words: ["box"],
    options: { kind: ["warming box"], marks: ["low,1,2,high"], name: ["Box in the hall"] },
  },
  { section: "appliance", words: ["box"], options: { thermostat: ["no"], moved: ["2026-05-01"] } },
  { section: "container", words: ["jars"], options: { stands: ["jars in water"], count: ["6"] } },
  { section: "culture", words: ["reuteri"], options: {} },
  {
    section: "culture",
    words: ["mine"],
    options: { low: ["86F"], high: ["91F"], ceiling: ["104F"], hours: ["20"] },
  },
  {
    section: "thermometer",
    words: ["pen"],
    options: {
      ice: ["0.3", "0.2", "0.3"],
      boiling: ["95.5", "95.4"],
      altitude: ["1450m"],
      date: ["2026-02-14"],
      resolution: ["0.1"],
    },
  },
  {
    section: "batch",
    words: [],
    options: {
      culture: ["reuteri"],
      appliance: ["box"],
      setting: ["2"],
      container: ["jars"],
      date: ["2026-03-01"],
      generation: ["1"],
      separated: ["much"],
    },
  },
  {
    section: "batch",
    words: [],
    options: {
      culture: ["reuteri"],
      date: ["2026-03-05"],
      generation: ["2"],
      separated: ["a little"],
      trouble: ["pink"],
    },
  },
  { section: "batch", words: ["1"], options: { separated: ["unknown"], starter: ["5%"] } },
  { section: "batch", words: ["1"], options: { remove: true } },
];

interface BatchAnswer {
  readonly remarks: readonly string[];
  readonly cautions: readonly string[];
  readonly due: readonly { readonly text: string }[];
}

const plain = (text: string): string => text.replaceAll(/\s+/g, " ").trim();

const logged = (day: string): Edit => ({
  section: "batch",
  words: [],
  options: { appliance: ["warm-cooker"], date: [day], separated: ["none"] },
});

describe("edits of the kitchen", () => {
  it("leave the same bytes as the command line's", async () => {
    const folder = temporaryFolder();
    expect(holdband(["init", "."], { cwd: folder }).exitCode).toBe(0);
    const page = pageRoom();
    for (const edit of edits) {
      const { section, words, options } = edit;
      const run = holdband([section, ...words, ...flags(options), "--json"], { cwd: folder });
      expect(run.err).toBe("");
      // oxlint-disable-next-line no-await-in-loop -- each on what the last one left
      const { state, remarks } = await page.ok("edit", edit);
      expect(state.text).toBe(readFileSync(join(folder, "kitchen.yaml"), "utf8"));
      if (section !== "batch" || options["remove"] === true) continue;
      const said = JSON.parse(run.out) as BatchAnswer;
      const due = said.due.map(({ text }) => text);
      const usual = remarks.filter((text) => text.startsWith("Separation in the first"));
      expect(remarks).toEqual([...said.cautions, ...said.remarks, ...usual, ...due]);
    }
  });

  it("say what follows: usual separation, what to throw away, which test is due, what moved up", async () => {
    const page = pageRoom();
    const answers: (readonly string[])[] = [];
    for (const edit of edits) {
      // oxlint-disable-next-line no-await-in-loop -- each on what the last one left
      answers.push((await page.ok("edit", edit)).remarks);
    }
    const [first = [], second = [], , removed = []] = answers.slice(6);
    expect(first.join(" ")).toMatch(/Separation in the first generation .* is usual/);
    expect(second[0]).toMatch(/^Pink colour: throw all of it away/);
    expect(second[1]).toBe(
      "Taken: appliance box, setting 2 and container jars, as in the batch of 2026-03-01.",
    );
    expect(second[2]).toMatch(/^Test .* once with water before the next batch/);
    expect(removed).toEqual([
      "Batch 1, of 2026-03-01, was taken out. Those after it have moved up by one number.",
    ]);
  });

  it("say what a check makes of a thermometer", async () => {
    const page = await equippedRoom();
    const { remarks } = await page.ok("edit", {
      section: "thermometer",
      words: ["pen"],
      options: { ice: ["0.3", "0.2", "0.3"], date: ["2026-10-19"] },
    });
    expect(remarks[0]).toBe("pen: Checked in melting ice on 2026-10-19; last check yesterday.");
    expect(remarks[1]).toMatch(/^Add to what it shows, .* at 38 °C \(100\.4 °F\) −0\.3 ± 0\.4 °C/);
  });

  it("take a day that nobody said from the clock on the wall", async () => {
    const page = await equippedRoom();
    const options = { appliance: ["warm-cooker"], separated: ["none"] };
    const { state, remarks } = await page.ok("edit", { section: "batch", words: [], options });
    expect(state.written["batches"]?.["1"]).toMatchObject({ date: "2026-10-20" });
    expect(remarks[0]).toContain("the date 2026-10-20, today by this computer's clock");
  });
});

describe("an edit that cannot be", () => {
  it.each([
    ["appliance", ["new"], {}, "option-missing"],
    ["appliance", [], { kind: ["cooker"] }, "option-missing"],
    ["appliance", ["box"], { kind: ["oven"] }, "option-invalid"],
    ["culture", ["reutery"], {}, "culture-unknown"],
    ["thermometer", ["pen"], { ice: ["3.5"] }, "check-doubtful"],
    ["thermometer", ["pen"], { boiling: ["98"] }, "option-missing"],
    ["batch", ["7"], { separated: ["none"] }, "option-invalid"],
    ["batch", [], { separated: ["none"], appliance: ["nowhere"] }, "not-in-kitchen"],
    ["batch", [], { separated: ["none"], date: ["2027-01-01"] }, "option-invalid"],
  ] as const)("is refused and changes nothing: %s %j %j", async (section, words, options, code) => {
    const page = await equippedRoom();
    const before = page.room.store.text();
    expect((await page.problem("edit", { section, words, options })).code).toBe(code);
    expect(page.room.store.text()).toBe(before);
  });

  it("is refused in the words of the command line", async () => {
    const page = await equippedRoom();
    const folder = temporaryFolder();
    write(folder, "kitchen.yaml", page.room.store.text());
    const options = { ice: ["3.5", "3.6", "3.5"] };
    const run = holdband(["thermometer", "pen", ...flags(options)], { cwd: folder });
    const problem = await page.problem("edit", { section: "thermometer", words: ["pen"], options });
    expect(plain(problemText(problem))).toBe(plain(run.err));
    const confirmed = { ...options, confirm: true };
    await page.ok("edit", { section: "thermometer", words: ["pen"], options: confirmed });
  });
});

describe("a batch's number", () => {
  it("is that of the batch on the screen: another window's change is never hit in its place", async () => {
    const shelf = emptyShelf();
    const page = await equippedRoom("", shelfKeeper(shelf));
    await page.ok("edit", logged("2026-03-01"));
    await page.ok("edit", logged("2026-03-05"));
    const other = pageRoom(shelfKeeper(shelf));
    await other.ok("start", null);
    await other.ok("edit", { section: "batch", words: ["1"], options: { remove: true } });
    const meant = { section: "batch", words: ["1"], options: { remove: true } } as const;
    expect((await page.problem("edit", meant)).code).toBe("kitchen-changed-meanwhile");
    expect(shelf.text).toContain("2026-03-05");
    // Now the screen shows what the other window left, and the number is clear.
    const { state } = await page.ok("edit", meant);
    expect(state.kitchen.batches).toEqual([]);
  });
});
