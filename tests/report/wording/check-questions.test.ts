import { describe, expect, it } from "vitest";
import {
  checkQuestionText,
  checkText,
  openQuestionText,
} from "../../../src/report/wording/check-questions.ts";
import { plainWriting } from "../../../src/report/writing.ts";
import { thermometerModel } from "../../../src/thermometer/thermometer-model.ts";
import type { CheckQuestion } from "../../../src/thermometer/check-question.ts";

const writing = plainWriting("degC");

/** By code, so that a new one without a sentence here does not compile. */
const questions: { readonly [Code in CheckQuestion["code"]]: CheckQuestion } = {
  "ice-too-warm": { check: 0, leftOut: true, code: "ice-too-warm", reading: 6 },
  "ice-too-cold": { check: 0, leftOut: true, code: "ice-too-cold", reading: -4 },
  "looks-like-fahrenheit": { check: 0, leftOut: true, code: "looks-like-fahrenheit", reading: 32 },
  "boiling-too-cold": {
    check: 0,
    leftOut: true,
    code: "boiling-too-cold",
    reading: 90,
    expected: 100,
    altitude: 3052,
  },
  "boiling-too-hot": {
    check: 0,
    leftOut: true,
    code: "boiling-too-hot",
    reading: 103,
    expected: 100,
  },
  "boiling-place-unknown": { check: 0, leftOut: true, code: "boiling-place-unknown" },
  "reference-far-off": {
    check: 0,
    leftOut: true,
    code: "reference-far-off",
    reading: 45,
    truth: 38,
  },
  "not-settled": { check: 0, leftOut: false, code: "not-settled", spread: 1.2 },
  "scale-off": { check: 0, leftOut: true, code: "scale-off", perHundred: -4.5 },
};

describe("checkQuestionText", () => {
  it.each(Object.entries(questions))(
    "%s: found, expected, likely cause, what to do",
    (_, asked) => {
      const text = checkQuestionText(asked, writing);
      const sentences = text.split(/(?<=[.]) /);
      expect(sentences.length).toBeGreaterThanOrEqual(3);
      expect(text).not.toMatch(/undefined|NaN|null/);
      expect(text.endsWith(".")).toBe(true);
    },
  );

  it("tells reading and truth in both units", () => {
    expect(openQuestionText(questions["ice-too-warm"], writing)).toMatch(
      /^In melting ice it read 6\.0 °C \(42\.8 °F\); 0 °C \(32 °F\) was expected\./,
    );
    expect(openQuestionText(questions["boiling-too-cold"], plainWriting("degF"))).toMatch(
      /read 194\.0 °F \(90\.0 °C\); 212\.0 °F \(100\.0 °C\) was expected/,
    );
  });

  it("names the altitude at which it would be right, to ten metres, where there is one", () => {
    const asked = questions["boiling-too-cold"];
    expect(openQuestionText(asked, writing)).toContain("water boils so at about 3,050 m.");
    const beyond = { ...asked, altitude: null } as CheckQuestion;
    expect(openQuestionText(beyond, writing)).toContain("missing or wrong. Check the altitude");
  });

  it("says what becomes of the check", () => {
    expect(checkQuestionText(questions["scale-off"], writing)).toMatch(
      /4\.5 °C \(8\.1 °F\) over the 100 °C \(180 °F\) between.*left out of the correction\.$/s,
    );
    expect(checkQuestionText(questions["not-settled"], writing)).toMatch(/used as it stands\.$/);
  });

  it("words what the thermometer's own model asks", () => {
    const asked = thermometerModel({
      resolution: 0.1,
      accuracy: null,
      checks: [{ kind: "ice", readings: [6], date: null, confirmed: false }],
    });
    expect(asked.questions.map((one) => checkQuestionText(one, writing)).join(" ")).toContain(
      "6.0 °C (42.8 °F)",
    );
  });
});

it("names a check by its kind and day", () => {
  expect(checkText({ kind: "ice", date: "2026-02-14" })).toBe("in melting ice on 2026-02-14");
  expect(checkText({ kind: "reference", date: null })).toBe("against a reference thermometer");
});
