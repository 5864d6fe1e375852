import { expect, it } from "vitest";
import { sizes } from "../../../src/report/charts/chart-theme.ts";
import { holdPlot } from "../../../src/report/charts/hold-close-up.ts";
import { draw, widthOf, wordsIn } from "../drawing.ts";
import { holdsNight, missesNight, noHoldNight } from "../sample-analysis.ts";

const [wide, narrow] = [sizes[0]!, sizes[1]!];
const [held] = holdsNight().probes;

it("fits a page and a phone", async () => {
  expect(widthOf(await draw(holdPlot(held!, "degC")!(wide)))).toBeLessThanOrEqual(740);
  expect(widthOf(await draw(holdPlot(held!, "degC")!(narrow)))).toBeLessThanOrEqual(365);
});

it("comes close: no scale from the room's temperature up", async () => {
  const degrees = wordsIn(await draw(holdPlot(held!, "degC")!(wide)))
    .filter((word) => /^\d+(?: °C)?$/.test(word))
    .map((word) => Number.parseInt(word, 10));
  expect(Math.min(...degrees)).toBeGreaterThanOrEqual(37);
});

it("does not flatten a hold to show a window far away", async () => {
  const [far] = missesNight().probes;
  const asked = { ...far!.verdicts[0]!.requirement, low: 18, high: 24, ceiling: null } as never;
  const plot = holdPlot(
    { ...far!, verdicts: [{ ...far!.verdicts[0]!, requirement: asked }] },
    "degC",
  )!(wide);
  const words = wordsIn(await draw(plot));
  expect(words.some((word) => word.startsWith("24"))).toBe(false);
});

it("is not drawn without a hold", () => {
  expect(holdPlot(noHoldNight().probes[0]!, "degC")).toBeNull();
});
