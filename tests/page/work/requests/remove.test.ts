import { describe, expect, it } from "vitest";
import { chosen, equippedRoom } from "../page-room.ts";
import { quietNight } from "../nights.ts";

const night = { kind: "files", files: [chosen("night.csv", quietNight)] } as const;
const setUp = { appliance: ["warm-cooker"], container: ["jars"], name: ["one"] };

describe("taking something out", () => {
  it("is refused where a test needs it, and says which", async () => {
    const page = await equippedRoom();
    await page.ok("add", { readings: night, options: setUp });
    const problem = await page.problem("remove", { section: "container", id: "jars" });
    expect(problem).toMatchObject({ code: "kitchen-in-use" });
  });

  it("leaves a test's readings with the kitchen, from where they can be entered again", async () => {
    const page = await equippedRoom();
    await page.ok("add", { readings: night, options: setUp });
    const { state, remarks } = await page.ok("remove", { section: "test", id: "one" });
    expect(state.kitchen.tests).toEqual([]);
    expect(remarks).toEqual([
      "one was taken out. Its readings stay in the kitchen's folder: readings/night.csv.",
    ]);
    const again = await page.ok("add", { readings: night, options: setUp });
    expect(again.state.kitchen.tests[0]?.files[0]?.path).toBe("readings/night.csv");
  });

  it("is refused of what is not there", async () => {
    const page = await equippedRoom();
    expect((await page.problem("remove", { section: "culture", id: "kefir" })).code).toBe(
      "id-unknown",
    );
  });
});
