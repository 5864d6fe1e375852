import { strToU8, zipSync } from "fflate";
import { expect, it } from "vitest";
import { zipEntries } from "../../../src/page/work/zip-directory.ts";

const zip = (files: Parameters<typeof zipSync>[0], comment = "") => {
  const bytes = new Uint8Array(zipSync(files));
  const whole = new Uint8Array([...bytes, ...strToU8(comment)]);
  new DataView(whole.buffer).setUint16(bytes.length - 2, comment.length, true);
  return whole;
};

it("lists what a zip holds, stored or deflated, under names of any script", () => {
  const bytes = zip({
    "nächte/夜.csv": strToU8("abc".repeat(100)),
    "raw.csv": [strToU8("abc"), { level: 0 }],
  });
  const found = zipEntries(bytes);
  expect(found).toMatchObject([
    {
      name: "nächte/夜.csv",
      method: 8,
      locked: false,
      size: expect.any(Number),
      originalSize: 300,
    },
    { name: "raw.csv", method: 0, locked: false, size: 3, originalSize: 3 },
  ]);
});

it("finds the directory before a comment", () => {
  expect(zipEntries(zip({ "a.csv": strToU8("x") }, "made on a Tuesday"))?.length).toBe(1);
});

it("is null where an address points elsewhere", () => {
  const bytes = zip({ "a.csv": strToU8("x") });
  const view = new DataView(bytes.buffer);
  view.setUint32(bytes.length - 6, 0xfffffff0, true);
  expect(zipEntries(bytes)).toBeNull();
  expect(zipEntries(new Uint8Array(5))).toBeNull();
});
