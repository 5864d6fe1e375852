import { expect, it } from "vitest";
import { bare, draw, wordsIn } from "../drawing.ts";

// A plot of 100 px square over ten hours and ten degrees: ten px to each.
it("draws a line by hours and degrees, and stops it where a reading is missing", async () => {
  const line = [
    { hour: 0, value: 10 },
    { hour: 5, value: 5 },
    { hour: 5, value: null },
    { hour: 6, value: 5 },
    { hour: 10, value: 0 },
  ];
  expect(await draw(bare({ line }))).toContain('d="M0,0L50,50M60,50L100,100"');
});

it("keeps the order of readings, whatever their temperature", async () => {
  const line = [0, 1, 2, 3].map((hour) => ({ hour, value: hour % 2 }));
  expect(await draw(bare({ line }))).toContain('d="M0,100L10,90L20,100L30,90"');
});

it("draws each context series by itself, with its own dash", async () => {
  const context = ["a", "b"].flatMap((series, at) =>
    [0, 10].map((hour) => ({ series, hour, value: at, dash: [6, at + 1] })),
  );
  const svg = await draw(bare({ context }));
  expect(svg).toMatch(/d="M0,100L100,100"[^>]*stroke-dasharray="6,1"/);
  expect(svg).toMatch(/d="M0,90L100,90"[^>]*stroke-dasharray="6,2"/);
});

it("gives boxes, rules and texts the look and place they carry", async () => {
  const place = { left: 10, right: 40, top: 20, bottom: 50 };
  const svg = await draw(
    bare({
      boxes: [{ ...place, fill: "var(--window)", opacity: 0.5, stroke: "var(--band)" }],
      rules: [{ ...place, bottom: 20, stroke: "var(--limit)", width: 1.6, dash: [7, 4] }],
      texts: [
        { x: 90, y: 30, text: "<b>", align: "right", fill: "var(--ink)", halo: "var(--paper)" },
      ],
    }),
  );
  expect(svg).toMatch(/d="M10,20h30v30h-30Z" fill="var\(--window\)" fill-opacity="0\.5"/);
  expect(svg).toMatch(/stroke="var\(--limit\)" stroke-width="1\.6" stroke-dasharray="7,4"/);
  expect(svg).toMatch(/<text text-anchor="end"[^>]*stroke="var\(--paper\)"[^>]*>&lt;b&gt;</);
});

it("marks single readings where asked to", async () => {
  const svg = await draw(bare({ points: [{ hour: 5, value: 5 }] }));
  expect(svg).toMatch(/<path[^>]*transform="translate\(50,50\)"[^>]*fill="var\(--line\)"/);
});

it("writes the ticks' own words, in as many lines as they have", async () => {
  const svg = await draw(
    bare({
      x: { low: 0, high: 10, ticks: [0, 5], words: [["0 h", "21:37"], ["5 h"]] },
      y: { low: 0, high: 10, ticks: [2], words: ["2 °C"] },
    }),
  );
  expect(wordsIn(svg)).toEqual(["0 h", "21:37", "5 h", "2 °C"]);
});
