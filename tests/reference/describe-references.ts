import { describe, expect, it } from "vitest";
import { agreementOf } from "./agreement.ts";
import type { ReferenceGroup } from "./reference-values.ts";

/** One test for each published value of a group; the same rows make up the table. */
export const describeReferences = (group: ReferenceGroup): void => {
  describe(group.title, () => {
    for (const block of group.blocks)
      for (const value of block.values)
        it(`${value.what} is ${value.published} (${block.source})`, () => {
          const { agrees, agreement, asked } = agreementOf(value, value.asked ?? block.asked);
          expect(agrees, `found ${value.found}: ${agreement}, asked: ${asked}`).toBe(true);
        });
  });
};
