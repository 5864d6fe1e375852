/**
 * Problems: why something could not be done. A closed set of codes with facts;
 * this file alone turns them into sentences for the person in the kitchen:
 * what was expected, what was found, where, and what to do.
 *
 * Core functions return problems as values (`Outcome`); they never throw for
 * something a person can cause.
 */

export interface ProblemFacts {
  "file-missing": { file: string };
  "file-is-directory": { file: string };
  "file-unreadable": { file: string; why: string };
  "file-empty": { file: string };
  "file-binary": { file: string };
  "too-few-readings": { file: string; found: number };
  "no-temperature-column": { file: string; line: number; columns: string };
  "temperature-column-undecidable": { file: string; line: number; columns: string };
  "no-time-column": { file: string; line: number; columns: string };
  "time-undecidable": { file: string; line: number; found: string };
  "date-order-undecidable": { file: string; line: number; found: string };
  "date-order-contradicted": { file: string; line: number; found: string; order: string };
  "decimal-undecidable": { file: string; line: number; found: string };
  "unit-undecidable": { file: string; middle: number };
  "units-mixed": { file: string; line: number; found: string };
  "columns-changed": { file: string; line: number; found: string };
  "probe-unknown": { probe: string; probes: string };
  "column-unknown": { file: string; column: string; columns: string };
  "no-readings-left": { file: string; rowsRead: number; setAside: string };
  "option-invalid": { option: string; expected: string; found: string };
  "option-missing": { option: string; why: string };
  "options-contradict": { first: string; second: string; why: string };
  "window-inverted": { low: number; high: number };
  "window-wrong-unit": { low: number; high: number; readings: string };
  "ceiling-below-window": { ceiling: number; high: number };
  "culture-unknown": { culture: string; suggestion: string; known: string };
  "report-unwritable": { file: string; why: string };
  "folder-in-use": { folder: string; found: string };
  usage: { expected: string; found: string; suggestion: string; command: string };
  internal: { what: string };
}

export type ProblemCode = keyof ProblemFacts;
export type Problem = {
  [Code in ProblemCode]: { readonly code: Code; readonly facts: ProblemFacts[Code] };
}[ProblemCode];

/** A value, or the problem that stood in its way. */
export type Outcome<Value> =
  { readonly ok: true; readonly value: Value } | { readonly ok: false; readonly problem: Problem };

export const done = <Value>(value: Value): Outcome<Value> => ({ ok: true, value });

/** A failed outcome; the facts are checked against the code by the compiler. */
export const failed = <Code extends ProblemCode>(
  code: Code,
  facts: ProblemFacts[Code],
): { readonly ok: false; readonly problem: Problem } => ({
  ok: false,
  problem: { code, facts } as Problem,
});

