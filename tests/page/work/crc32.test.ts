import { crc32 as nodeCrc32 } from "node:zlib";
import { expect, it } from "vitest";
import { crc32 } from "../../../src/page/work/crc32.ts";

it("is the check value of its parameters (ITU-T V.42: 0xCBF43926 of the digits 1 to 9)", () => {
  expect(crc32(new TextEncoder().encode("123456789"))).toBe(0xcbf43926);
});

it("is 0 of nothing, and zlib's own of any bytes", () => {
  expect(crc32(new Uint8Array(0))).toBe(0);
  const bytes = new Uint8Array(10_000).map((_, at) => (at * 37) % 256);
  expect(crc32(bytes)).toBe(nodeCrc32(bytes));
});
