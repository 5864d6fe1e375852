/** Typed readings and what was said of them, as a new water test. */
import { clockText, dateText, dayOf } from "../../readings/typed/wall-clock.ts";
import { typedCsv } from "../../readings/typed/typed-csv.ts";
import type { TypedLog } from "../../readings/typed/typed-types.ts";
import type { NewProbe, NewTest, TestFacts, TypedText } from "./new-test.ts";
import { slug } from "./test-id.ts";

/** What is said of the test; the readings come later. */
export interface SaidOfTest extends TestFacts {
  readonly probes: readonly NewProbe[];
}

/** Without the columns of probes that were never read. */
export const readProbesOnly = (log: TypedLog): TypedLog => {
  const isRead = log.probes.map((_, at) => log.readings.some(({ values }) => values[at] !== null));
  return {
    ...log,
    probes: log.probes.filter((_, at) => isRead[at]),
    readings: log.readings.map((reading) => ({
      ...reading,
      values: reading.values.filter((_, at) => isRead[at]),
    })),
  };
};

/** The person's notes, then each reading's comment with its time. */
const notesOf = (said: string | null, { readings }: TypedLog): string | null => {
  const comments = readings.flatMap(({ seconds, comment }) =>
    comment === null ? [] : [`${clockText(seconds)} ${comment}`],
  );
  const all = [...(said === null ? [] : [said]), ...comments];
  return all.length === 0 ? null : all.join("; ");
};

const fileNameOf = ({ name, appliance, setting, container }: SaidOfTest, log: TypedLog): string => {
  const day = dateText(dayOf(log.readings[0]?.seconds ?? 0));
  const plain =
    name ?? [appliance, setting, container, day].filter((part) => part !== null).join("-");
  return `${slug(plain) || "readings"}-by-hand.csv`;
};

/** The test as it is stored: the log as CSV, its comments among the notes. */
export const enteredTest = (said: SaidOfTest, typed: TypedLog): NewTest<TypedText> => {
  const log = readProbesOnly(typed);
  const { probes, ...test } = said;
  const read = probes.filter(({ name }) => log.probes.includes(name));
  return {
    ...test,
    notes: notesOf(test.notes, log),
    files: [
      {
        name: fileNameOf(said, log),
        source: { text: typedCsv(log) },
        readingOptions: { roles: new Map(read.map(({ name, place }) => [name, place])) },
        starts: null,
        probes: read,
      },
    ],
  };
};
