import { describe, expect, it } from "vitest";
import { dialectTable } from "./dialect-table.ts";
import { read, rounded, setAsideTotal } from "./reading-helpers.ts";

describe("readReadings", () => {
  // Every case in small pieces as well: cut characters, lines and quotes must not matter.
  for (const chunk of [65_536, 7]) {
    it.each(dialectTable)(`reads: $title (pieces of ${chunk} bytes)`, async (example) => {
      const file = await read(example.file, example.options, chunk);
      expect(file.probes.map(({ name }) => name)).toEqual(Object.keys(example.celsius));
      for (const probe of file.probes)
        expect(rounded(probe.celsius)).toEqual(example.celsius[probe.name]);
      expect(rounded(file.probes[0]!.minutes)).toEqual(example.minutes);
      const setAside = file.setAside.map(({ reason, count, firstLine }) => [
        reason,
        [count, firstLine],
      ]);
      expect(Object.fromEntries(setAside)).toEqual(example.setAside ?? {});
      const cells = file.cellsSetAside.map((c) => [c.probe, c.reason, c.count, c.firstLine]);
      expect(cells).toEqual(example.cells ?? []);
      expect(file).toMatchObject(example.facts ?? {});
      expect(file.notices.map(({ code }) => code)).toEqual(
        expect.arrayContaining([...(example.notices ?? [])]),
      );
      expect(file.rowsRead).toBe(file.rowsUsed + setAsideTotal(file));
    });
  }
});
