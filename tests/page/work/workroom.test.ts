import { expect, it } from "vitest";
import { watchOf } from "../../../src/page/work/workroom.ts";

it("counts each phase of a work by itself", () => {
  const told: (readonly [number, number])[] = [];
  const watch = watchOf({ progress: (read, total) => told.push([read, total]) });
  const reading = watch("reading");
  reading.onOpened(100);
  reading.onBytes(60);
  reading.onBytes(40);
  const judging = watch("judging");
  judging.onBytes(10);
  expect(told).toEqual([
    [60, 100],
    [100, 100],
    [10, 0],
  ]);
});
