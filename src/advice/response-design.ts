/**
 * The columns of an appliance's response: which figures its hold mean is the sum of.
 *
 *   food = level + slope (setting - middle) + room (room - usual) - lost share (bath - room)
 *
 * with a level of its own for each program, and for a dial an even row of marks
 * plus by how much each step up to a mark is more or less than an even one.
 */
import type { Appliance, Container, Setting } from "../kitchen/kitchen.ts";
import {
  dialPrior,
  markPrior,
  markSlopePrior,
  middleLevel,
  programPrior,
  stepPrior,
  usualRoom,
  type PriorFigure,
} from "./response-prior.ts";
import type { ContainerAdvice, ResponseTerm } from "./response-types.ts";

export interface DesignTerm {
  readonly term: ResponseTerm["term"];
  readonly prior: PriorFigure;
}

/** Where a prediction, or a test, stands. */
export interface DesignPlace {
  readonly setting: Setting;
  /** Id of what the food stands in; null for the bath itself. */
  readonly container: string | null;
  readonly room: number;
  /** What the bath is taken for where only the share lost is asked, degC. */
  readonly bath: number;
}

export interface ResponseDesign {
  readonly terms: readonly DesignTerm[];
  /** The row of a place: one number per term. */
  readonly row: (place: DesignPlace) => Float64Array;
}

/** Where a setting stands on a numeric scale: degC from the middle, or marks from the dial's middle. */
const positionOf = ({ control }: Appliance, setting: Setting): number => {
  if (setting.kind === "step") return setting.celsius - middleLevel;
  if (setting.kind !== "mark" || control.kind !== "marks") return 0;
  return control.marks.indexOf(setting.mark) - (control.marks.length - 1) / 2;
};

const level = (prior: PriorFigure, at: number | null, setting: Setting | null): DesignTerm => ({
  term: { code: "level", at, setting },
  prior,
});

/** Terms for what can be set, by control. */
const settingTerms = (appliance: Appliance): readonly DesignTerm[] => {
  const { control } = appliance;
  if (control.kind === "fixed") return [level(programPrior, null, { kind: "fixed" })];
  if (control.kind === "programs") {
    return control.programs.map((program) =>
      level(programPrior, null, { kind: "program", program }),
    );
  }
  if (control.kind === "steps") {
    const prior = stepPrior(appliance);
    return [
      level(prior.level, middleLevel, null),
      { term: { code: "slope", per: "degree" }, prior: prior.slope },
    ];
  }
  const count = control.marks.length;
  return [
    level(dialPrior, null, null),
    { term: { code: "slope", per: "mark" }, prior: markSlopePrior(count) },
    ...control.marks.slice(1).map((mark) => ({
      term: { code: "mark", setting: { kind: "mark", mark } } as const,
      prior: markPrior(count),
    })),
  ];
};

/** A step up to a mark counts for the marks from there on, and against those below where the dial's middle lies above. */
const stepsPassed = (appliance: Appliance, mark: Setting, setting: Setting): number => {
  const up = positionOf(appliance, mark);
  return Number(positionOf(appliance, setting) >= up) - Number(up <= 0);
};

const sameSetting = (a: Setting, b: Setting): boolean => {
  if (a.kind === "program") return b.kind === "program" && a.program === b.program;
  if (a.kind === "mark") return b.kind === "mark" && a.mark === b.mark;
  return a.kind === b.kind;
};

const entry = (
  { term }: DesignTerm,
  appliance: Appliance,
  { setting, container, room, bath }: DesignPlace,
): number => {
  if (term.code === "slope") return positionOf(appliance, setting);
  if (term.code === "mark") return stepsPassed(appliance, term.setting, setting);
  if (term.code === "room") return room - usualRoom.mean;
  if (term.code === "share-lost") return term.container === container ? room - bath : 0;
  return term.setting === null ? 1 : Number(sameSetting(term.setting, setting));
};

/**
 * @param room prior of how much of the room comes through
 * @param containers those to be predicted, with what is known of each
 */
export const responseDesign = (
  appliance: Appliance,
  room: PriorFigure,
  containers: readonly { readonly container: Container; readonly known: ContainerAdvice }[],
): ResponseDesign => {
  const terms: readonly DesignTerm[] = [
    ...settingTerms(appliance),
    { term: { code: "room" }, prior: room },
    ...containers.map(({ container, known: { shareLost } }): DesignTerm => ({
      term: { code: "share-lost", container: container.id },
      prior: { mean: shareLost.value, standardDeviation: shareLost.standardUncertainty },
    })),
  ];
  return {
    terms,
    row: (place) => Float64Array.from(terms, (term) => entry(term, appliance, place)),
  };
};
