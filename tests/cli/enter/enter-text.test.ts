import { describe, expect, it } from "vitest";
import {
  changeText,
  helpText,
  keptText,
  listText,
  readingText,
  shortHelp,
  sinceText,
  summaryText,
  titleText,
} from "../../../src/cli/enter/enter-text.ts";
import { saidOfFile } from "../../../src/input/water-test/said-of-test.ts";
import { emptyLog } from "../../../src/readings/typed/typed-log.ts";
import { jarLog, logOf } from "../../readings/typed/typed-helpers.ts";

const looks = { ascii: false };
const log = logOf(["21:30 20.1", "7:00 41.0 # off"]);

describe("readings in words", () => {
  it("shows each as it was understood", () => {
    expect(listText(log, looks)).toBe(
      "  1.  2026-10-03 21:30   20.1 °C\n  2.  2026-10-04 07:00   41.0 °C   (off)",
    );
    expect(listText(jarLog(), looks)).toContain("No readings yet");
    const first = log.readings[0]!;
    expect(readingText(first, log, { ascii: true })).toBe("2026-10-03 21:30   20.1 degC");
  });

  it("names the probes where there are several, and shows degF with degC", () => {
    const two = logOf(["21:30 105.8 -"], emptyLog(["Jar", "Bath"], "degF", null, false));
    expect(listText(two, looks)).toContain("Jar 105.8 °F (41.0 °C),  Bath not read");
  });

  it("says what a line did", () => {
    const added = logOf(["2026-10-03 22:00 30"], log);
    expect(changeText("added", 2, log, added, looks)).toBe(
      "  2.  2026-10-03 22:00   30 °C   (put in its place by time)",
    );
    expect(changeText("dropped", 1, log, logOf([]), looks)).toContain(
      "Taken out: 2026-10-03 21:30",
    );
    expect(changeText("undone", 2, added, log, looks)).toContain("Undone.\n  1.");
    expect(changeText("fixed", 1, added, log, looks)).not.toContain("put in its place");
  });

  it("sums up", () => {
    expect(summaryText(log)).toBe("2 readings, 2026-10-03 21:30 to 2026-10-04 07:00 (9 h 30 min)");
    expect(summaryText(logOf(["21:30 41"]))).toBe("1 reading, 2026-10-03 21:30");
    expect(sinceText(log)).toBe("2 readings since 2026-10-03 21:30");
    expect(sinceText(jarLog())).toBe("0 readings");
    expect(summaryText(jarLog())).toBe("0 readings");
    expect(keptText(log, "readings/.draft-x.json")).toContain("readings/.draft-x.json");
    expect(keptText(log, null)).toContain("nothing is stored");
    const probes = [{ name: "Jar", place: "food" as const, thermometer: null }];
    expect(titleText(saidOfFile("night.csv", probes))).toBe("night.csv: Jar (food)");
  });

  it("helps in lines a small terminal shows whole", () => {
    const two = emptyLog(["Jar", "Bath"], "degC", null, false);
    expect(helpText(two)).toContain("time, then Jar, Bath");
    for (const line of [...helpText(jarLog()).split("\n"), ...shortHelp.split("\n")])
      expect(line.length).toBeLessThanOrEqual(80);
  });
});
