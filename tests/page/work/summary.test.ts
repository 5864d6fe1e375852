import { describe, expect, it } from "vitest";
import { nights, filesOf, quietNight } from "./nights.ts";
import { chosen, pageRoom } from "./page-room.ts";

const quiet = { kind: "files", files: [chosen("night.csv", quietNight)] } as const;

describe("a night in a sentence", () => {
  it("is the answer with its chance where one thing was asked", async () => {
    const options = { low: ["36"], high: ["40"], hours: ["10"] };
    const { summary } = await pageRoom().ok("check", { readings: quiet, options });
    expect(summary).toMatch(
      /^This set-up keeps the food at 36 to 40 °C \(96\.8 to 104\.0 °F\) for 10 h\. It is .*9\d % likely to hold\.$/,
    );
  });

  it("has a clause for each finding where several were asked, without markup", async () => {
    const options = { culture: ["reuteri", "yoghurt"] };
    const { summary } = await pageRoom().ok("check", { readings: quiet, options });
    expect(summary).toMatch(/^Jar: .*Low long-hold milk culture.*; .* too cold for Yoghurt.*\.$/);
    expect(summary).not.toMatch(/[<>]\w/);
  });

  it("names probes with their files where there are several", async () => {
    const [, two] = nights;
    const readings = { kind: "files", files: filesOf(two!) } as const;
    const { summary } = await pageRoom().ok("check", { readings, options: two!.options });
    expect(summary).toContain("in bath-jar.csv");
  });

  it("says where nothing was judged", async () => {
    const options = { culture: ["reuteri"], probe: ["Jar=room"] };
    const { summary } = await pageRoom().ok("check", { readings: quiet, options });
    expect(summary).toBe("No verdict: Jar, in the room.");
  });
});
