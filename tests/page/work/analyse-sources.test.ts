import { describe, expect, it } from "vitest";
import { readCheckOptions } from "../../../src/input/check-options.ts";
import { checkRequest } from "../../../src/input/check-request.ts";
import { analyseFiles } from "../../../src/page/work/analyse-sources.ts";
import { quietNight } from "./nights.ts";
import { chosen } from "./page-room.ts";

const options = readCheckOptions({ culture: ["reuteri"] });
const request = options.ok ? checkRequest(options.value, "0.1.0") : options;
const silent = { progress: () => undefined };

const analysed = (...files: ReturnType<typeof chosen>[]) => {
  if (!request.ok) throw new Error(request.problem.code);
  return analyseFiles(request.value, files, silent);
};

describe("files of a night", () => {
  it("are told apart where two have one name", async () => {
    const other = quietNight.replace("Jar", "Pot");
    const analysis = await analysed(
      chosen("a/night.csv", quietNight),
      chosen("b/night.csv", other),
    );
    expect(analysis.ok && analysis.value.files.map(({ readings }) => readings.name)).toEqual([
      "night.csv",
      "night.csv (2)",
    ]);
  });

  it("are a problem, and no error, where one changes while it is read", async () => {
    const broken = Object.assign(new Blob([quietNight]), {
      stream: () =>
        new ReadableStream({
          start: (controller) => controller.enqueue(new TextEncoder().encode(quietNight)),
          pull: (controller) => controller.error(new DOMException("gone", "NotReadableError")),
        }),
    });
    const analysis = await analysed({ name: "night.csv", content: broken });
    expect(analysis).toEqual({
      ok: false,
      problem: { code: "file-changed-meanwhile", facts: { file: "night.csv" } },
    });
  });
});
