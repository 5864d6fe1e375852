/** What a kitchen still lacks before advice can be given on it, and how to enter it. */
import type { KitchenAnalysis } from "../../kitchen-analysis-types.ts";

/** Without one of these there is nothing to choose from; empty where all are there. */
export const missingParts = ({ kitchen, requirements }: KitchenAnalysis): readonly string[] => [
  ...(requirements.length > 0
    ? []
    : [
        "No culture in this kitchen yet, so there is nothing to find a place for. Enter one, for example: holdband culture reuteri. The command holdband culture lists those it knows.",
      ]),
  ...(kitchen.appliances.length > 0
    ? []
    : [
        "No appliance in this kitchen yet. Enter what heats, for example: holdband appliance cooker --kind cooker --steps 30..60.",
      ]),
  ...(kitchen.containers.length > 0
    ? []
    : [
        'No container in this kitchen yet. Enter what the food stands in, for example: holdband container jars --stands "jars in water".',
      ]),
];

/** null where a test was entered, readable or not. */
export const noTestsYet = ({ tests }: KitchenAnalysis): string | null =>
  tests.length > 0
    ? null
    : "No water test yet: what follows is assumed from the kinds of appliance and container, and proves nothing. Each test makes it surer.";
