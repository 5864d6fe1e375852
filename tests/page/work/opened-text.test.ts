import { expect, it } from "vitest";
import { openedText } from "../../../src/page/work/opened-text.ts";

const open = (content: Blob) => openedText({ name: "kitchen.yaml", content });

it("is the text without a byte order mark", async () => {
  expect(await open(new Blob(["\ufeffholdband: 1\r\n"]))).toEqual({
    ok: true,
    value: "holdband: 1\r\n",
  });
});

it("is refused in another encoding, and where it is no kitchen by its size", async () => {
  const latin = await open(new Blob([new Uint8Array([0x66, 0xfc, 0x72])]));
  expect(latin).toMatchObject({ ok: false, problem: { code: "kitchen-not-utf8" } });
  const large = await open(new Blob(["#".repeat(5_000_001)]));
  expect(large).toMatchObject({
    ok: false,
    problem: { code: "kitchen-too-large", facts: { megabytes: 6 } },
  });
});
