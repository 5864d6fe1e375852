/** How the answer was reached and on whose methods it stands, for the report's last pages. */
export interface MethodStep {
  readonly title: string;
  readonly text: string;
}

export const methodSteps: readonly MethodStep[] = [
  {
    title: "Thermometer",
    text: "Every reading is corrected first. What the correction leaves open is carried along as a standard uncertainty; a specification of ±a counts as a/√3 and a display step d as d/√12 (JCGM 100:2008, 4.3.7 and F.2.2.1).",
  },
  {
    title: "Cleaning",
    text: "Rows are set aside only for a named reason, and they are counted. One or two readings that leap away faster than water can, and come straight back, are found against the running median (Hampel 1974). Nothing is filled in.",
  },
  {
    title: "Hold",
    text: "The hold begins when the readings come within reach of the settled level and stay there; it ends when they leave it for good. Lid lifts and power cuts are kept apart from it. Each reading counts for the time it stands for.",
  },
  {
    title: "Scatter and drift",
    text: "Neighbouring readings are alike, so they are worth fewer independent ones (Geyer 1992). The drift’s interval allows for the same (Newey and West 1987). The median of all slopes stands beside it as a check (Theil 1950, Sen 1968).",
  },
  {
    title: "Regular swing",
    text: "A cycle is looked for in the hold with its slow change taken out. It is believed only if it comes again one and two periods later and its cycles are alike in height. The height told is the median of whole cycles, so no stray reading makes it.",
  },
  {
    title: "Verdict",
    text: "Many courses of the culture’s full hours are drawn that agree with the night as measured: day and night, slow wander, the rest of the warm-up (Gaussian process regression, Rasmussen and Williams 2006), with the hold’s quick movement on top. Where the hold itself moved by more than 1 °C (1.8 °F), half of them begin where the test ended, for a culture may go in at any time. Each is moved within the doubt of its level. The probability is the part of those cases that meets the requirement (JCGM 106:2012). How strongly rooms and appliances wander is this program’s own assumption.",
  },
  {
    title: "Limits set on the verdict",
    text: "Less than three hours or six readings of hold never give “holds”. A hold that fell away before the culture’s hours were over never does either.",
  },
];

/** What this one test showed by itself. */
export const measured =
  "The test itself shows when the hold began and how long it lasted, its level, spread, swing and drift, in the probe’s own place.";

/** How much of the room gets through to the food: the one thing one night can hardly show. */
export const roomReach =
  "One night hardly shows how much of the room’s movement reaches the food. Everything from nearly nothing (a good thermostat) to nine tenths (a heater of fixed power) was tried. Each counted by an assumed weight and by how well it explains the readings; a regular swing or a quick warm-up speaks for a thermostat, and a kitchen may say whether there is one.";

/** Said only where it happened. */
export const endedHold =
  "Where the heat ended before a culture’s hours were over, nothing in the readings tells whether a person or the appliance ended it: one chance in five was given to a person.";

export const untold: readonly string[] = [
  "Water stood in for the food. Thicker food warms more slowly and unevenly; the probe tells of its own place only.",
  "Another setting, container, amount or place was not tested, nor another season’s room.",
];
