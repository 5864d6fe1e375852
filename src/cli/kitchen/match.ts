/** `match`: which appliance for which culture, and which where when all run at the same time. */
import * as z from "zod";
import type { KitchenAnalysis } from "../../kitchen-analysis-types.ts";
import type { Kitchen } from "../../kitchen/kitchen.ts";
import { done } from "../../problem.ts";
import type { Outcome } from "../../problem.ts";
import { toAdviceContract } from "../../report/advice-contract.ts";
import { toMatchTerminal } from "../../report/match-terminal.ts";
import { answered, commandRun } from "../command-run.ts";
import { flag } from "../../input/option-readers.ts";
import { analyseFolder } from "./analyse-folder.ts";
import { folderOf, openKitchen } from "./kitchen-folder.ts";
import { kitchenShapes } from "../../input/kitchen-shapes.ts";
import { cultureOf } from "../../input/known-ids.ts";

const shape = z.object({
  ...kitchenShapes,
  culture: z.array(z.string()).default([]),
  strict: flag,
});

/** Places are given among the cultures the kitchen names, so the others are left out before. */
const withOnly = (kitchen: Kitchen, ids: readonly string[]): Outcome<Kitchen> => {
  for (const id of ids) {
    const known = cultureOf(kitchen, id);
    if (!known.ok) return known;
  }
  if (ids.length === 0) return done(kitchen);
  return done({ ...kitchen, cultures: kitchen.cultures.filter(({ id }) => ids.includes(id)) });
};

/** Each culture has a place, and would hold there as surely as was asked. */
const allHeld = ({ advice, requirements }: KitchenAnalysis): boolean =>
  requirements.every(({ culture }) => {
    const place = advice.match.places.find((one) => one.culture === culture);
    return place?.placed?.chance.verdict === "holds";
  });

export const match = commandRun(shape, ["culture"], async (_, options, shell) => {
  const opened = await openKitchen(folderOf(options));
  if (!opened.ok) return opened;
  const kitchen = withOnly(opened.value.kitchen, options.culture);
  if (!kitchen.ok) return kitchen;
  const { folder } = opened.value;
  const analysis = await analyseFolder({ folder, kitchen: kitchen.value }, null, shell);
  if (!analysis.ok) return analysis;
  const { colour, ascii, width } = shell;
  const text = toMatchTerminal(analysis.value, { colour, ascii, width });
  const answer = answered(options, shell, text, toAdviceContract(analysis.value, "match"));
  const exitCode = options.strict && !allHeld(analysis.value) ? 1 : 0;
  return answer.ok ? done({ ...answer.value, exitCode }) : answer;
});
