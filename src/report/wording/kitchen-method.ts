/** What a kitchen's report rests on besides the method of each test. */
import { methodSteps } from "./method.ts";
import type { MethodStep } from "./method.ts";

/** In place of the single thermometer of one test. */
const thermometerSteps: readonly MethodStep[] = [
  {
    title: "Thermometers",
    text: "Each is corrected by its own checks. Checks at one temperature, or close together, give an offset; those further apart a straight line by least squares, with the uncertainty of the correction it predicts at the reading in question (JCGM 100:2008, H.3). A specification of ±a counts as a/√3 and a display step d as d/√12 (4.3.7 and F.2.2.1). The expanded uncertainty is the standard uncertainty times Student’s t for 95 % (G.3).",
  },
  {
    title: "Boiling point",
    text: "Water boils at the temperature whose saturation pressure is the air’s (IAPWS-IF97, region 4). Where only the altitude is known, that pressure is the standard atmosphere’s (US Standard Atmosphere 1976), and the weather’s change of it counts as a doubt. A pressure reduced to sea level is taken back up to the place.",
  },
];

const kitchenSteps: readonly MethodStep[] = [
  {
    title: "Several tests of one set-up",
    text: "They are judged together; where any of them had a probe in the food, only those count. How much one run differs from the next is pooled over the repeated tests of an appliance, together with the assumption, which counts as much as two repeats (scaled inverse chi-square prior, Gelman et al. 2013).",
  },
  {
    title: "Food and bath",
    text: "Where both were measured, the food is taken to follow its bath as one body between bath and room: it falls short by a part of the difference between them and lags by a time constant, fitted by least squares over warm-up and hold.",
  },
  {
    title: "What a setting should give",
    text: "The hold’s average is taken as a level, a slope over the settings or marks, the room’s pull, and what the food loses in its container. Each has a figure assumed beforehand, stated above; the tests move it (Bayesian linear regression with conjugate priors, Gelman et al. 2013). The next run is predicted by Student’s t. The chance to hold adds the swing and the slow movement that were seen in tests.",
  },
  {
    title: "Advice",
    text: "A tested set-up that holds is advised as it is. Else, of all settings and containers the kitchen has, the one likeliest to hold; among near-equals the one that changes least. Several cultures are placed so that most have a place, then so that the least likely of them is as likely as can be, then their sum. A test is worth most whose possible results, drawn from what is predicted, decide most open verdicts; a culture that nothing holds yet counts double.",
  },
];

export const kitchenMethodSteps: readonly MethodStep[] = [
  ...thermometerSteps,
  ...methodSteps.filter(({ title }) => title !== "Thermometer"),
  ...kitchenSteps,
];
