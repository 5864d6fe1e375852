import { describe, expect, it } from "vitest";
import { isWanted, isZip, openedFiles } from "../../../src/page/work/opened-files.ts";

const files = (...names: readonly string[]) =>
  names.map((name) => ({ name, content: new Blob([]) }));

const sorted = (...names: readonly string[]) => {
  const outcome = openedFiles(files(...names));
  if (!outcome.ok) return outcome.problem.code;
  const { kitchen, others } = outcome.value;
  return [kitchen?.name ?? null, others.map(({ name }) => name)];
};

describe("opened files", () => {
  it("are the kitchen's file and what may be its readings", () => {
    expect(sorted("k/kitchen.yaml", "k/readings/a.csv", "k/readings/b.txt")).toEqual([
      "k/kitchen.yaml",
      ["k/readings/a.csv", "k/readings/b.txt"],
    ]);
    expect(sorted("my kitchen.yml")).toEqual(["my kitchen.yml", []]);
    expect(sorted("a.csv")).toEqual([null, ["a.csv"]]);
  });

  it("leave out the version before, reports, drafts and locks", () => {
    expect(
      sorted(
        "k/kitchen.yaml",
        "k/kitchen.previous.yaml",
        "k/reports/kitchen.html",
        "k/readings/.draft-test.json",
        "k/.holdband-lock-1",
      ),
    ).toEqual(["k/kitchen.yaml", []]);
  });

  it("take the kitchen nearest to the top, and kitchen.yaml before other names", () => {
    expect(sorted("k/old/kitchen.yaml", "k/kitchen.yaml")[0]).toBe("k/kitchen.yaml");
    expect(sorted("k/other.yaml", "k/kitchen.yaml")[0]).toBe("k/kitchen.yaml");
  });

  it("are refused with two kitchens, or with nothing", () => {
    expect(sorted("a/kitchen.yaml", "b/kitchen.yaml")).toBe("options-contradict");
    expect(sorted("report.html")).toBe("option-missing");
    expect(sorted()).toBe("option-missing");
  });

  it("never leave the folder", () => {
    const leaving = ["../a.csv", "a/../b.csv", "/a.csv", "C:/a.csv", "a\\b.csv", "a/./b.csv", "a/"];
    expect(leaving.filter(isWanted)).toEqual([]);
    expect(isWanted("readings/a..b.csv")).toBe(true);
  });

  it("know a zip by its ending", () => {
    expect(isZip("Kitchen.ZIP")).toBe(true);
    expect(isZip("zip.csv")).toBe(false);
  });
});
