/** The same analysis gives the same report, byte for byte, wherever and in whatever process it is made. */
import { spawnSync } from "node:child_process";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { renderDemo } from "./render-demo.ts";

const script = fileURLToPath(new URL("render-demo.ts", import.meta.url));

/** Both reports of the demo, made by a process of its own. */
const madeIn = (zone: string, language: string): string => {
  const { stdout, stderr } = spawnSync(process.execPath, ["--import", "tsx", script, "print"], {
    env: { ...process.env, TZ: zone, LC_ALL: language, LANG: language },
    encoding: "utf8",
    maxBuffer: 1 << 26,
  });
  expect(stderr).toBe("");
  return stdout;
};

describe("both reports of the demo", () => {
  it.each([
    ["Pacific/Kiritimati", "de_DE.UTF-8"],
    ["America/St_Johns", "ar_EG.UTF-8"],
  ])(
    "are the same bytes made in %s, %s, as made here",
    async (zone, language) => {
      const here = await renderDemo();
      expect(here.length).toBeGreaterThan(300_000);
      expect(madeIn(zone, language)).toBe(here);
    },
    120_000,
  );

  it("are the same again in this process", async () => {
    expect(await renderDemo()).toBe(await renderDemo());
  });
});
