import { describe, expect, it } from "vitest";
import * as names from "../../../src/report/wording/names.ts";

// The tables are typed by the closed sets, so a missing code does not compile;
// here: each word stands, is plain, and no two codes share one.
const tables: [string, Record<string, string>][] = Object.entries(names).flatMap(([name, table]) =>
  typeof table === "object" ? [[name, table as Record<string, string>]] : [],
);

describe.each(tables)("%s", (_name, table) => {
  it("has plain words of its own for each code", () => {
    const words = Object.values(table);
    expect(words.length).toBeGreaterThan(2);
    expect(new Set(words).size).toBe(words.length);
    for (const word of words) expect(word).toMatch(/^[A-Za-z0-9][A-Za-z0-9 ,;:’.-]+$/);
  });
});

it("calls a phase by its likely cause where there is one", () => {
  const span = { fromMinute: 0, toMinute: 9 };
  expect(names.phaseName({ kind: "disturbance", cause: "lid-lifted", ...span })).toBe("lid lifted");
  expect(names.phaseName({ kind: "disturbance", ...span })).toBe("disturbance");
});
