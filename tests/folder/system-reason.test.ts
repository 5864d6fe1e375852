import { readFileSync, readdirSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { systemReason } from "../../src/folder/system-reason.ts";
import { temporaryFolder } from "./temporary-folder.ts";

const reasonOf = (act: () => unknown): string => {
  try {
    act();
    return "";
  } catch (error) {
    return systemReason(error);
  }
};

describe("systemReason", () => {
  it("puts what this system really says into plain words", () => {
    const folder = temporaryFolder();
    expect(reasonOf(() => readFileSync(join(folder, "none")))).toBe("the folder does not exist");
    expect(reasonOf(() => readFileSync(folder))).toBe("it is a folder");
    expect(reasonOf(() => readdirSync(import.meta.filename))).toBe(
      "part of the path is not a folder",
    );
    expect(reasonOf(() => readFileSync(join(folder, "n".repeat(300))))).toBe(
      "the name is too long",
    );
  });

  it("passes on a code it has no words for, and says when there is none", () => {
    expect(systemReason(Object.assign(new Error("x"), { code: "EXDEV" }))).toBe(
      "the system says EXDEV",
    );
    expect(systemReason(new Error("x"))).toBe("an unknown reason");
  });
});
