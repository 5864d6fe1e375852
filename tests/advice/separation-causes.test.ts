import { describe, expect, it } from "vitest";
import { separationCauses } from "../../src/advice/separation-causes.ts";
import { findCulture } from "../../src/culture/catalogue.ts";
import type { Batch } from "../../src/kitchen/kitchen.ts";
import { batch } from "./constructed-batches.ts";

const yoghurt = findCulture("yoghurt");
if (!yoghurt.ok) throw new Error("the catalogue has lost a culture");
const context = { culture: yoghurt.value, level: 42 };
/** Everything logged, and nothing amiss. */
const plain: Partial<Batch> = {
  generation: 3,
  hours: 5,
  milk: "usual",
  heated: true,
  starter: 0.03,
  moved: false,
};
const separated = (more: Partial<Batch> = {}) => batch({ ...plain, separated: "much", ...more });
const sound = (more: Partial<Batch> = {}) => batch({ ...plain, separated: "none", ...more });
const codes = (...batches: readonly Batch[]): readonly string[] =>
  separationCauses(batches, context).map(({ code }) => code);

/** Constructed logs. */
describe("separationCauses", () => {
  it("has nothing to say where nothing separated, nor where all is logged and nothing amiss", () => {
    expect(codes(sound(), sound())).toEqual([]);
    expect(codes(separated(), sound())).toEqual([]);
  });

  it.each([
    [{ generation: 1 }, "first-generation"],
    [{ hours: 9 }, "held-too-long"],
    [{ milk: "thin" }, "thin-milk"],
    [{ heated: false }, "unheated-milk"],
    [{ moved: true }, "moved-while-setting"],
    [{ starter: 0.2 }, "much-starter"],
    [{ trouble: ["pink"] }, "contamination"],
  ] satisfies readonly (readonly [Partial<Batch>, string])[])("finds %j", (what, code) => {
    expect(codes(separated(what), sound())).toEqual([code]);
  });

  it("does not blame what the sound batches show as well", () => {
    expect(codes(separated({ milk: "thin" }), sound({ milk: "thin" }))).toEqual([]);
  });

  it("puts contamination first, then a fresh starter, then what tells most", () => {
    const log = [
      separated({ milk: "thin", moved: true }),
      separated({ milk: "thin" }),
      separated({ generation: 1, trouble: ["fuzzy"] }),
      sound(),
    ];
    expect(codes(...log)).toEqual([
      "contamination",
      "first-generation",
      "thin-milk",
      "moved-while-setting",
    ]);
  });

  it("counts hours as growth does: the same hours are longer where it is warmer", () => {
    const log = [separated({ hours: 6.5 })];
    const at = (level: number) => separationCauses(log, { ...context, level });
    expect(at(30)).toEqual([]);
    // 6.5 hours at the optimum against 5 at the target: above 1.25 times.
    const [warm] = at(40);
    expect(warm).toMatchObject({ code: "held-too-long" });
    if (warm?.code !== "held-too-long") throw new Error("no such cause");
    expect(warm.equivalentHours / warm.wantedHours).toBeGreaterThan(1.25);
  });

  it("names what the log is silent about, last", () => {
    const causes = separationCauses([batch({ separated: "much", milk: "thin" })], context);
    expect(causes).toEqual([
      { code: "thin-milk", batches: 1 },
      { code: "not-logged", missing: ["hours", "heated", "starter", "moved"] },
    ]);
  });
});
