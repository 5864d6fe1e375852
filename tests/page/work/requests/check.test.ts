import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { problemText } from "../../../../src/problem.ts";
import { holdband, temporaryFolder, write } from "../../../cli/run-holdband.ts";
import { filesOf, nights, quietNight, wordsOf } from "../nights.ts";
import { chosen, equippedRoom, noon, pageRoom } from "../page-room.ts";

// The command line's own answers are what the page is held against, field by field.

const folderWith = (files: readonly (readonly [name: string, text: string])[]): string => {
  const folder = temporaryFolder();
  for (const [name, text] of files) write(folder, name, text);
  return folder;
};

/** Both are made at another minute. */
const withoutTime = (html: string): string =>
  html.replaceAll(/(Report made )[^.]*? UTC( by)/g, "$1at some time$2");

/** In the page nothing need be said of the command line's options. */
const withoutHints = (html: string): string => html.replaceAll(/ \(--[a-z][^()<>]*\)/g, "");

const quiet = [chosen("night.csv", quietNight)];
const lines = ["22:00 20.1", "23:00 38.1", "0:30 38.2", "2:00 38.0", "4:00 38.1", "7:30 38.1"];
const typed = (text = lines.join("\n")) => ({ kind: "typed", lines: text }) as const;

const ofFiles = (...files: ReturnType<typeof chosen>[]) => ({ kind: "files", files }) as const;
const plain = (text: string): string => text.replaceAll(/\s+/g, " ").trim();

describe("a night by itself", () => {
  it.each(nights)("gives what the command line gives: $what", async (night) => {
    const folder = folderWith(night.files);
    const names = night.files.map(([name]) => name);
    const words = ["check", ...names, ...wordsOf(night.options)];
    const run = holdband([...words, "--json", "--report", "night.html"], { cwd: folder });
    expect(run.err).toBe("");
    const page = pageRoom();
    const readings = { kind: "files", files: filesOf(night) } as const;
    const shown = await page.ok("check", { readings, options: night.options });
    const data = await page.ok("save", { what: "night-data" });
    expect(JSON.parse(await data.content.text())).toEqual(JSON.parse(run.out));
    expect(await data.content.text()).toBe(run.out);
    const report = await (await page.ok("save", { what: "night-report" })).content.text();
    expect(withoutTime(report)).toBe(withoutTime(readFileSync(join(folder, "night.html"), "utf8")));
    expect(withoutHints(report)).toContain(withoutHints(shown.main));
    expect(report).toContain(`${noon.toISOString().slice(11, 16)} UTC`);
  });

  it("takes typed readings as the file that the command line would make of them", async () => {
    const folder = temporaryFolder();
    const name = "2026-10-18-by-hand.csv";
    write(folder, "typed.txt", lines.join("\n"));
    const options = { probe: ["Jar=food"], date: ["2026-10-18"] };
    const page = pageRoom();
    await page.ok("check", {
      readings: typed(),
      options: { ...options, culture: ["reuteri"] },
    });
    const saved = await page.ok("save", { what: "night-readings" });
    expect(saved.name).toBe(name);
    write(folder, name, await saved.content.text());
    // What `enter --out` writes of the same lines: tests/cli/enter/enter.test.ts has it from a pipe.
    expect(await saved.content.text()).toBe(
      "Time,Jar (°C)\n2026-10-18T22:00,20.1\n2026-10-18T23:00,38.1\n2026-10-19T00:30,38.2\n2026-10-19T02:00,38.0\n2026-10-19T04:00,38.1\n2026-10-19T07:30,38.1\n",
    );
    const words = ["check", name, "--culture=reuteri", "--probe=Jar=food", "--json"];
    const run = holdband(words, { cwd: folder });
    const data = await page.ok("save", { what: "night-data" });
    expect(await data.content.text()).toBe(run.out);
  });

  it("passes over a typed probe that was never read", async () => {
    const page = pageRoom();
    const options = { probe: ["Jar=food", "Basin=bath"], culture: ["reuteri"] };
    const readings = typed(lines.map((line) => `${line} -`).join("\n"));
    const shown = await page.ok("check", { readings, options });
    expect(shown.main).not.toContain("Basin");
  });

  it("reads typed numbers in the unit of the kitchen", async () => {
    const page = await equippedRoom();
    await page.ok("open", { files: [chosen("kitchen.yaml", "holdband: 1\nunit: F\n")] });
    const readings = typed("22:00 68\n23:00 100.6\n1:00 100.8\n5:00 100.4");
    await page.ok("check", { readings, options: { culture: ["reuteri"] } });
    const saved = await page.ok("save", { what: "night-readings" });
    expect(await saved.content.text()).toContain("Jar (°F)");
  });

  it("answers in one sentence, with the chance", async () => {
    const page = pageRoom();
    const shown = await page.ok("check", {
      readings: { kind: "files", files: quiet },
      options: { low: ["37"], high: ["39"], hours: ["12"] },
    });
    expect(shown.title).toBe("Water test: night.csv");
    expect(shown.heading).toBe("What this water test shows");
    expect(shown.summary).toMatch(/^(?:This set-up|This test) .*\. It is .* likely to hold\.$/);
  });

  it("tells how far it has read, of all that is to read", async () => {
    const page = pageRoom();
    const files = [chosen("a.csv", quietNight), chosen("b.csv", quietNight.replace("Jar", "Pot"))];
    const total = files.reduce((sum, { content }) => sum + content.size, 0);
    const readings = { kind: "files", files } as const;
    await page.ok("check", { readings, options: { culture: ["reuteri"] } });
    expect(page.told.at(-1)).toEqual([total, total]);
  });

  it("keeps markup in names as text", async () => {
    const evil = "<img src=x onerror='alert(1)'>";
    const text = quietNight.replace("Jar (degC)", evil);
    const page = pageRoom();
    const shown = await page.ok("check", {
      readings: { kind: "files", files: [chosen(`${evil}.csv`, text)] },
      options: { culture: ["reuteri"], column: [evil], unit: ["C"] },
    });
    expect(shown.title).toBe(`Water test: ${evil}.csv`);
    expect(shown.main).toContain("&lt;img");
    expect(shown.main + shown.byline).not.toMatch(/<img/);
    const saved = await page.ok("save", { what: "night-report" });
    expect(saved.name).toBe("-img src=x onerror='alert(1)'-.html");
  });
});

