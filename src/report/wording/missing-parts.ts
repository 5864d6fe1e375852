/** What a kitchen still lacks before advice can be given on it, and the command that enters it. */
import type { KitchenAnalysis } from "../../kitchen-analysis-types.ts";

export interface MissingPart {
  readonly text: string;
  /** An example to type; stands in a line of its own. */
  readonly command: string;
}

const culture: MissingPart = {
  text: "No culture in this kitchen yet, so there is nothing to advise on. Enter one; without a name the command lists those it knows:",
  command: "holdband culture reuteri",
};
const appliance: MissingPart = {
  text: "No appliance in this kitchen yet. Enter what heats:",
  command: "holdband appliance cooker --kind cooker --steps 30..60",
};
const container: MissingPart = {
  text: "No container in this kitchen yet. Enter what the food stands in:",
  command: 'holdband container jars --stands "jars in water"',
};

/** Without one of these there is nothing to choose from; empty where all are there. */
export const missingParts = ({
  kitchen,
  requirements,
}: KitchenAnalysis): readonly MissingPart[] => [
  ...(requirements.length > 0 ? [] : [culture]),
  ...(kitchen.appliances.length > 0 ? [] : [appliance]),
  ...(kitchen.containers.length > 0 ? [] : [container]),
];

/** null where a test was entered, readable or not. */
export const noTestsYet = ({ tests }: KitchenAnalysis): string | null =>
  tests.length > 0
    ? null
    : "No water test yet: what follows is assumed from the kinds of appliance and container, and proves nothing. Each test makes it surer.";
