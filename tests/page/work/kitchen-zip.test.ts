import { unzipSync } from "fflate";
import { describe, expect, it } from "vitest";
import { kitchenZip } from "../../../src/page/work/kitchen-zip.ts";
import type { RawFile } from "../../../src/page/work/keeper.ts";
import { kitchenOf, testFile, waterTest } from "../../kitchen-analysis/small-kitchen.ts";

const raw = (path: string, text: string): RawFile => ({ path, content: new Blob([text]) });
const listed = (path: string, sha256: string) => ({ ...testFile(path, []), sha256 });

const unpacked = async (zip: Blob): Promise<Readonly<Record<string, string>>> => {
  const files = unzipSync(new Uint8Array(await zip.arrayBuffer()));
  return Object.fromEntries(
    Object.entries(files).map(([name, bytes]) => [name, Buffer.from(bytes).toString("utf8")]),
  );
};

const bytesIn = async (zone: string): Promise<string> => {
  const before = process.env["TZ"];
  process.env["TZ"] = zone;
  const zip = await kitchenZip("text", kitchenOf([]), new Map());
  if (before === undefined) delete process.env["TZ"];
  else process.env["TZ"] = before;
  return Buffer.from(await zip.arrayBuffer()).toString("hex");
};

describe("a kitchen's zip", () => {
  it("has each file where kitchen.yaml lists it, whatever it was called when it came in", async () => {
    const kitchen = kitchenOf([waterTest("one", [listed("readings/ä night.csv", "aa")])]);
    const files = new Map([
      ["aa", raw("readings/other.csv", "1,2")],
      ["bb", raw("readings/z.csv", "3,4")],
    ]);
    expect(await unpacked(await kitchenZip("text", kitchen, files))).toEqual({
      "kitchen.yaml": "text",
      "readings/z.csv": "3,4",
      "readings/ä night.csv": "1,2",
    });
  });

  it("lets no file of readings stand in the place of kitchen.yaml", async () => {
    const kitchen = kitchenOf([waterTest("one", [listed("kitchen.yaml", "aa")])]);
    const files = new Map([["aa", raw("kitchen.yaml", "evil")]]);
    expect(await unpacked(await kitchenZip("text", kitchen, files))).toEqual({
      "kitchen.yaml": "text",
    });
  });

  it("has the same bytes in every time zone", async () => {
    const first = await bytesIn("Pacific/Kiritimati");
    expect(await bytesIn("America/Los_Angeles")).toBe(first);
    // 1980-01-01 12:00 as MS-DOS date and time (APPNOTE 6.3.10, 4.4.6): 0x0021 and 0x6000, low byte first.
    expect(first.slice(20, 28)).toBe("00602100");
  });
});
