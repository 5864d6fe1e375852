import { strToU8, zipSync } from "fflate";
import { describe, expect, it } from "vitest";
import { problemText } from "../../../src/problem.ts";
import { largestFile } from "../../../src/page/work/file-hash.ts";
import { unzipped } from "../../../src/page/work/unzip.ts";

const zipOf = (files: Readonly<Record<string, string>>): Uint8Array<ArrayBuffer> =>
  new Uint8Array(
    zipSync(Object.fromEntries(Object.entries(files).map(([name, text]) => [name, strToU8(text)]))),
  );

const open = (bytes: Uint8Array<ArrayBuffer>) =>
  unzipped({ name: "kitchen.zip", content: new Blob([bytes]) });

const why = async (bytes: Uint8Array<ArrayBuffer>): Promise<string> => {
  const outcome = await open(bytes);
  if (outcome.ok) throw new Error("it was unpacked");
  expect(outcome.problem.code).toBe("file-unreadable");
  return problemText(outcome.problem);
};

/** Where the central directory's first entry stands (APPNOTE 6.3.10, 4.3.12: signature 0x02014b50). */
const directoryAt = (bytes: Uint8Array): number => {
  const view = new DataView(bytes.buffer);
  for (let at = 0; at < bytes.length - 4; at += 1) {
    if (view.getUint32(at, true) === 0x02014b50) return at;
  }
  throw new Error("no central directory");
};

/** The same zip, whose directory says that the first file unpacks to `size`. */
const claiming = (bytes: Uint8Array<ArrayBuffer>, size: number): Uint8Array<ArrayBuffer> => {
  const forged = new Uint8Array(bytes);
  new DataView(forged.buffer).setUint32(directoryAt(forged) + 24, size, true);
  return forged;
};

describe("a zip of a kitchen folder", () => {
  it("gives its files with their paths", async () => {
    const outcome = await open(
      zipOf({ "k/kitchen.yaml": "holdband: 1\n", "k/readings/a.csv": "x" }),
    );
    if (!outcome.ok) throw new Error(problemText(outcome.problem));
    expect(outcome.value.map(({ name }) => name)).toEqual(["k/kitchen.yaml", "k/readings/a.csv"]);
    expect(await outcome.value[0]?.content.text()).toBe("holdband: 1\n");
  });

  it("passes over what leaves the folder, is hidden, or is no part of a kitchen", async () => {
    const outcome = await open(
      zipOf({
        "../evil.csv": "x",
        "/etc/evil.csv": "x",
        "a/../../evil.csv": "x",
        "C:/evil.csv": "x",
        "a\\..\\evil.csv": "x",
        ".hidden/a.csv": "x",
        "__MACOSX/._a.csv": "x",
        "reports/": "",
        "reports/kitchen.html": "<!doctype html>",
        "kitchen.previous.yaml": "x",
        "readings/good.csv": "x",
      }),
    );
    expect(outcome.ok && outcome.value.map(({ name }) => name)).toEqual(["readings/good.csv"]);
  });

  it("is refused where it unpacks to more than a page can take: by what it says, before it is unpacked", async () => {
    const bytes = claiming(zipOf({ "a.csv": "x".repeat(1000) }), largestFile + 1);
    expect(await why(bytes)).toMatch(/over 500 MB/);
  });

  it("is refused where a file holds more than it says", async () => {
    expect(await why(claiming(zipOf({ "a.csv": "abc".repeat(10_000) }), 10))).toMatch(/damaged/);
  });

  it("is refused where a file holds less than it says", async () => {
    expect(await why(claiming(zipOf({ "a.csv": "abc".repeat(100) }), 5000))).toMatch(/damaged/);
  });

  it("is refused with more files than a kitchen has", async () => {
    const many = Object.fromEntries(Array.from({ length: 2001 }, (_, at) => [`a${at}.csv`, ""]));
    expect(await why(zipOf(many))).toMatch(/over 2000 files/);
  });

  it.each([
    ["text", strToU8("no zip at all, but long enough to look for the end of one")],
    ["nothing", new Uint8Array(0)],
    ["half a zip", zipOf({ "a.csv": "abc".repeat(1000) }).slice(0, 60)],
  ])("is refused where it is %s", async (_, bytes) => {
    expect(await why(new Uint8Array(bytes))).toMatch(/no zip file/);
  });

  it("never throws, whatever byte of it is changed", async () => {
    const good = zipOf({ "kitchen.yaml": "holdband: 1\n", "readings/a.csv": "1,2\n".repeat(50) });
    for (let at = 0; at < good.length; at += 1) {
      const bad = new Uint8Array(good);
      bad[at] = (bad[at] ?? 0) ^ 0xff;
      // oxlint-disable-next-line no-await-in-loop -- one after the other
      const outcome = await open(bad);
      expect(outcome.ok || outcome.problem.code === "file-unreadable").toBe(true);
    }
  });
});
