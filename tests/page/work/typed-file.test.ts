import { describe, expect, it } from "vitest";
import { typedNight } from "../../../src/page/work/typed-file.ts";

const now = Date.UTC(2026, 9, 20, 12) / 1000;
const lines = "22:00 20.1 20\n23:00 38.1 -\n0:30 38.2 -";

const heading = (...said: Parameters<typeof typedNight>) => {
  const night = typedNight(...said);
  return night.ok ? night.value.file.text.split("\n")[0] : night.problem.code;
};

describe("typed readings as a file", () => {
  it("are called after the day of the first one", () => {
    const options = { probe: ["Jar=food", "Pot=bath"], date: ["2026-10-18"] };
    const night = typedNight(lines, options, "degC", now);
    expect(night).toEqual({
      ok: true,
      value: {
        file: {
          name: "2026-10-18-by-hand.csv",
          text: "Time,Jar (°C),Pot (°C)\n2026-10-18T22:00,20.1,20\n2026-10-18T23:00,38.1,\n2026-10-19T00:30,38.2,\n",
        },
        probes: ["Jar", "Pot"],
      },
    });
  });

  it("belong to the last night where nobody says the day", () => {
    const night = typedNight("22:00 20.1\n6:00 38", {}, "degC", now);
    expect(night.ok && night.value.file.name).toBe("2026-10-19-by-hand.csv");
  });

  it("are in the usual unit unless one is said or written", () => {
    const plain = "22:00 68.1\n6:00 100";
    expect(heading(plain, {}, "degF", now)).toBe("Time,Jar (°F)");
    expect(heading("22:00 20.1\n6:00 38", { unit: ["C"] }, "degF", now)).toBe("Time,Jar (°C)");
    expect(heading("22:00 68.1F\n6:00 100", {}, "degC", now)).toBe("Time,Jar (°F)");
    expect(heading(plain, { unit: ["K"] }, "degC", now)).toBe("option-invalid");
  });

  it("are not disturbed by what is said of the night's window", () => {
    const options = { culture: ["yoghurt"], low: ["nonsense"] };
    expect(typedNight("22:00 20.1\n6:00 38", options, "degC", now).ok).toBe(true);
  });
});
