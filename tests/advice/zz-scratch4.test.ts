import { it } from "vitest";
import { settledTest } from "./constructed.ts";
it("x", () => {
  for (const [p, per] of [[0.5, 40], [1, 40], [2, 40], [3, 40], [3, 31.7], [3, 60], [3, 90]]) {
    const { hold, night } = settledTest({ level: 38, swing: { peakToPeak: p!, periodMinutes: per! } }).settled.evidence;
    console.log(p, per, JSON.stringify(hold.swing), hold.min, hold.max, hold.fromMinute, hold.toMinute, night.phases.map((x) => x.kind + x.fromMinute.toFixed(0)).join(" "));
  }
});
