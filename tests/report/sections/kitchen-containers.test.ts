import { expect, it } from "vitest";
import { kitchenContainers } from "../../../src/report/sections/kitchen-containers.ts";
import { markupWriting } from "../../../src/report/writing.ts";
import { visibleText } from "../drawing.ts";
import { oneAppliance, sampleKitchen } from "../sample-kitchen.ts";

const writing = markupWriting("degC");

it("tells of each container how far the food stays below its bath and how slowly it follows", () => {
  const text = visibleText(kitchenContainers({ analysis: sampleKitchen(), writing })!.html);
  expect(text).toContain(
    "Jars in water Circulating bath, 41 °C (105.8 °F) Stands below its bath 0.44 ± 0.30 °C (0.79 ± 0.54 °F) Follows after 23.4 ± 1.2 min Part lost to the room 2.1 ± 1.4 % (room 20.6 °C (69.1 °F), as you said)",
  );
  expect(text).toContain("not to be told Part lost to the room room not known");
});

it("says so where the food stood warmer than its bath", () => {
  const analysis = sampleKitchen();
  const tests = analysis.tests.map((one) => {
    if (one.analysis === null) return one;
    const responses = one.responses.map(({ food, bath, response }) => ({
      food,
      bath,
      response: { ...response, offset: { value: -0.2, standardUncertainty: 0.1 } },
    }));
    return { ...one, responses };
  });
  expect(
    visibleText(kitchenContainers({ analysis: { ...analysis, tests }, writing })!.html),
  ).toContain("0.20 ± 0.10 °C (0.36 ± 0.18 °F) above it");
});

it("is not there where no food and bath ran together", () => {
  expect(kitchenContainers({ analysis: oneAppliance("box"), writing })).toBeNull();
});
