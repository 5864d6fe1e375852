import { expect, it } from "vitest";
import { cautions } from "../../../src/report/wording/cautions.ts";

const all = cautions.map(({ title, text }) => `${title}. ${text}`).join(" ");

it.each([
  /harmful bacteria/i,
  /Heat the milk first/,
  /sour promptly/,
  /throw the whole batch away/,
  /Do not scrape/,
  /pregnancy/i,
  /infants/,
  /weakened immunity/,
  /ask a clinician/,
  /local food code and a licensed professional decide/,
  /appliance’s own instructions/,
  /Hot water scalds/,
])("says %s", (words) => {
  expect(all).toMatch(words);
});

it("claims nothing for health", () => {
  expect(all).not.toMatch(/\b(?:healthy|benefit|cure|treats|probiotic|good for)\b/i);
});
