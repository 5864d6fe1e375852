import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { withAppliance } from "../../src/kitchen/edits/with-appliance.ts";
import { withContainer } from "../../src/kitchen/edits/with-container.ts";
import { withCulture } from "../../src/kitchen/edits/with-culture.ts";
import { withTest } from "../../src/kitchen/edits/with-test.ts";
import { withThermometer } from "../../src/kitchen/edits/with-thermometer.ts";
import type { Kitchen } from "../../src/kitchen/kitchen.ts";
import { parseKitchen } from "../../src/kitchen/parse-kitchen.ts";
import { problemText } from "../../src/problem.ts";
import type { Outcome } from "../../src/problem.ts";
import { anyKitchen } from "./arbitrary-kitchen.ts";
import * as written from "./written-kitchen.ts";

const valueOf = <Value>(outcome: Outcome<Value>): Value => {
  if (!outcome.ok) throw new Error(problemText(outcome.problem));
  return outcome.value;
};

const parsed = (text: string): Kitchen => valueOf(parseKitchen(text, "kitchen.yaml"));

/** An entry is an object, and an object puts names like "38" first: probes by name. */
const inOrder = (kitchen: Kitchen): Kitchen => ({
  ...kitchen,
  tests: kitchen.tests.map((test) => ({
    ...test,
    files: test.files.map((file) => ({
      ...file,
      probes: file.probes.toSorted((a, b) => (a.name < b.name ? -1 : 1)),
    })),
  })),
});

const anyStyle = fc.record({
  quotes: fc.constantFrom("PLAIN" as const, "QUOTE_DOUBLE" as const, "QUOTE_SINGLE" as const),
  indent: fc.constantFrom(1, 2, 4),
  lists: fc.constantFrom("any" as const, "flow" as const),
});

// The kitchens are random and constructed; the text comes from the YAML library itself.
describe("a kitchen written and read again", () => {
  it("is the same kitchen, in any style of YAML", () => {
    fc.assert(
      fc.property(anyKitchen, anyStyle, (kitchen, style) => {
        expect(parsed(written.kitchenText(kitchen, style))).toEqual(kitchen);
      }),
      { numRuns: 300 },
    );
  });

  it("is the same with a byte-order mark and with CRLF", () => {
    fc.assert(
      fc.property(anyKitchen, (kitchen) => {
        const text = written.kitchenText(kitchen);
        expect(parsed(`\uFEFF${text.replaceAll("\n", "\r\n")}`)).toEqual(kitchen);
      }),
    );
  });

  it("is the same when built entry by entry", () => {
    const file = "kitchen.yaml";
    fc.assert(
      fc.property(anyKitchen, (kitchen) => {
        const altitude = kitchen.altitude === null ? "" : `altitude: ${kitchen.altitude}\n`;
        let text = `holdband: 1\n${altitude}`;
        for (const one of kitchen.thermometers) {
          text = valueOf(withThermometer(text, file, one.id, written.thermometerEntry(one)));
        }
        for (const one of kitchen.appliances) {
          text = valueOf(withAppliance(text, file, one.id, written.applianceEntry(one)));
        }
        for (const one of kitchen.containers) {
          text = valueOf(withContainer(text, file, one.id, written.containerEntry(one)));
        }
        for (const one of kitchen.cultures) {
          text = valueOf(withCulture(text, file, one.id, written.cultureEntry(one)));
        }
        for (const one of kitchen.tests) {
          text = valueOf(withTest(text, file, one.id, written.testEntry(one)));
        }
        const head = { shownUnit: "degC", room: null, batches: [] };
        expect(inOrder(parsed(text))).toEqual(inOrder({ ...kitchen, ...head } as Kitchen));
      }),
    );
  });
});
