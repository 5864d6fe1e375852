/** A doubtful check at a terminal: the person is asked whether it stands. */
import type { Outcome } from "../../problem.ts";
import type { CommandResult, Shell } from "../command-result.ts";

/** Runs `confirmed` where the person stands by the readings; else the problem stays as it is. */
export const askAboutDoubts = async (
  result: Outcome<CommandResult>,
  shell: Shell,
  confirmed: () => Promise<Outcome<CommandResult>>,
): Promise<Outcome<CommandResult>> => {
  if (result.ok || result.problem.code !== "check-doubtful" || !shell.asks) return result;
  const { agreed } = await import("./ask.ts");
  const { questions } = result.problem.facts;
  const stands = await agreed(`${questions}\nHave you looked again, and does it stand as it is?`);
  return stands ? confirmed() : result;
};
