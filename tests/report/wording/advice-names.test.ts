import { expect, it } from "vitest";
import { answerLooks, answerNames } from "../../../src/report/wording/advice-names.ts";

it("gives each answer a word of its own, so that no look alone tells them apart", () => {
  expect(new Set(Object.values(answerNames)).size).toBe(4);
  expect(answerLooks.can).toBe("holds");
  expect(answerLooks.cannot).toBe("misses");
});
