import { expect, it } from "vitest";
import { nightName } from "../../../src/page/work/saved-names.ts";

const night = (name: string) =>
  ({ files: [{ readings: { name } }] }) as unknown as Parameters<typeof nightName>[0];

it("is called after the first file of readings", () => {
  expect(nightName(night("night.csv"), ".html")).toBe("night.html");
  expect(nightName(night("night.2026.txt"), ".json")).toBe("night.2026.json");
});

it("has only characters that every system takes", () => {
  expect(nightName(night("readings/a<b>:c?.csv"), ".html")).toBe("a-b--c-.html");
  expect(nightName(night("..\u202efdp.csv"), ".html")).toBe("fdp.html");
  expect(nightName(night(""), ".html")).toBe("readings.html");
  expect(nightName({ ...night("x"), files: [] }, ".json")).toBe("readings.json");
});
