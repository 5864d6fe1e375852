/** Questions at the terminal; loaded only where somebody sits there (`shell.asks`). */
import { confirm, isCancel, select, text, updateSettings } from "@clack/prompts";

// Ctrl-D closes the terminal under the question; without this the program would end unsaid.
updateSettings({ aliases: { "\u0004": "cancel" } });

export interface Choice {
  readonly value: string;
  readonly label: string;
  readonly hint?: string;
}

/** One of several; null where the person stopped. */
export const chooseOne = async (
  message: string,
  choices: readonly Choice[],
): Promise<string | null> => {
  const options = choices.map(({ value, label, hint }) => ({
    value,
    label,
    ...(hint === undefined ? {} : { hint }),
  }));
  const chosen = await select<string>({ message, options });
  return isCancel(chosen) ? null : chosen;
};

/** A line of text; `wrong` says what is the matter with it, or nothing. null where the person stopped. */
export const askText = async (
  message: string,
  example: string,
  wrong: (text: string) => string | undefined,
): Promise<string | null> => {
  const typed = await text({
    message,
    placeholder: example,
    validate: (value) => wrong(value ?? ""),
  });
  return isCancel(typed) ? null : typed;
};

/** Yes or no; stopping is no. */
export const agreed = async (message: string): Promise<boolean> =>
  (await confirm({ message, initialValue: false })) === true;
