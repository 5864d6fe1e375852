import { describe, expect, it } from "vitest";
import { cultures as catalogue } from "../../../src/culture/catalogue.ts";
import { thermometerShape } from "../../../src/input/kitchen/thermometer-options.ts";
import { windowsAsked } from "../../../src/input/kitchen/windows-asked.ts";
import { problemOf, tryEdit, typed, valueOf } from "../sample-kitchen.ts";

const asked = (options: Record<string, readonly string[]>) => thermometerShape.parse(options);

describe("windowsAsked", () => {
  it("takes the typed one, then each culture once, with the kitchen's figures first", () => {
    const kitchen = valueOf(tryEdit("culture", ["reuteri"], typed(["low", "35"]))).after;
    const options = asked({
      window: ["97.7F..103.1F"],
      culture: ["reuteri", "yoghurt", "reuteri"],
    });
    const windows = valueOf(windowsAsked(options, kitchen));
    // 97.7 degF is 36.5 degC: (97.7 - 32) / 1.8.
    expect(windows[0]?.low).toBeCloseTo(36.5, 9);
    const yoghurt = catalogue.find(({ id }) => id === "yoghurt")!;
    expect(windows.slice(1).map(({ low }) => low)).toEqual([35, yoghurt.low]);
    const reuteri = catalogue.find(({ id }) => id === "reuteri")!;
    expect(valueOf(windowsAsked(asked({ culture: ["reuteri"] }), null))[0]?.low).toBe(reuteri.low);
  });

  it("fails at a culture that nobody knows", () => {
    expect(problemOf(windowsAsked(asked({ culture: ["reuterii"] }), null)).code).toBe(
      "culture-unknown",
    );
  });
});
