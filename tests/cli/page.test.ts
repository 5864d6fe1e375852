import { mkdirSync, readFileSync, statSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { holdband, listing, root, temporaryFolder, write } from "./run-holdband.ts";

const built = readFileSync(join(root, "dist", "page.html"), "utf8");

describe("page", () => {
  it("writes the page that was built, where one stands, and says what to do with it", () => {
    const folder = temporaryFolder();
    const run = holdband(["page"], { cwd: folder });
    expect(run).toMatchObject({ exitCode: 0, err: "" });
    expect(run.out).toContain("holdband.html");
    expect(run.out).toContain("Open it in a browser");
    expect(readFileSync(join(folder, "holdband.html"), "utf8")).toBe(built);
    expect(listing(folder)).toHaveLength(1);
  });

  it("writes it elsewhere, and says as data where", () => {
    const folder = temporaryFolder();
    mkdirSync(join(folder, "for the phone"));
    const file = join("for the phone", "kitchen.html");
    const run = holdband(["page", file, "--json"], { cwd: folder });
    expect(run).toMatchObject({ exitCode: 0, err: "" });
    expect(JSON.parse(run.out)).toMatchObject({ contract: 1, page: file });
    expect(readFileSync(join(folder, file), "utf8")).toBe(built);
  });

  it("replaces an earlier page, and an earlier report", () => {
    const folder = temporaryFolder();
    const night = join(root, "fixtures", "kitchen", "readings", "adjustable-cooker.csv");
    const report = ["--culture", "reuteri", "--report", "night.html"];
    expect(holdband(["check", night, ...report], { cwd: folder }).exitCode).toBe(0);
    for (let run = 0; run < 2; run += 1) {
      expect(holdband(["page", "night.html"], { cwd: folder }).exitCode).toBe(0);
    }
    expect(readFileSync(join(folder, "night.html"), "utf8")).toBe(built);
  });

  it.each([
    ["readings", "holdband.html", "minute,jar\n0,38.1\n"],
    ["somebody's own page", "recipes.html", "<!doctype html>\n<title>Recipes</title>\n"],
  ])("leaves %s as it is, and says so", (_, name, text) => {
    const folder = temporaryFolder();
    write(folder, name, text);
    const before = listing(folder);
    const run = holdband(["page", name], { cwd: folder });
    expect(run).toMatchObject({ exitCode: 2, out: "" });
    expect(run.err).toContain(name);
    expect(run.err).toContain("What was there before is unharmed");
    expect(listing(folder)).toEqual(before);
  });

  it("says which folder is missing, and takes one file only", () => {
    const folder = temporaryFolder();
    const nowhere = holdband(["page", join("no", "page.html"), "--json"], { cwd: folder });
    expect(nowhere.exitCode).toBe(2);
    expect(JSON.parse(nowhere.out)).toMatchObject({ problem: { code: "file-unwritable" } });
    expect(holdband(["page", "a.html", "b.html"], { cwd: folder }).exitCode).toBe(2);
    expect(holdband(["page", "."], { cwd: folder }).err).toContain("it is a folder");
    expect(listing(folder)).toEqual([]);
  });

  it("does as its help says", () => {
    const folder = temporaryFolder();
    const help = holdband(["page", "--help"]).out;
    const line = /Example:\n {2}holdband (.+)/.exec(help)?.[1] ?? "";
    expect(holdband(line.split(" "), { cwd: folder }).exitCode).toBe(0);
    expect(statSync(join(folder, "my-page.html")).size).toBe(Buffer.byteLength(built));
  });
});
