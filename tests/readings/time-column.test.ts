import { describe, expect, it } from "vitest";
import { createColumn, createLineRecord } from "../../src/readings/time-column.ts";

describe("createColumn", () => {
  it("keeps every number beyond its first room", () => {
    const column = createColumn();
    for (let value = 0; value < 5000; value++) column.push(value / 2);
    expect(column.length).toBe(5000);
    expect(Array.from(column.values())).toEqual(
      Array.from({ length: 5000 }, (_, value) => value / 2),
    );
    expect(column.at(4999)).toBe(2499.5);
    expect(column.at(5000)).toBeNaN();
  });
});

describe("createLineRecord", () => {
  it("tells each row's line, over lines passed over", () => {
    const record = createLineRecord();
    const lines = [4, 5, 6, 9, 10, 20, 21];
    for (const [row, line] of lines.entries()) record.add(row, line);
    expect(lines.map((_, row) => record.lineOf(row))).toEqual(lines);
  });
});
