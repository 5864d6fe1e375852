/** How the answer was reached and on whose methods it stands, for the report's last pages. */
export const methodSteps: readonly { readonly title: string; readonly text: string }[] = [
  {
    title: "Thermometer",
    text: "Every reading is corrected first. What the correction leaves open is carried along as a standard uncertainty; a specification of ±a counts as a/√3, a display step d as d/√12 (JCGM 100:2008, 4.3.7 and F.2.2.1).",
  },
  {
    title: "Cleaning",
    text: "Rows are set aside only for a named reason and are counted. Leaps of one or two readings are found against the running median (Hampel 1974). Nothing is filled in.",
  },
  {
    title: "Hold",
    text: "The hold begins where leaving out more of the start no longer steadies the average (marginal standard error rule, White 1997). Lid lifts, power cuts and switch-off are kept apart from it. Each reading counts for the time it stands for.",
  },
  {
    title: "Scatter and drift",
    text: "Neighbouring readings are alike, so they count as fewer independent ones (initial sequence estimate, Geyer 1992). The drift's interval allows for the same (Newey and West 1987); a median of slopes stands beside it as a check (Theil 1950, Sen 1968).",
  },
  {
    title: "Regular swing",
    text: "A regular cycle is looked for in the hold with its drift taken out, and kept only where chance would hardly make one. Its height comes from the turning points of whole cycles, not from stray readings.",
  },
  {
    title: "Verdict",
    text: "The hold as measured is moved and tilted within its doubts, over the culture's full hours, and the probability is the part of those cases in which the requirement is met (JCGM 106:2012).",
  },
];
