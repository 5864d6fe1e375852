/** How the answer was reached and on whose methods it stands, for the report's last pages. */
export const methodSteps: readonly { readonly title: string; readonly text: string }[] = [
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
    text: "The hold begins when the readings come within its own spread of the settled level, and stay; it ends when they leave it for good. Lid lifts and power cuts are kept apart from it. Each reading counts for the time it stands for.",
  },
  {
    title: "Scatter and drift",
    text: "Neighbouring readings are alike, so they are worth fewer independent ones (Geyer 1992). The drift’s interval allows for the same (Newey and West 1987). The median of all slopes stands beside it as a check (Theil 1950, Sen 1968).",
  },
  {
    title: "Regular swing",
    text: "A regular cycle is looked for in the hold with its slow change taken out, and kept only where chance would hardly make one. Its height comes from the turning points of whole cycles, not from stray readings.",
  },
  {
    title: "Verdict",
    text: "Many courses of the culture’s full hours are drawn that agree with the night as measured: slow wander, day and night, the rest of the warm-up (Gaussian process regression, Rasmussen and Williams 2006). Each is moved within the doubt of its level. The probability is the part of those cases that meets the requirement (JCGM 106:2012). How strongly rooms and appliances wander is this program’s own assumption.",
  },
];