describe("a night that cannot be judged", () => {
  const window = { culture: ["reuteri"] };

  it.each([
    ["no file", ofFiles(), window, "option-missing"],
    ["an empty file", ofFiles(chosen("a.csv", "")), window, "file-empty"],
    ["a picture", ofFiles(chosen("a.csv", "\u0000\u0001\u0002PNG")), window, "file-binary"],
    ["no culture", ofFiles(...quiet), {}, "option-missing"],
    ["a culture that is unknown", ofFiles(...quiet), { culture: ["reutery"] }, "culture-unknown"],
    [
      "a window upside down",
      ofFiles(...quiet),
      { low: ["40"], high: ["38"], hours: ["5"] },
      "window-inverted",
    ],
    [
      "a number that is none",
      ofFiles(...quiet),
      { low: ["warm"], high: ["38"], hours: ["5"] },
      "option-invalid",
    ],
    ["a typed line that is none", typed("22:00 20\nlater 30"), window, "reading-unread"],
    ["one typed line", typed("22:00 20"), window, "reading-unread"],
    [
      "a probe that is not there",
      ofFiles(...quiet),
      { ...window, probe: ["Pot=food"] },
      "probe-unknown",
    ],
  ] as const)("is refused with its problem: %s", async (_, readings, options, code) => {
    const page = pageRoom();
    expect((await page.problem("check", { readings, options })).code).toBe(code);
    expect(page.room.desk.night).toBeNull();
  });

  it("is refused in the words of the command line", async () => {
    const folder = folderWith([["night.csv", quietNight]]);
    const run = holdband(["check", "night.csv", "--culture", "reutery"], { cwd: folder });
    const problem = await pageRoom().problem("check", {
      readings: ofFiles(...quiet),
      options: { culture: ["reutery"] },
    });
    expect(plain(problemText(problem))).toBe(plain(run.err));
  });

  it("leaves the night before where it was", async () => {
    const page = pageRoom();
    await page.ok("check", { readings: ofFiles(...quiet), options: window });
    const before = page.room.desk.night;
    await page.problem("check", { readings: ofFiles(), options: window });
    expect(page.room.desk.night).toBe(before);
  });
});
