import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { agreementOf } from "./agreement.ts";
import { allReferences } from "./all-references.ts";
import { constructedOnly } from "./constructed-only.ts";
import { referenceTable } from "./reference-table.ts";
import { tablePath } from "./table-path.ts";

const root = join(import.meta.dirname, "..", "..");

describe("the table of values from outside", () => {
  it("is current: npm run references would write the same bytes", () => {
    expect(readFileSync(tablePath, "utf8")).toBe(referenceTable(allReferences));
  });

  it("holds no value that disagrees", () => {
    const wrong = allReferences.flatMap(({ title, blocks }) =>
      blocks.flatMap(({ asked, values }) =>
        values
          .filter((one) => !agreementOf(one, one.asked ?? asked).agrees)
          .map((one) => `${title}: ${one.what}, found ${one.found}, published ${one.published}`),
      ),
    );
    expect(wrong).toEqual([]);
  });

  it("names every file of the rooms it walks, with a published value or without", () => {
    const named = new Set([
      ...allReferences.flatMap(({ about }) => about),
      ...constructedOnly.map(([file]) => file),
    ]);
    // Shapes, questions and plumbing without arithmetic of their own.
    const without = new Set(["check-question", "correction-model", "thermometer"]);
    const missing = ["stats", "thermometer"].flatMap((room) =>
      readdirSync(join(root, "src", room))
        .map((file) => file.replace(/\.ts$/, ""))
        .filter((file) => !without.has(file) && !named.has(`${room}/${file}`)),
    );
    expect(missing).toEqual([]);
  });

  it("names no file that is not there", () => {
    const files = allReferences.flatMap(({ about }) => about);
    for (const file of files)
      expect(() => readFileSync(join(root, "src", `${file}.ts`)), file).not.toThrow();
  });
});
