import { describe, expect, it } from "vitest";
import { style } from "../../src/report/style.ts";

type Colour = readonly [number, number, number];

const tokens = (block: string): ReadonlyMap<string, Colour> =>
  new Map(
    [...block.matchAll(/--([a-z-]+): #([0-9a-f]{6})/g)].map(([, name, hex]) => [
      name!,
      [0, 2, 4].map((at) => Number.parseInt(hex!.slice(at, at + 2), 16)) as unknown as Colour,
    ]),
  );

/** Relative luminance and contrast as WCAG 2.1 defines them. */
const luminance = (colour: Colour): number => {
  const [red, green, blue] = colour.map((channel) => {
    const share = channel / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * red! + 0.7152 * green! + 0.0722 * blue!;
};
const contrast = (a: Colour, b: Colour): number => {
  const [dark, light] = [luminance(a), luminance(b)].toSorted((x, y) => x - y);
  return (light! + 0.05) / (dark! + 0.05);
};

const [lightBlock, darkBlock] = [...style.matchAll(/:root \{[^}]*--paper[^}]*\}/g)].map(String);
const schemes = { light: tokens(lightBlock!), dark: tokens(darkBlock!) };

it("knows the formula: black on white is 21 to 1 (WCAG 2.1, 1.4.3)", () => {
  expect(contrast([0, 0, 0], [255, 255, 255])).toBeCloseTo(21, 9);
});

describe.each(Object.entries(schemes))("%s", (_scheme, colours) => {
  it.each(["ink", "muted", "line", "holds", "misses", "unproven"])(
    "text in --%s stands out by 4.5 to 1 from paper and raised ground",
    (name) => {
      for (const ground of ["paper", "raised"]) {
        expect(contrast(colours.get(name)!, colours.get(ground)!)).toBeGreaterThanOrEqual(4.5);
      }
    },
  );

  // WCAG 2.1, 1.4.11: 3 to 1 for what a drawing needs to be understood.
  it.each(["line", "context", "limit", "window-edge", "band"])(
    "drawn --%s stands out by 3 to 1",
    (name) => {
      expect(contrast(colours.get(name)!, colours.get("paper")!)).toBeGreaterThanOrEqual(3);
    },
  );
});

it("prints in the light scheme whatever the reader's setting", () => {
  const print = style.slice(style.indexOf("@media print"));
  for (const [name, colour] of schemes.light) {
    expect(tokens(print).get(name)).toEqual(colour);
  }
});
