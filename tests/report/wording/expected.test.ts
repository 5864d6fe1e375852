import { expect, it } from "vitest";
import { levelText, likelyText, outlookText } from "../../../src/report/wording/expected.ts";
import { plainWriting } from "../../../src/report/writing.ts";
import { sampleKitchen } from "../sample-kitchen.ts";
import { levelOf } from "../sample-candidates.ts";

const writing = plainWriting("degC");

it("gives a level with its limits", () => {
  expect(levelText({ ...levelOf(38.04, 0.4), low: 37.1, high: 38.9 }, writing)).toBe(
    "38.0 °C (100.5 °F), between 37.1 and 38.9 °C (98.8 and 102.0 °F)",
  );
});

it("never lets a probability and its word contradict each other", () => {
  expect(likelyText({ probability: 0.9499 }, 0.95, writing)).toBe("just under 95 % likely to hold");
  expect(likelyText({ probability: 1 }, 0.95, writing)).toBe("> 99 % likely to hold");
});

it("has no level to tell where the tests never settled", () => {
  const [box] = sampleKitchen().advice.appliances.slice(3);
  const { best, chance } = box!.cultures[0]!;
  expect(outlookText({ ...best!, level: null }, chance!, 0.95, writing)).toMatch(
    /^\d+ % likely to hold$/,
  );
  expect(outlookText(best!, chance!, 0.95, writing)).toMatch(/^expected .* likely to hold$/);
});
