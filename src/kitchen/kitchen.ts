/** The kitchen as data: what kitchen.yaml says, validated. Temperatures in degC. */
import type { Culture } from "../culture/culture.ts";
import type { TemperatureUnit } from "../quantity.ts";
import type { ProbeRole } from "../readings/series.ts";
import type { Thermometer } from "../thermometer/thermometer.ts";

export interface TemperatureRange {
  readonly low: number;
  readonly high: number;
}

export interface Kitchen {
  /** The unit the person reads; the other stands in brackets. */
  readonly shownUnit: TemperatureUnit;
  /** Metres above sea level; null where nobody said. */
  readonly altitude: number | null;
  /** Room temperatures a batch may meet. */
  readonly room: TemperatureRange | null;
  readonly thermometers: readonly KitchenThermometer[];
  readonly appliances: readonly Appliance[];
  readonly containers: readonly Container[];
  /** The cultures kept here: from the catalogue, changed, or the person's own. */
  readonly cultures: readonly Culture[];
  readonly tests: readonly WaterTest[];
  readonly batches: readonly Batch[];
}

export interface KitchenThermometer extends Thermometer {
  readonly id: string;
  /** What people call it; the id where nothing else was given. */
  readonly name: string;
}

export const applianceKinds = [
  "cooker",
  "water bath",
  "circulating bath",
  "warming box",
  "other",
] as const;
export type ApplianceKind = (typeof applianceKinds)[number];

/** What can be set on an appliance. */
export type Control =
  | { readonly kind: "fixed" }
  | { readonly kind: "programs"; readonly programs: readonly string[] }
  /** Temperatures from low to high in equal steps, as the display counts them, degC. */
  | {
      readonly kind: "steps";
      readonly low: number;
      readonly high: number;
      readonly step: number;
    }
  /** Marks of a dial, in their order. */
  | { readonly kind: "marks"; readonly marks: readonly string[] };

export interface Appliance {
  readonly id: string;
  readonly name: string;
  readonly kind: ApplianceKind;
  readonly control: Control;
  /** null: not known. */
  readonly thermostat: boolean | null;
  /** ISO date on which it was last moved to another place, or repaired; null where nobody said. */
  readonly movedOn: string | null;
}

/** One position of a control. */
export type Setting =
  | { readonly kind: "fixed" }
  | { readonly kind: "program"; readonly program: string }
  | { readonly kind: "step"; readonly celsius: number }
  | { readonly kind: "mark"; readonly mark: string };

/** How the food stands in the appliance. */
export const containerStands = ["basin", "jars in water", "jars in air"] as const;
export type ContainerStand = (typeof containerStands)[number];

export interface Container {
  readonly id: string;
  readonly name: string;
  readonly stands: ContainerStand;
  /** Litres, of one vessel; null where nobody said. */
  readonly volume: number | null;
  readonly count: number | null;
  /** ISO date on which it was last changed: other jars, another lid, another amount; null where nobody said. */
  readonly changedOn: string | null;
}

/** Appliance, setting and container: the thing a verdict is about. */
export interface SetUp {
  /** Id of the appliance. */
  readonly appliance: string;
  readonly setting: Setting;
  /** Id of the container. */
  readonly container: string;
}

/** One logged run of a set-up with water. */
export interface WaterTest extends SetUp {
  readonly id: string;
  /** How much was in it, in the person's words: "3 L", "two thirds". */
  readonly fill: string | null;
  /** Room temperatures while it ran. */
  readonly room: TemperatureRange | null;
  readonly notes: string | null;
  /** One logger's file, or several that ran together and are aligned by their clocks. */
  readonly files: readonly TestFile[];
}

export interface TestFile {
  /** Inside the kitchen folder, with forward slashes. */
  readonly path: string;
  readonly sha256: string;
  /** Wall-clock time of the first reading as if in UTC, ms since 1970, where the file has none or a wrong one. */
  readonly startsAt: number | null;
  readonly unit: TemperatureUnit | null;
  readonly dateOrder: "day-first" | "month-first" | null;
  readonly decimal: "." | "," | null;
  readonly intervalSeconds: number | null;
  /** Only these columns are temperatures; empty: as found in the file. */
  readonly columns: readonly string[];
  readonly probes: readonly TestProbe[];
}

export interface TestProbe {
  /** The column's name or heading in the file. */
  readonly name: string;
  readonly place: ProbeRole;
  /** Id of the thermometer; null where nobody said. */
  readonly thermometer: string | null;
}

/** Thin: skimmed or watered; rich: with cream or milk powder. */
export const milkBodies = ["thin", "usual", "rich"] as const;
export type MilkBody = (typeof milkBodies)[number];

/** Whey that parted from the curd. */
export const separations = ["none", "a little", "much"] as const;
export type Separation = (typeof separations)[number];

export const sournesses = ["mild", "as wished", "sharp"] as const;
export type Sourness = (typeof sournesses)[number];

/** Any of these means: throw all of it away. */
export const troubles = ["pink", "orange", "fuzzy", "off-smelling"] as const;
export type Trouble = (typeof troubles)[number];

/** One batch of a culture, in the log's order. null: nobody said. */
export interface Batch extends SetUp {
  /** ISO date. */
  readonly date: string;
  /** Id of the culture. */
  readonly culture: string;
  readonly milk: MilkBody | null;
  /** Whether the milk was heated first. */
  readonly heated: boolean | null;
  /** 1: set with a fresh starter; 2: with some of that batch; and so on. */
  readonly generation: number | null;
  /** Starter as a part of the whole, 0 to 1. */
  readonly starter: number | null;
  /** How long it was held. */
  readonly hours: number | null;
  readonly separated: Separation | null;
  readonly sourness: Sourness | null;
  /** Empty: none was seen, or nobody said. */
  readonly trouble: readonly Trouble[];
  /** Whether it was moved or shaken while it set. */
  readonly moved: boolean | null;
  readonly notes: string | null;
}
