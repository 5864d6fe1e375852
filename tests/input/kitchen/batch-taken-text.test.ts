import { describe, expect, it } from "vitest";
import { takenText } from "../../../src/input/kitchen/batch-taken-text.ts";

const from = { date: "2026-11-02" };

describe("takenText", () => {
  it("is nothing where everything was said", () => {
    expect(takenText({ taken: [], today: null })).toEqual([]);
  });

  it("names each thing once, with where it is from", () => {
    const taken = [
      { what: "culture", value: "reuteri", from: null },
      { what: "appliance", value: "cooker", from },
      { what: "setting", value: "38", from },
      { what: "container", value: "jars", from: null },
    ] as const;
    expect(takenText({ taken, today: "2026-11-25" })).toEqual([
      "Taken: culture reuteri and container jars, the only one here; appliance cooker and setting 38, as in the batch of 2026-11-02; the date 2026-11-25, today by this computer's clock.",
    ]);
  });
});
