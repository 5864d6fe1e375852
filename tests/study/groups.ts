/** The ways in which the study's records are told apart. */
import type { StudyRecord } from "./record.ts";

export interface Group {
  readonly by: string;
  readonly value: string;
  readonly records: readonly StudyRecord[];
}

const lengths = ["3..7 h", "7..14 h", "14..30 h"] as const;
const lengthOf = (hours: number): string => lengths[hours < 7 ? 0 : hours <= 14 ? 1 : 2]!;

const asked = ["8..12 h asked", "16..24 h asked", "36..48 h asked"] as const;
const askedOf = (hours: number): string => asked[hours <= 12 ? 0 : hours <= 24 ? 1 : 2]!;

/** Each with its values in order; those not listed follow in the alphabet's. */
const dimensions: readonly (readonly [
  by: string,
  of: (record: StudyRecord) => string,
  order: readonly string[],
])[] = [
  ["appliance", ({ kind }) => kind, []],
  ["structure", ({ structure }) => structure, ["lumped", "layered"]],
  ["length of the (longest) test", ({ testHours }) => lengthOf(testHours), lengths],
  ["culture's hours", ({ requirement }) => askedOf(requirement.hours), asked],
  ["room", ({ room }) => room, ["recorded", "stated"]],
  ["thermometer", ({ thermometer }) => thermometer, ["specified", "corrected"]],
  ["thermostat", ({ saysThermostat }) => (saysThermostat ? "said" : "not said"), []],
  [
    "promise",
    ({ promise, tests }) => `${promise}, ${tests === 1 ? "1 test" : `${tests} tests`}`,
    ["this run, 1 test"],
  ],
  ["readings", ({ byHand }) => (byHand ? "by hand" : "logged"), []],
  [
    "program",
    ({ switchesOff }) => (switchesOff ? "switches itself off" : "stays on"),
    ["stays on"],
  ],
];

export const groups = (records: readonly StudyRecord[]): readonly Group[] =>
  dimensions.flatMap(([by, of, order]) => {
    const values = new Set([...order, ...records.map(of).toSorted()]);
    return [...values]
      .map((value) => ({ by, value, records: records.filter((record) => of(record) === value) }))
      .filter((group) => group.records.length > 0);
  });