const sentences: { [Code in ProblemCode]: (facts: ProblemFacts[Code]) => string } = {
  "file-missing": ({ file }) =>
    `Expected a logger's file at ${file}, found nothing there. Check the name and the folder.`,
  "file-is-directory": ({ file }) =>
    `Expected a file, found a folder: ${file}. Name the logger's file inside it.`,
  "file-unreadable": ({ file, why }) =>
    `${file} could not be read (${why}). Check that you may open it.`,
  "file-empty": ({ file }) =>
    `Expected readings, found an empty file: ${file}. Export it from the logger again.`,
  "file-binary": ({ file }) =>
    `Expected text (CSV), found something else in ${file}. Export the readings as CSV or text and give that file.`,
  "too-few-readings": ({ file, found }) =>
    `Expected at least two readings, found ${found} in ${file}. Give the whole night's file.`,
  "no-temperature-column": ({ file, line, columns }) =>
    `Expected a column of temperatures, found none in ${file}, line ${line}: ${columns}. Name it with --column NAME.`,
  "temperature-column-undecidable": ({ file, line, columns }) =>
    `More than one column of ${file}, line ${line}, can be a temperature, and nothing in the file says which: ${columns}. Name each one that is with --column, for example --column "column 2".`,
  "no-time-column": ({ file, line, columns }) =>
    `Expected a column of times, found none in ${file}, line ${line}: ${columns}. If the readings are evenly spaced, say how far apart with --interval, for example --interval 30s.`,
  "time-undecidable": ({ file, line, found }) =>
    `Expected a time, found "${found}" in ${file}, line ${line}, which can be read in more than one way. If the readings are evenly spaced, say how far apart with --interval, for example --interval 30s.`,
  "date-order-undecidable": ({ file, line, found }) =>
    `The date "${found}" in ${file}, line ${line}, can be day first or month first, and no other date in the file decides it. Say --date-order day-first or --date-order month-first.`,
  "date-order-contradicted": ({ file, line, found, order }) =>
    `Expected dates written ${order}, found "${found}" in ${file}, line ${line}, which cannot be read so. Look at that line, or say the other order with --date-order.`,
  "decimal-undecidable": ({ file, line, found }) =>
    `The number "${found}" in ${file}, line ${line}, can be read with a decimal comma or a decimal point. Say --decimal comma or --decimal point.`,
  "unit-undecidable": ({ file, middle }) =>
    middle >= 240
      ? `Expected temperatures in degC or degF, found numbers in ${file} whose middle, ${middle}, looks like kelvin, and no unit. Write the unit into the heading, for example "Temp (K)", or export the file in degC.`
      : `The temperatures in ${file} carry no unit and their middle, ${middle}, could be degC or degF. Say --unit C or --unit F.`,
  "units-mixed": ({ file, line, found }) =>
    `Expected one unit of temperature in each column, found another ("${found}") in ${file}, line ${line}. Export the file again in one unit.`,
  "columns-changed": ({ file, line, found }) =>
    `Expected the columns of the first heading throughout, found a heading with others in ${file}, line ${line}: ${found}. Split the file there and give the parts one by one.`,
  "probe-unknown": ({ probe, probes }) =>
    `Expected a probe called "${probe}" for --probe, found ${probes}. Use one of those names.`,
  "column-unknown": ({ file, column, columns }) =>
    `Expected a column called "${column}" in ${file}, found ${columns}. Use one of those names.`,
  "no-readings-left": ({ file, rowsRead, setAside }) =>
    `Of ${rowsRead} rows in ${file} none could be used: ${setAside}. Look at the file at that line.`,
  "option-invalid": ({ option, expected, found }) =>
    `${option} expects ${expected}, found "${found}".`,
  "option-missing": ({ option, why }) => `${option} is needed: ${why}.`,
  "options-contradict": ({ first, second, why }) =>
    `${first} and ${second} cannot go together: ${why}. Leave one out.`,
  "window-inverted": ({ low, high }) =>
    `Expected --low below --high, found ${low} and ${high} degC. Swap them.`,
  "window-wrong-unit": ({ low, high, readings }) =>
    `The window ${low}..${high} is far from the readings (${readings}). If it is in degF, write the letter: --low ${low}F --high ${high}F.`,
  "ceiling-below-window": ({ ceiling, high }) =>
    `Expected a ceiling at or above the window's upper edge (${high} degC), found ${ceiling} degC. Raise --ceiling or lower --high.`,
  "culture-unknown": ({ culture, suggestion, known }) =>
    `There is no culture called "${culture}".${suggestion === "" ? "" : ` Did you mean "${suggestion}"?`} Known: ${known}. Or give your own window with --low, --high and --hours.`,
  "report-unwritable": ({ file, why }) =>
    `The report could not be written to ${file} (${why}). Choose a folder that exists and that you may write to.`,
  "folder-in-use": ({ folder, found }) =>
    `Expected a new or empty folder, found other things in ${folder}: ${found}. Name another folder; nothing was changed.`,
  usage: ({ expected, found, suggestion, command }) =>
    `Expected ${expected}, found ${found}.${suggestion === "" ? "" : ` Did you mean ${suggestion}?`} "${command} --help" shows an example.`,
  internal: ({ what }) =>
    `Something went wrong inside holdband that should not (${what}). Nothing was written. Please report it, with the command you gave.`,
};

/** The sentence for one problem. */
export const problemText = (item: Problem): string =>
  (sentences[item.code] as (facts: Problem["facts"]) => string)(item.facts);
