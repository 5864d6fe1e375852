import { expect, it } from "vitest";
import { commandTable } from "../../../src/cli/command-table.ts";
import { missingParts, noTestsYet } from "../../../src/report/wording/missing-parts.ts";
import { sampleKitchen, untestedKitchen } from "../sample-kitchen.ts";

const { kitchen } = untestedKitchen();
const empty = sampleKitchen({
  kitchen: { ...kitchen, appliances: [], containers: [] },
  requirements: [],
});

it("names every part a kitchen lacks, none where all are there", () => {
  expect(missingParts(sampleKitchen())).toEqual([]);
  expect(missingParts(untestedKitchen())).toEqual([]);
  expect(missingParts(empty).map(({ text }) => /^No (\w+) in/.exec(text)?.[1])).toEqual([
    "culture",
    "appliance",
    "container",
  ]);
});

it("shows commands that there are, with their own options", () => {
  for (const { command } of missingParts(empty)) {
    const entry = commandTable.find(({ name }) => name === command.split(" ")[1])!;
    const flags = entry.options.map(([, form]) => form.split(" ")[0]);
    for (const [flag] of command.matchAll(/--[a-z]+/g)) expect(flags).toContain(flag);
  }
});

it("says that advice without tests is assumed", () => {
  expect(noTestsYet(sampleKitchen())).toBeNull();
  expect(noTestsYet(untestedKitchen())).toMatch(/No water test yet: .+ assumed/);
});
