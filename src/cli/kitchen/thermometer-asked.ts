/** Which thermometer measured, asked at a terminal where none was named. */
import type { Kitchen } from "../../kitchen/kitchen.ts";
import { done, failed } from "../../problem.ts";
import type { Outcome } from "../../problem.ts";
import { choicesOf } from "./set-up-asked.ts";

const unknown = " ";

/** Its id; null for one that is not in the kitchen, and without a question where there is none to choose. */
export const askThermometer = async (
  { thermometers }: Pick<Kitchen, "thermometers">,
  question: string,
): Promise<Outcome<string | null>> => {
  if (thermometers.length === 0) return done(null);
  const { chooseOne } = await import("./ask.ts");
  const choices = [
    ...choicesOf(thermometers),
    { value: unknown, label: "Another one, not in the kitchen" },
  ];
  const chosen = await chooseOne(question, choices);
  if (chosen === null) return failed("stopped", { what: "every question" });
  return done(chosen === unknown ? null : chosen);
};
