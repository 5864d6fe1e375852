import { describe, expect, it } from "vitest";
import { budgetSpec } from "../../../src/report/charts/budget.ts";
import { sizes } from "../../../src/report/charts/chart-theme.ts";
import { dwellSpec } from "../../../src/report/charts/dwell.ts";
import { holdSpec } from "../../../src/report/charts/hold-close-up.ts";
import { nightSpec } from "../../../src/report/charts/night.ts";
import { draw } from "../drawing.ts";
import { hostileNight, startWallClock, unprovenNight } from "../sample-analysis.ts";

const [wide, narrow] = [sizes[0]!, sizes[1]!];
const [probe] = unprovenNight().probes;

describe("every chart", () => {
  const specs = {
    night: nightSpec({ probe: probe!, context: [], startWallClock, unit: "degC" }, wide),
    hold: holdSpec(probe!, "degC", wide)!,
    budget: budgetSpec(probe!.uncertainty, "degC", wide),
    dwell: dwellSpec({ below: 20, inside: 300, above: 100 }, wide),
    context: nightSpec(
      {
        probe: hostileNight().probes[0]!,
        context: [hostileNight().probes[1]!.series],
        startWallClock,
        unit: "degF",
      },
      narrow,
    ),
  };

  it.each(Object.entries(specs))(
    "%s: same bytes again, two decimals, no colour of its own",
    async (_name, spec) => {
      const svg = await draw(spec);
      expect(await draw(spec)).toBe(svg);
      const tags = svg.match(/<[^>]+>/g)!.join("");
      expect(tags).not.toMatch(/\d\.\d{3}/);
      expect(tags).not.toMatch(/#[0-9a-f]{3,8}\b|rgb\(|"(?:black|white|steelblue)"/i);
      expect(tags).not.toMatch(/NaN|undefined|Infinity/);
      expect(tags).not.toMatch(/\sstyle=/);
    },
  );
});
