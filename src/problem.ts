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
  "probe-unknown": { option: string; probe: string; probes: string };
  "listed-probe-missing": { file: string; probe: string; probes: string };
  "clock-needed": { file: string };
  "loggers-apart": { first: string; firstSpan: string; second: string; secondSpan: string };
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
  "folder-missing": { folder: string };
  "folder-is-file": { folder: string };
  "kitchen-missing": { folder: string };
  "kitchen-exists": { file: string };
  "kitchen-in-the-way": { folder: string; found: string };
  "kitchen-unreadable": { file: string; why: string };
  "kitchen-too-large": { file: string; megabytes: number };
  "kitchen-not-utf8": { file: string };
  "kitchen-changed-meanwhile": { file: string };
  "kitchen-locked": { folder: string; holder: string; since: string };
  "file-unwritable": { file: string; why: string };
  "answer-unwritable": { why: string };
  "path-leaves-folder": { path: string; why: string };
  "raw-file-missing": { file: string };
  "raw-file-changed": { file: string; expected: string; found: string };
  "file-changed-meanwhile": { file: string };
  "reading-unread": { line: number | null; expected: string; found: string; advice: string };
  "reading-doubtful": { line: number | null; found: string; why: string; advice: string };
  "check-doubtful": { questions: string };
  "file-known": { file: string; test: string; stored: string };
  "not-in-kitchen": { what: string; id: string; suggestion: string; known: string };
  stopped: { what: string };
  "worker-unstarted": { why: string };
  "no-test-readable": { count: number; why: string };
  "kitchen-invalid": { file: string; count: number; list: string };
  "kitchen-change-refused": { file: string; list: string };
  "kitchen-change-by-hand": { file: string; place: string };
  "kitchen-in-use": { what: string; id: string; list: string; advice: string };
  "id-taken": { file: string; what: string; id: string };
  "id-unknown": { file: string; what: string; id: string; suggestion: string; known: string };
  "setting-invalid": { appliance: string; expected: string; found: string; suggestion: string };
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
  "probe-unknown": ({ option, probe, probes }) =>
    `Expected a probe called "${probe}" for ${option}, found ${probes}. Use one of those names.`,
  "listed-probe-missing": ({ file, probe, probes }) =>
    `Expected a probe called "${probe}" in ${file}, as kitchen.yaml lists it; found ${probes}. Write one of those names under "probes" of that file.`,
  "clock-needed": ({ file }) =>
    `Expected a clock time with each reading, found none in ${file}, which ran together with another logger. Say when its first reading was taken: "starts: 2026-01-31 21:30" under the file in kitchen.yaml, or --starts "2026-01-31 21:30".`,
  "loggers-apart": ({ first, firstSpan, second, secondSpan }) =>
    `Expected loggers that ran together, found a time between them by their clocks: ${first} ran from ${firstSpan}, ${second} from ${secondSpan}. If a clock was wrong, say when that file's first reading was taken ("starts: 2026-01-31 21:30" under the file in kitchen.yaml, or --starts); if they are two water tests, enter them as two.`,
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
    `There is no culture called "${culture}".${suggestion === "" ? "" : ` Did you mean "${suggestion}"?`} Known: ${known}. Or give a window of your own.`,
  "report-unwritable": ({ file, why }) =>
    `The report could not be written to ${file} (${why}). Choose a folder that exists and that you may write to.`,
  "folder-in-use": ({ folder, found }) =>
    `Expected a new or empty folder, found other things in ${folder}: ${found}. Name another folder; nothing was changed.`,
  "folder-missing": ({ folder }) =>
    `Expected a kitchen folder at ${folder}, found nothing there. Check the name, or start one: holdband init ${folder}.`,
  "folder-is-file": ({ folder }) =>
    `Expected a kitchen folder at ${folder}, found a file. Name the folder that holds kitchen.yaml.`,
  "kitchen-missing": ({ folder }) =>
    `Expected kitchen.yaml in ${folder}, found none. Go to your kitchen's folder or name it with --kitchen; to start a kitchen here: holdband init ${folder}.`,
  "kitchen-exists": ({ file }) =>
    `Expected a folder without a kitchen, found ${file}. It is left as it was; use it, or name another folder.`,
  "kitchen-in-the-way": ({ folder, found }) =>
    `Expected room for a kitchen folder at ${folder}, found in its place ${found}. Name another folder; nothing was changed.`,
  "kitchen-unreadable": ({ file, why }) =>
    `${file} could not be read (${why}). Check that it is an ordinary file that you may open.`,
  "kitchen-too-large": ({ file, megabytes }) =>
    `Expected a kitchen.yaml of at most 5 MB, found ${megabytes} MB in ${file}. Readings belong in readings/, not in this file; the version before stands beside it as kitchen.previous.yaml.`,
  "kitchen-not-utf8": ({ file }) =>
    `Expected text in UTF-8, found other bytes in ${file}. Open it in an editor and save it as UTF-8.`,
  "kitchen-changed-meanwhile": ({ file }) =>
    `${file} was changed by something else, perhaps an editor, while this was at work on it. Nothing was written and that change stands; give the command again.`,
  "kitchen-locked": ({ folder, holder, since }) =>
    `Expected ${folder} free to be written, found it held by ${holder} since ${since}. Let that command finish, then give this one again; nothing was changed.`,
  "file-unwritable": ({ file, why }) =>
    `${file} could not be written (${why}). What was there before is unharmed; see to that, then give the command again.`,
  "answer-unwritable": ({ why }) =>
    `The answer could not be written (${why}). What it stored stays stored; see to that before you ask again.`,
  "path-leaves-folder": ({ path, why }) =>
    `Expected a path inside the kitchen folder, with forward slashes, found ${path} (${why}). Write it like readings/night.csv, and keep the file itself in the folder.`,
  "raw-file-missing": ({ file }) =>
    `Expected the logger's file ${file}, which kitchen.yaml lists, found nothing there. Put it back from a copy, or take its water test out of kitchen.yaml.`,
  "raw-file-changed": ({ file, expected, found }) =>
    `Expected ${file} as it was when it was added (SHA-256 ${expected}...), found it changed (${found}...). Restore it from a copy, or add it as a new test.`,
  "file-changed-meanwhile": ({ file }) =>
    `${file} changed while it was being read. If the logger or its program still writes to it, wait until it is done, then give the command again.`,
  "reading-unread": ({ line, expected, found, advice }) =>
    `${line === null ? "" : `Line ${line}: `}Expected ${expected}, found ${found}. ${advice}`,
  "reading-doubtful": ({ line, found, why, advice }) =>
    `${line === null ? "" : `Line ${line}: `}${found} is ${why}.${advice === "" ? "" : ` ${advice}`}${line === null ? "" : ' If it is right, put "!" at the end of the line.'}`,
  "check-doubtful": ({ questions }) =>
    `${questions} Nothing was stored. Look again; if the readings stand, say --confirm.`,
  "file-known": ({ file, test, stored }) =>
    `Expected readings the kitchen does not have yet, found in ${file} the same as in its water test "${test}". Nothing was changed. If the kitchen's copy is lost or altered, put this file in its place: ${stored}.`,
  "not-in-kitchen": ({ what, id, suggestion, known }) =>
    `There is no ${what} called "${id}" in this kitchen.${suggestion === "" ? "" : ` Did you mean "${suggestion}"?`} ${known === "" ? `There is none yet; "holdband ${what} --help" shows how to enter one.` : `Known: ${known}.`}`,
  "no-test-readable": ({ count, why }) =>
    `Expected water tests to go by, found none of ${count} that could be read, so nothing was decided and no report written. ${why}`,
  stopped: ({ what }) => `Stopped before ${what} was answered; nothing was stored.`,
  "worker-unstarted": ({ why }) =>
    `Expected this browser to start the part of the page that does the work, found that it did not (${why}). Nothing was lost; open the page in a current browser, from a file on your own computer.`,
  "kitchen-invalid": ({ file, count, list }) =>
    `Expected a kitchen file, found ${count} ${count === 1 ? "mistake" : "mistakes"} in ${file}. Mend ${count === 1 ? "it" : "them"} in an editor:\n${list}`,
  "kitchen-change-refused": ({ file, list }) =>
    `The change would leave ${file} with mistakes, so it was not made:\n${list}`,
  "kitchen-change-by-hand": ({ file, place }) =>
    `Expected ${place} in ${file} to be written in lines of "key: value", found a form that cannot be changed safely from here. Nothing was changed; make the change in an editor.`,
  "kitchen-in-use": ({ what, id, list, advice }) =>
    `Expected nothing that needs ${what} "${id}", found what is listed here. ${advice}; nothing was changed:\n${list}`,
  "id-taken": ({ file, what, id }) =>
    `Expected a new name for ${what}, found "${id}" already in ${file}. Choose another name.`,
  "id-unknown": ({ file, what, id, suggestion, known }) =>
    `Expected ${what} of ${file}, found "${id}".${suggestion === "" ? "" : ` Did you mean "${suggestion}"?`} ${known === "" ? "There is none yet." : `There are: ${known}.`}`,
  "setting-invalid": ({ appliance, expected, found, suggestion }) =>
    `Found ${found} as a setting.${suggestion === "" ? "" : ` Did you mean "${suggestion}"?`} Expected for ${appliance}: ${expected}.`,
  usage: ({ expected, found, suggestion, command }) =>
    `Expected ${expected}, found ${found}.${suggestion === "" ? "" : ` Did you mean ${suggestion}?`} "${command} --help" shows an example.`,
  internal: ({ what }) =>
    `Something went wrong inside holdband that should not (${what}). What was kept before is unharmed. Please report it, with the command you gave.`,
};

/** The sentence for one problem. */
export const problemText = (item: Problem): string =>
  (sentences[item.code] as (facts: Problem["facts"]) => string)(item.facts);
