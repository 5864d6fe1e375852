/** How an appliance and its containers respond, as found: plain data only. Temperatures in degC. */
import type { Setting } from "../kitchen/kitchen.ts";

/** What a candidate rests on: its own tests, tests of settings around it, beyond them, or none of this appliance. */
export type Basis = "tested" | "interpolated" | "extrapolated" | "assumed";

/** Hold mean of the next run of a set-up: Student's t, thermometers' doubt included. */
export interface ExpectedLevel {
  readonly mean: number;
  /** Scale of the t distribution. */
  readonly standardUncertainty: number;
  readonly degreesOfFreedom: number;
  /** The middle 95 %. */
  readonly low: number;
  readonly high: number;
}

/** A figure before and after the tests: mean of a Student's t, and its scale (`standardDeviation`). */
export interface ResponseTerm {
  readonly term:
    /** Hold mean at `at` (a setting, degC), or of a program, mark or fixed control (`setting`), room as usual. */
    | { readonly code: "level"; readonly at: number | null; readonly setting: Setting | null }
    /** degC per degC of the setting, or per mark. */
    | { readonly code: "slope"; readonly per: "degree" | "mark" }
    /** By how much the step up to this mark is more or less than an even one, degC. */
    | { readonly code: "mark"; readonly setting: Setting }
    /** degC per degC of the room. */
    | { readonly code: "room" }
    /** Share of bath minus room by which food in this container stands below its bath. */
    | { readonly code: "share-lost"; readonly container: string };
  readonly prior: { readonly mean: number; readonly standardDeviation: number };
  readonly now: { readonly mean: number; readonly standardDeviation: number };
}

/** A water test as the response sees it. */
export interface TestedPoint {
  readonly testId: string;
  readonly setting: Setting;
  readonly container: string;
  readonly place: "food" | "bath";
  readonly mean: number;
  /** Thermometer, resolution and mean of the hold together; not run to run. */
  readonly standardUncertainty: number;
}

/** Expected levels of one container over an appliance's settings. */
export interface ResponseCurve {
  readonly container: string;
  /** In the control's order; a fixed control has one. */
  readonly points: readonly {
    readonly setting: Setting;
    readonly basis: Basis;
    readonly level: ExpectedLevel;
  }[];
}

/** What is known of how food in a container follows its bath. */
export interface ContainerAdvice {
  readonly container: string;
  readonly shareLost: ContainerFigure;
  readonly lagMinutes: ContainerFigure;
}

export interface ContainerFigure {
  readonly value: number;
  readonly standardUncertainty: number;
  readonly from: "measured" | "assumed";
  /** Ids of the tests with two probes it was measured in. */
  readonly testIds: readonly string[];
}
