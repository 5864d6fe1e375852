/** Words for advice's closed sets. */
import type { Answer } from "../../advice/advice-types.ts";
import type { VerdictWord } from "../../culture/verdict-types.ts";

export const answerNames: Readonly<Record<Answer, string>> = {
  can: "Can",
  may: "May",
  cannot: "Cannot",
  unknown: "Unknown",
};

/** Marked as the verdict it is nearest to. */
export const answerLooks: Readonly<Record<Answer, VerdictWord>> = {
  can: "holds",
  may: "unproven",
  cannot: "misses",
  unknown: "unproven",
};
