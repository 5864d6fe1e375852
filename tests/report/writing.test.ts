import { expect, it } from "vitest";
import { plainWriting, terminalWriting, withSigns } from "../../src/report/writing.ts";

it("gives plain sentences their signs, but never changes a quoted name", () => {
  const sentence = '"T degC +-1" steps by 0.5 degC; assumed +-1 degF for 30..40.';
  expect(withSigns(plainWriting("degC"), sentence)).toBe(
    '"T degC +-1" steps by 0.5 °C; assumed ±1 °F for 30 to 40.',
  );
  expect(withSigns(terminalWriting("degC", true), sentence)).toBe(sentence);
});
