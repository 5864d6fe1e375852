import { describe, expect, it } from "vitest";
import { problemOf, tryEdit, typed, valueOf } from "../sample-kitchen.ts";

describe("containerEdit", () => {
  it("adds a container and changes one", () => {
    const added = valueOf(
      tryEdit("container", ["crock"], typed(["stands", "jars in air"], ["volume", "500 mL"])),
    );
    expect(added.after.containers.at(-1)).toMatchObject({ stands: "jars in air", volume: 0.5 });
    const changed = valueOf(tryEdit("container", ["jars"], typed(["count", "6"])));
    expect(changed.after.containers[0]).toMatchObject({ stands: "jars in water", count: 6 });
  });

  it("needs how a new one stands, a name, and a day that has come", () => {
    expect(problemOf(tryEdit("container", ["crock"], typed(["count", "6"])))).toMatchObject({
      code: "option-missing",
      facts: { option: "--stands" },
    });
    expect(problemOf(tryEdit("container", [], typed(["count", "6"])))).toMatchObject({
      facts: { option: "the container's name" },
    });
    expect(
      problemOf(tryEdit("container", ["jars"], typed(["changed", "2027-01-01"]))),
    ).toMatchObject({ facts: { option: "--changed" } });
  });
});
