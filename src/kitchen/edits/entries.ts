/**
 * Entries as a person would write them, as plain data: what the edits put into
 * kitchen.yaml. A temperature is a number in degC or a text with its unit;
 * a key left out is not written. null in a change takes the key away.
 */

type Temperature = number | string;
type Field<Value> = Value | null | undefined;

export interface CheckEntry {
  /** Readings in melting ice. One of ice, boiling and reference. */
  readonly ice?: readonly Temperature[];
  readonly boiling?: readonly Temperature[];
  /** What the reference thermometer showed. */
  readonly reference?: Temperature;
  /** Its standard uncertainty. */
  readonly uncertainty?: Temperature;
  /** What this one showed beside the reference. */
  readonly readings?: readonly Temperature[];
  /** ISO date. */
  readonly date?: string;
  /** "1450 m", "4760 ft"; a number is metres. */
  readonly altitude?: number | string;
  /** "851 hPa station", "1013 hPa sea-level". */
  readonly pressure?: string;
  readonly confirmed?: boolean;
}

export interface ThermometerEntry {
  readonly name?: Field<string>;
  readonly resolution?: Field<Temperature>;
  readonly accuracy?: Field<Temperature>;
  readonly checks?: Field<readonly CheckEntry[]>;
}

export interface ApplianceEntry {
  readonly name?: Field<string>;
  readonly kind?: Field<string>;
  /** At most one of these four; to write one takes the others away. */
  readonly control?: Field<"fixed">;
  readonly programs?: Field<readonly string[]>;
  /** "30..45 by 0.5". */
  readonly steps?: Field<string>;
  readonly marks?: Field<readonly (string | number)[]>;
  readonly thermostat?: Field<boolean | "unknown" | "yes" | "no">;
  /** ISO date it was last moved or repaired. */
  readonly moved?: Field<string>;
}

export interface ContainerEntry {
  readonly name?: Field<string>;
  readonly stands?: Field<string>;
  /** "0.5 L"; a number is litres. */
  readonly volume?: Field<number | string>;
  readonly count?: Field<number>;
  /** ISO date jars, lid or amount last changed. */
  readonly changed?: Field<string>;
}

/** Empty for a culture just as the catalogue has it. */
export interface CultureEntry {
  readonly name?: Field<string>;
  readonly low?: Field<Temperature>;
  readonly high?: Field<Temperature>;
  readonly target?: Field<Temperature>;
  readonly ceiling?: Field<Temperature>;
  /** "20h"; a number is hours. */
  readonly hours?: Field<number | string>;
}

export interface ProbeEntry {
  readonly place: string;
  readonly thermometer?: Field<string>;
}

export interface FileEntry {
  /** Inside the kitchen folder, with forward slashes. */
  readonly file: string;
  readonly sha256: string;
  /** "2026-10-03 22:10". */
  readonly starts?: Field<string>;
  readonly unit?: Field<"C" | "F">;
  readonly "date-order"?: Field<"day-first" | "month-first">;
  readonly decimal?: Field<"comma" | "point">;
  /** "30s"; a number is seconds. */
  readonly interval?: Field<number | string>;
  readonly columns?: Field<readonly string[]>;
  readonly probes?: Field<{ readonly [name: string]: ProbeEntry }>;
}

export interface TestEntry {
  readonly appliance?: Field<string>;
  /** Left out for a fixed control. */
  readonly setting?: Field<Temperature>;
  readonly container?: Field<string>;
  readonly fill?: Field<string>;
  /** "18..22". */
  readonly room?: Field<string>;
  readonly notes?: Field<string>;
  readonly files?: Field<readonly FileEntry[]>;
}

export interface BatchEntry {
  /** ISO date. */
  readonly date?: Field<string>;
  readonly culture?: Field<string>;
  readonly appliance?: Field<string>;
  /** Left out for a fixed control. */
  readonly setting?: Field<Temperature>;
  readonly container?: Field<string>;
  readonly milk?: Field<string>;
  readonly heated?: Field<boolean>;
  readonly generation?: Field<number>;
  /** "5 %". */
  readonly starter?: Field<string>;
  /** "36h"; a number is hours. */
  readonly hours?: Field<number | string>;
  readonly separated?: Field<string>;
  readonly sourness?: Field<string>;
  readonly trouble?: Field<readonly string[]>;
  readonly moved?: Field<boolean>;
  readonly notes?: Field<string>;
}

export interface EditOptions {
  /** An entry of that id may be there already; the fields given replace its own. */
  readonly replace?: boolean;
}
