import { execFileSync } from "node:child_process";
import { describe, expect, it } from "vitest";
import { quoted } from "../../../src/cli/kitchen/shell-word.ts";

describe("quoted", () => {
  it("leaves plain names as they are", () => {
    expect(quoted("kitchen/night-1.csv")).toBe("kitchen/night-1.csv");
    expect(quoted("Küche")).toBe("Küche");
  });

  // The reference is the shell itself.
  it.each(["my kitchen", "it's", "a$b`c`", 'say "x"', "*", "", "🍶 milk", "a\\b"])(
    "gives a shell back what was meant: %s",
    (word) => {
      const said = execFileSync("sh", ["-c", `printf %s ${quoted(word)}`], { encoding: "utf8" });
      expect(said).toBe(word);
    },
  );
});
