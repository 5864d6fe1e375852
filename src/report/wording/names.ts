/** Plain words for the closed sets of names the analysis uses. */
import type { Provenance, UncertaintySource, VerdictWord } from "../../culture/verdict-types.ts";
import type { Phase, PhaseCause, PhaseKind } from "../../hold/hold.ts";
import type { SetAsideReason, TimeFormat } from "../../readings/readings-file.ts";
import type { ProbeRole } from "../../readings/series.ts";

export const phaseNames: Readonly<Record<PhaseKind, string>> = {
  idle: "not yet on",
  "warm-up": "warm-up",
  hold: "hold",
  disturbance: "disturbance",
  "cool-down": "cool-down",
};

export const causeNames: Readonly<Record<PhaseCause, string>> = {
  "lid-lifted": "lid lifted",
  "power-cut": "power cut",
  "probe-out": "probe out",
  "switched-off": "switched off",
};

/** The likely cause where one was found, else the kind. */
export const phaseName = (phase: Phase): string =>
  phase.cause === undefined ? phaseNames[phase.kind] : causeNames[phase.cause];

export const setAsideNames: Readonly<Record<SetAsideReason, string>> = {
  "unparseable-temperature": "no number where the temperature should be",
  "unparseable-time": "a time that cannot be understood",
  missing: "an empty temperature cell",
  "sensor-fault": "a value by which the sensor says it failed",
  "text-flag": "a word by which the logger says the sensor failed",
  "out-of-range": "a value no water test can show",
  duplicate: "the same time as a row before it",
  spike: "a leap away and straight back",
  "other-quantity": "something else than a temperature",
  "repeated-header": "the heading printed again",
  trailer: "text after the last reading",
};

export const sourceNames: Readonly<Record<UncertaintySource, string>> = {
  thermometer: "thermometer",
  resolution: "steps of the display",
  "mean of the hold": "scatter of the hold",
  "run to run": "one run to the next",
  "hours not tested": "hours not tested",
  drift: "slow drift",
};

/** What the source is, as the subject of a sentence. */
export const sourceSubjects: Readonly<Record<UncertaintySource, string>> = {
  thermometer: "The thermometer",
  resolution: "The coarse steps of the display",
  "mean of the hold": "The scatter of the readings",
  "run to run": "The difference between one run and the next",
  "hours not tested": "What happens in the hours not tested",
  drift: "The slow drift",
};

/** Where that doubt comes from, in a sentence each. */
export const sourceExplanations: Readonly<Record<UncertaintySource, string>> = {
  thermometer: "How far the thermometer may be off after its correction.",
  resolution: "The readings come in steps; the truth lies somewhere within a step.",
  "mean of the hold": "Readings near in time tell much the same, so they count for fewer.",
  "run to run": "The same set-up settles a little differently each time.",
  "hours not tested": "The culture needs more hours than were tested, by day as well as by night.",
  drift: "The slow change during the hold, carried on to the end of the culture’s hours.",
};

export const provenanceNames: Readonly<Record<Provenance, string>> = {
  measured: "measured",
  stated: "as you said",
  assumed: "assumed",
};

export const roleNames: Readonly<Record<ProbeRole, string>> = {
  food: "in the food’s place",
  bath: "in the bath",
  room: "in the room",
};

export const verdictNames: Readonly<Record<VerdictWord, string>> = {
  holds: "Holds",
  misses: "Misses",
  unproven: "Unproven",
};

export const timeFormatNames: Readonly<Record<TimeFormat, string>> = {
  "date-time": "date and time",
  "date-and-time-columns": "date and time in two columns",
  clock: "clock time",
  "epoch-seconds": "seconds since 1970",
  "epoch-milliseconds": "milliseconds since 1970",
  "elapsed-seconds": "seconds from the start",
  "epoch-microseconds": "microseconds since 1970",
  "elapsed-milliseconds": "milliseconds from the start",
  "elapsed-minutes": "minutes from the start",
  "elapsed-hours": "hours from the start",
  "elapsed-clock": "h:mm:ss from the start",
  "spreadsheet-serial": "spreadsheet day numbers",
  index: "no times, evenly spaced rows",
};
