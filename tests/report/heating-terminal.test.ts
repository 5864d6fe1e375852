import { describe, expect, it } from "vitest";
import { toHeatingTerminal } from "../../src/report/heating-terminal.ts";
import { expectGolden } from "./golden.ts";
import { openStep, sampleHeating } from "./sample-heating.ts";

const options = { colour: false, ascii: false, width: 80 };

describe("toHeatingTerminal", () => {
  it.each([60, 80, 120])("fits %s columns (golden)", (width) => {
    const text = toHeatingTerminal(sampleHeating(), { ...options, width });
    for (const line of text.split("\n")) expect(line.length, line).toBeLessThanOrEqual(width);
    expectGolden(`heating-${width}.txt`, text);
  });

  it("tells an open one with its reasons and what to do, in degF first where asked (golden)", () => {
    const text = toHeatingTerminal(sampleHeating({ step: openStep, shownUnit: "degF" }), options);
    expectGolden("heating-open.txt", text);
    expect(text).toContain("[UNPROVEN] 21 %");
    expect(text).toContain("194 °F (90 °C)");
    expect(text).toContain("Do next");
  });

  it("shows plain ASCII where the screen can show no more", () => {
    const text = toHeatingTerminal(sampleHeating(), { ...options, ascii: true });
    expect(text).toMatch(/^[\n -~]*$/);
    expect(text).toContain("90 degC (194 degF)");
  });

  it("colours the verdict's word alone", () => {
    const plain = toHeatingTerminal(sampleHeating(), options);
    const colour = toHeatingTerminal(sampleHeating(), { ...options, colour: true });
    // oxlint-disable-next-line no-control-regex -- colour codes are control characters
    expect(colour.replaceAll(/\u001B\[[\d;]*m/g, "")).toBe(plain);
    expect(colour.startsWith("\u001B[1;34m[HOLDS]")).toBe(true);
  });

  it("asks for a culture where nobody said what to cool below", () => {
    expect(toHeatingTerminal(sampleHeating({ coolDowns: [] }), options)).toContain("--culture");
  });

  it("never says that milk is safe", () => {
    const text = toHeatingTerminal(sampleHeating(), options).replaceAll(/\s+/g, " ");
    expect(text).toContain("not that milk is safe");
    expect(text).toContain("local food code");
  });
});
