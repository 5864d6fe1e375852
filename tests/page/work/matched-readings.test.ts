import { createHash } from "node:crypto";
import { describe, expect, it } from "vitest";
import { matchedReadings } from "../../../src/page/work/matched-readings.ts";
import { kitchenOf, testFile, waterTest } from "../../kitchen-analysis/small-kitchen.ts";
import { chosen } from "./page-room.ts";

const sha = (text: string): string => createHash("sha256").update(text).digest("hex");
const kitchen = kitchenOf([
  waterTest("one", [{ ...testFile("readings/night.csv", []), sha256: sha("1,2") }]),
]);
const match = (...files: ReturnType<typeof chosen>[]) =>
  matchedReadings(kitchen, files, () => undefined);

describe("opened files against a kitchen's list", () => {
  it("are known by their bytes, and stand where the kitchen lists them", async () => {
    const { found, problems, others } = await match(chosen("a/other name.txt", "1,2"));
    const one = found.get(sha("1,2"));
    expect([one?.path, await one?.content.text()]).toEqual(["readings/night.csv", "1,2"]);
    expect([problems, others]).toEqual([[], []]);
  });

  it("are never taken for a name: other bytes under a listed one are a problem", async () => {
    const { found, problems, others } = await match(chosen("Night.csv", "1,3"));
    expect(found.size).toBe(0);
    expect(others).toEqual([]);
    expect(problems).toEqual([
      {
        code: "raw-file-changed",
        facts: {
          file: "readings/night.csv",
          expected: sha("1,2").slice(0, 12),
          found: sha("1,3").slice(0, 12),
        },
      },
    ]);
  });

  it("are strangers where the listed file is there beside them", async () => {
    const { found, problems, others } = await match(
      chosen("night.csv", "1,3"),
      chosen("copy.csv", "1,2"),
    );
    expect([found.size, problems, others]).toEqual([1, [], ["night.csv"]]);
  });

  it("are a problem where they cannot be read, and the others are taken", async () => {
    const gone = Object.assign(new Blob(["x"]), {
      arrayBuffer: () => Promise.reject(new DOMException("gone", "NotFoundError")),
    });
    const { found, problems } = await match(
      { name: "gone.csv", content: gone },
      chosen("night.csv", "1,2"),
    );
    expect(found.size).toBe(1);
    expect(problems).toMatchObject([{ code: "file-unreadable", facts: { file: "gone.csv" } }]);
  });
});
