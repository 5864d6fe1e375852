import { describe, expect, it } from "vitest";
import { createLineRecord } from "../../../src/readings/times/line-record.ts";

describe("createLineRecord", () => {
  it("tells each row's line, over lines passed over", () => {
    const record = createLineRecord();
    const lines = [4, 5, 6, 9, 10, 20, 21];
    for (const [row, line] of lines.entries()) record.add(row, line);
    expect(lines.map((_, row) => record.lineOf(row))).toEqual(lines);
  });
});
