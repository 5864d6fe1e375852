/** A small kitchen with comments wherever one might put them; constructed. */
import { problemText } from "../../../src/problem.ts";
import type { Outcome } from "../../../src/problem.ts";

export const file = "kitchen.yaml";
export const sha = "ab".repeat(32);

export const example = `# Ours.
holdband: 1   # form

thermometers:
  'pen':    # in the drawer
    name: "Pen"
    checks: [] # none yet

appliances:
  # The old one.
  box:
    marks: [ 1,2 , 3 ]   # dial
    # It hums.

  bath: { steps: 30..45 by 0.5, kind: circulating bath }

containers:
  jars: {stands: jars in water}
  tub:

    stands: basin
# Cultures below.
cultures: [ reuteri , { id: warm-blend, high: 42 } ]
tests:
  one:
    appliance: box   # as ever
    setting: 2
    container: jars
    files:
      - file: readings/a.csv
        sha256: ${sha}
        probes: { Jar: { place: food, thermometer: pen } }
  two:
    appliance: bath
    setting: 38.5
    container: jars
    files: [ { file: b.csv, sha256: ${sha} } ]

batches:
  - { date: 2026-10-06, culture: reuteri, appliance: bath, setting: 38.5, container: jars }
# The end.
`;

export const textOf = (outcome: Outcome<string>): string =>
  outcome.ok ? outcome.value : problemText(outcome.problem);

/** Lines taken out and put in, as "-" and "+", where only one run of lines differs. */
export const difference = (before: string, after: string): readonly string[] => {
  const [was, is] = [before.split("\n"), after.split("\n")];
  let head = 0;
  while (head < was.length && was[head] === is[head]) head += 1;
  let tail = 0;
  while (tail < Math.min(was.length, is.length) - head && was.at(-1 - tail) === is.at(-1 - tail)) {
    tail += 1;
  }
  return [
    ...was.slice(head, was.length - tail).map((line) => `-${line}`),
    ...is.slice(head, is.length - tail).map((line) => `+${line}`),
  ];
};
