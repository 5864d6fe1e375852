import { readFileSync, readdirSync } from "node:fs";
import { dirname, join, normalize } from "node:path";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";

const root = fileURLToPath(new URL("../", import.meta.url));

const filesUnder = (folder: string): readonly string[] =>
  readdirSync(join(root, folder), { recursive: true, encoding: "utf8" })
    .filter((name) => /\.tsx?$/.test(name))
    .map((name) => `${folder}/${name.replaceAll("\\", "/")}`)
    .toSorted();

const sources = filesUnder("src");
const tests = new Set(filesUnder("tests"));
const textOf = new Map(sources.map((file) => [file, readFileSync(join(root, file), "utf8")]));

/** A file's code without comments, so that prose about imports is not taken for one. */
const codeOf = (file: string): string =>
  (textOf.get(file) ?? "").replaceAll(/\/\*[\s\S]*?\*\//g, "").replaceAll(/(^|\s)\/\/.*$/gm, "");

const importForm =
  /(?:\b(?:import|export)\s+(type\s)?[^"';]*?\bfrom\s+|\bimport\s+|\bimport\()\s*["']([^"']+)["']/g;

interface Import {
  readonly file: string;
  readonly to: string;
  /** A file of ours, not a package. */
  readonly own: boolean;
  readonly typeOnly: boolean;
}

const importsOf = (file: string): readonly Import[] =>
  [...codeOf(file).matchAll(importForm)].map(([, type, to = ""]) => {
    const own = to.startsWith(".");
    return {
      file,
      to: own ? normalize(join(dirname(file), to)) : to,
      own,
      typeOnly: type !== undefined,
    };
  });

const imports = sources.flatMap(importsOf);

/** A room is a folder of src, or a file that stands directly in it. */
const roomOf = (file: string): string => {
  const parts = file.split("/");
  return parts.length > 2 ? (parts[1] ?? "") : (parts[1] ?? "").replace(/\.ts$/, "");
};

/** Files that only give data its shape; anyone may know them. */
const shapes: ReadonlySet<string> = new Set([
  "src/readings/series.ts",
  "src/readings/readings-file.ts",
  "src/hold/hold.ts",
  "src/culture/culture.ts",
  "src/culture/verdict-types.ts",
  "src/analysis-types.ts",
  "src/kitchen/kitchen.ts",
  "src/kitchen-analysis-types.ts",
  "src/thermometer/thermometer.ts",
  "src/thermometer/check-question.ts",
  "src/thermometer/correction-model.ts",
  "src/container/container-response.ts",
  "src/advice/advice-types.ts",
  "src/advice/next-types.ts",
  "src/advice/response-types.ts",
  "src/advice/recheck-types.ts",
  "src/culture/heating-types.ts",
]);

interface Row {
  readonly rooms: readonly string[];
  /** Rooms it may import besides itself; "shapes" stands for the files above. */
  readonly may: readonly string[];
  /** Packages and Node modules it may import. */
  readonly packages: readonly string[];
  /** May it know the core's types wherever they stand? Types compute nothing. */
  readonly anyType?: true;
  readonly why: string;
}

const table: readonly Row[] = [
  {
    rooms: ["quantity", "problem", "notice"],
    may: ["quantity", "problem", "notice"],
    packages: [],
    why: "the words everybody uses; whatever they imported, everybody would",
  },
  {
    rooms: ["quantity-text"],
    may: ["quantity"],
    packages: [],
    why: "reads what a person types; knows quantities and nothing else",
  },
  {
    rooms: ["nearest-name"],
    may: [],
    packages: [],
    why: "did you mean: words only",
  },
  {
    rooms: ["stats"],
    may: [],
    packages: ["simple-statistics"],
    why: "numbers in, numbers out; checked against certified data, so it must stand alone",
  },
  {
    rooms: ["readings"],
    may: ["stats", "quantity", "quantity-text", "problem", "notice"],
    packages: ["csv-parse", "zod", "simple-statistics"],
    why: "a file to a series; what the readings mean is decided later",
  },
  {
    rooms: ["thermometer"],
    may: ["stats", "quantity", "problem", "shapes"],
    packages: ["simple-statistics"],
    why: "a correction and its uncertainty hold for any reading",
  },
  {
    rooms: ["hold"],
    may: ["stats", "quantity", "problem", "shapes"],
    packages: ["simple-statistics"],
    why: "what a night was, before any culture is asked about",
  },
  {
    rooms: ["container"],
    may: ["stats", "quantity", "problem", "shapes"],
    packages: ["simple-statistics"],
    why: "how food follows its bath: heat transfer between two series, no culture in it",
  },
  {
    rooms: ["culture"],
    may: ["hold", "thermometer", "stats", "quantity", "problem", "nearest-name", "shapes"],
    packages: ["simple-statistics"],
    why: "the decision; it must not depend on how a file looked or how a result is shown",
  },
  {
    rooms: [
      "analysis",
      "analysis-types",
      "heating-analysis",
      "probe-analysis",
      "probe-night",
      "read-files",
    ],
    may: [
      "analysis",
      "analysis-types",
      "probe-analysis",
      "probe-night",
      "read-files",
      "readings",
      "thermometer",
      "hold",
      "culture",
      "container",
      "stats",
      "quantity",
      "problem",
      "notice",
      "shapes",
    ],
    packages: [],
    why: "the one door for shells; joins the rooms and adds no method of its own",
  },
  {
    rooms: ["kitchen"],
    may: [
      "quantity",
      "quantity-text",
      "problem",
      "notice",
      "nearest-name",
      "culture/catalogue",
      "culture/own-culture",
      "shapes",
    ],
    packages: ["zod", "yaml"],
    why: "the text of kitchen.yaml to data and back; runs in a page as well, so it knows no files",
  },
  {
    rooms: ["advice"],
    may: [
      "culture",
      "hold",
      "container",
      "thermometer",
      "kitchen/set-up",
      "kitchen/offered-settings",
      "stats",
      "quantity",
      "shapes",
    ],
    packages: ["simple-statistics"],
    why: "what follows from the verdicts: it sees tests already read and decided, never a file",
  },
  {
    rooms: ["kitchen-analysis", "kitchen-analysis-types"],
    may: [
      "advice",
      "analysis",
      "analysis-types",
      "probe-analysis",
      "probe-night",
      "kitchen-analysis-types",
      "kitchen",
      "readings",
      "thermometer",
      "container",
      "hold",
      "culture",
      "stats",
      "quantity",
      "problem",
      "notice",
      "shapes",
    ],
    packages: [],
    why: "the door for a whole kitchen: asks the other door once for each water test",
  },
  {
    rooms: ["folder"],
    may: ["quantity", "problem", "notice", "shapes"],
    packages: ["node:"],
    why: "files of the kitchen folder: whole or not at all, and never outside it",
  },
  {
    rooms: ["report"],
    may: [
      "analysis",
      "analysis-types",
      "kitchen-analysis-types",
      "quantity",
      "problem",
      "notice",
      "shapes",
    ],
    packages: ["vega", "vega-interpreter", "vega-lite"],
    anyType: true,
    why: "renders an Analysis and computes no result, so every rendering says the same",
  },
  {
    rooms: ["input"],
    may: [
      "analysis",
      "analysis-types",
      "kitchen-analysis",
      "kitchen-analysis-types",
      "kitchen",
      "readings",
      "thermometer",
      "culture/catalogue",
      "quantity",
      "quantity-text",
      "problem",
      "nearest-name",
      "shapes",
    ],
    packages: ["zod"],
    why: "what a person typed, the same in a shell and in a page: pure, so that neither needs the other",
  },
  {
    rooms: ["cli"],
    may: [
      "input",
      "analysis",
      "analysis-types",
      "heating-analysis",
      "kitchen-analysis",
      "kitchen-analysis-types",
      "kitchen",
      "folder",
      "report",
      "problem",
      "quantity",
      "quantity-text",
      "nearest-name",
      "readings",
      "thermometer",
      "notice",
      "culture/catalogue",
      "culture/heating-targets",
      "shapes",
    ],
    packages: ["commander", "zod", "@clack/prompts", "node:"],
    why: "thin: options in, texts out; it asks the core's doors (analysis, a file's readings, a thermometer) and adds no method",
  },
  {
    rooms: ["page"],
    may: [
      "input",
      "analysis",
      "analysis-types",
      "kitchen-analysis",
      "kitchen-analysis-types",
      "folder/raw-name",
      "kitchen",
      "report",
      "readings",
      "thermometer",
      "culture/catalogue",
      "quantity",
      "quantity-text",
      "problem",
      "notice",
      "shapes",
    ],
    packages: ["preact", "fflate", "idb-keyval", "vega", "vega-lite", "vega-interpreter", "zod"],
    anyType: true,
    why: "the screen and its worker: they ask the same doors as the shell, and know neither it nor Node",
  },
  {
    rooms: ["build"],
    may: ["page", "report"],
    packages: ["esbuild", "node:"],
    why: "makes dist/; no part of the program",
  },
];

const rowOf = (file: string): Row | undefined =>
  table.find(({ rooms }) => rooms.includes(roomOf(file)));

const core: ReadonlySet<string> = new Set([
  "quantity",
  "quantity-text",
  "problem",
  "notice",
  "nearest-name",
  "stats",
  "readings",
  "thermometer",
  "hold",
  "culture",
  "analysis",
  "analysis-types",
  "probe-analysis",
  "probe-night",
  "read-files",
  "heating-analysis",
  "container",
  "kitchen",
  "kitchen-analysis",
  "kitchen-analysis-types",
  "input",
]);
const coreFiles = sources.filter((file) => core.has(roomOf(file)));

const packageMatches = (wanted: string, allowed: string): boolean =>
  allowed.endsWith(":")
    ? wanted.startsWith(allowed)
    : wanted === allowed || wanted.startsWith(`${allowed}/`);

const mayImport = (row: Row, { file, to, typeOnly }: Import): boolean => {
  const room = roomOf(to);
  if (typeOnly && row.anyType === true && room !== "cli" && room !== "build") return true;
  if (room === roomOf(file) || row.may.includes(room)) return true;
  if (row.may.includes("shapes") && shapes.has(to)) return true;
  return row.may.some((one) => to === `src/${one}.ts`);
};

describe("who may import whom", () => {
  it("has a row for every file", () => {
    expect(sources.length).toBeGreaterThan(50);
    // Files import each other; were none found, the search for imports would be broken.
    expect(imports.length).toBeGreaterThan(2 * sources.length);
    expect(sources.filter((file) => rowOf(file) === undefined)).toEqual([]);
  });

  it.each(table)("$rooms: $why", (row) => {
    const strays = imports
      .filter(({ file }) => rowOf(file) === row)
      .filter((one) =>
        one.own
          ? !mayImport(row, one)
          : !row.packages.some((allowed) => packageMatches(one.to, allowed)),
      )
      .map(({ file, to }) => `${file} imports ${to}`);
    expect(strays).toEqual([]);
  });

  it("finds every import to be a file that is there, with its ending", () => {
    const known = new Set(sources);
    expect(imports.filter(({ to, own }) => own && !known.has(to))).toEqual([]);
  });

  it("has no cycles", () => {
    const next = new Map(sources.map((file) => [file, [] as string[]]));
    for (const { file, to, own } of imports) if (own) next.get(file)?.push(to);
    const state = new Map<string, "open" | "closed">();
    const cycles: string[] = [];
    const visit = (file: string, path: readonly string[]): void => {
      if (state.get(file) === "open") cycles.push([...path, file].join(" -> "));
      if (state.has(file)) return;
      state.set(file, "open");
      for (const to of next.get(file) ?? []) visit(to, [...path, file]);
      state.set(file, "closed");
    };
    for (const file of sources) visit(file, []);
    expect(cycles).toEqual([]);
  });

  it("has no barrel: no index.ts, and no file that only passes others on", () => {
    expect(sources.filter((file) => file.endsWith("/index.ts"))).toEqual([]);
    const passesOn = /^\s*export\s+(?:\*|\{[^}]*\})\s+from\b/m;
    // Types may be passed on where a door promises them: src/analysis.ts.
    expect(sources.filter((file) => passesOn.test(codeOf(file)))).toEqual([]);
  });
});

describe("the core", () => {
  const forbidden: readonly (readonly [what: string, pattern: RegExp])[] = [
    [
      "Node",
      /\bprocess\.(?:env|argv|std\w+|exit|cwd|platform|hrtime|memoryUsage|nextTick)|\bBuffer\.|\bfrom\s+["']node:/,
    ],
    ["the page", /\bdocument\.|\bglobalThis\b|\blocalStorage\b/],
    ["the clock", /\bDate\.now\b|\bnew Date\(\s*\)|\bperformance\./],
    ["chance", /\bMath\.random\b|\bcrypto\./],
    ["the locale", /\bIntl\b|\.toLocale\w*\(|\.localeCompare\(/],
  ];

  it.each(forbidden)("never touches %s", (_, pattern) => {
    expect(coreFiles.length).toBeGreaterThan(30);
    expect(coreFiles.filter((file) => pattern.test(codeOf(file)))).toEqual([]);
  });

  it("keeps degF to where something is read or shown", () => {
    const inside = coreFiles.filter((file) => ["stats", "hold", "culture"].includes(roomOf(file)));
    expect(inside.filter((file) => /fahrenheit/i.test(codeOf(file)))).toEqual([]);
  });
});

/** Files longer than 200 lines, each with the reason. */
const longFiles: ReadonlyMap<string, string> = new Map([
  ["src/problem.ts", "a list, one sentence after the other"],
]);

/** Files, or folders, without tests of their own name, each with where they are tested instead. */
const testedElsewhere: ReadonlyMap<string, string> = new Map([
  ["src/report/charts/", "a spec is right when it draws: tests/report/charts/render-svg.test.ts"],
  ["src/report/sections/", "tests/report/html.test.ts and page.test.ts, in the page they make up"],
  ["src/report/wording/method.ts", "tests/report/html.test.ts"],
  ["src/kitchen/schema/", "tests/kitchen/parse-kitchen.test.ts, by the sentences they lead to"],
  [
    "src/kitchen/edits/",
    "tests/kitchen/edits/edit.test.ts and splices.test.ts, by what they change",
  ],
  ["src/page/screen/", "tests/page/night-in-page.test.ts, kitchen-in-page.test.ts: as one uses it"],
  ["src/page/screen/keep/", "tests/page/kitchen-in-page.test.ts"],
  ["src/page/screen/report/", "tests/page/kitchen-in-page.test.ts"],
  ["src/page/screen/kitchen/", "tests/page/kitchen-in-page.test.ts; fields: form-fields.test.ts"],
  ["src/page/screen/night/", "tests/page/night-in-page.test.ts"],
  ["src/page/screen/readings/", "tests/page/night-in-page.test.ts; fields: form-fields.test.ts"],
  ["src/page/screen/form/field.tsx", "tests/page/night-in-page.test.ts"],
  ["src/page/screen/form/form.tsx", "tests/page/night-in-page.test.ts"],
  ["src/build/bundle.ts", "tests/package.test.ts installs and runs what it makes"],
  ["src/cli/main.ts", "tests/cli runs it as a program"],
  ["src/cli/entries/", "tests/cli/command-table.test.ts: tables of words, shown by the help"],
  ["src/cli/command-result.ts", "tests/cli/bad-input.test.ts reads its failures"],
  ["src/cli/usage-problem.ts", "tests/cli/command-line.test.ts"],
  ["src/cli/heating-options.ts", "tests/cli/heating.test.ts"],
  ["src/cli/heating-request.ts", "tests/cli/heating.test.ts"],
  ["src/input/option-shapes.ts", "tests/input/check-options.test.ts"],
  ["src/input/option-readers.ts", "tests/input/check-options.test.ts"],
  ["src/input/read-options.ts", "tests/input/check-options.test.ts"],
  ["src/input/file-option-shapes.ts", "tests/input/check-options.test.ts, check-request.test.ts"],
  ["src/input/kitchen/appliance-options.ts", "tests/cli/kitchen/appliance.test.ts"],
  ["src/cli/kitchen/section-command.ts", "tests/cli/kitchen/appliance.test.ts, container.test.ts"],
  ["src/cli/kitchen/edit-kitchen.ts", "tests/cli/kitchen/appliance.test.ts"],
  ["src/input/kitchen/sections.ts", "tests/cli/kitchen/rename.test.ts"],
  ["src/cli/kitchen/thermometer-answers.ts", "tests/cli/kitchen/thermometer.test.ts"],
  ["src/cli/kitchen/ask-about-doubts.ts", "tests/cli/kitchen/at-the-terminal.test.ts"],
  ["src/cli/kitchen/thermometer-asked.ts", "tests/cli/kitchen/at-the-terminal.test.ts"],
  ["src/cli/kitchen/ask.ts", "tests/cli/kitchen/at-the-terminal.test.ts, at a real terminal"],
  ["src/cli/kitchen/analyse-folder.ts", "tests/cli/kitchen/report.test.ts"],
  ["src/cli/kitchen/kitchen-folder.ts", "tests/cli/kitchen/refusals.test.ts"],
  ["src/input/known-ids.ts", "tests/input/set-up.test.ts"],
  [
    "src/cli/kitchen/set-up-asked.ts",
    "tests/cli/kitchen/refusals.test.ts, at-the-terminal.test.ts",
  ],
  ["src/cli/kitchen/batch-answer.ts", "tests/cli/kitchen/batch.test.ts"],
  ["src/cli/kitchen/batch-asked.ts", "tests/cli/kitchen/batch.test.ts, at-the-terminal.test.ts"],
  ["src/cli/kitchen/batch-of-number.ts", "tests/cli/kitchen/batch.test.ts"],
  ["src/input/water-test/test-options.ts", "tests/cli/kitchen/add.test.ts"],
  ["src/input/water-test/test-probes.ts", "tests/cli/kitchen/add.test.ts"],
  ["src/input/water-test/water-test-of.ts", "tests/cli/kitchen/add.test.ts"],
  ["src/cli/kitchen/stored-test-text.ts", "tests/cli/kitchen/add.test.ts"],
  ["src/input/water-test/judge-test.ts", "tests/input/water-test/store-test.test.ts"],
  ["src/input/water-test/read-source.ts", "tests/input/water-test/store-test.test.ts"],
  ["src/input/water-test/raw-copies.ts", "tests/input/water-test/store-test.test.ts"],
  ["src/input/kitchen/new-checks.ts", "tests/cli/kitchen/thermometer.test.ts"],
  ["src/input/kitchen/doubts.ts", "tests/cli/kitchen/thermometer.test.ts"],
  ["src/input/kitchen/thermometer-options.ts", "tests/cli/kitchen/thermometer.test.ts"],
  ["src/cli/kitchen/thermometer-findings.ts", "tests/cli/kitchen/thermometer.test.ts"],
  ["src/cli/kitchen/folder-store.ts", "tests/cli/kitchen/store-in-folder.test.ts"],
  ["src/report/wording/question-words.ts", "tests/cli/kitchen/thermometer.test.ts"],
  ["src/input/kitchen-shapes.ts", "tests/cli/kitchen/refusals.test.ts"],
  ["src/input/kitchen/container-options.ts", "tests/input/kitchen/container-edit.test.ts"],
  ["src/input/kitchen/culture-options.ts", "tests/input/kitchen/culture-edit.test.ts"],
  ["src/input/kitchen/section-edit.ts", "tests/input/kitchen/appliance-edit.test.ts, and others"],
  ["src/input/water-test/entered-options.ts", "tests/cli/enter/enter-shape.test.ts"],
  ["src/input/water-test/kitchen-store.ts", "tests/input/water-test/store-test.test.ts"],
  ["src/input/water-test/known-files.ts", "tests/input/water-test/store-test.test.ts"],
  ["src/input/water-test/work-watch.ts", "tests/input/water-test/store-test.test.ts"],
  ["src/input/water-test/said-of-test.ts", "tests/input/water-test/typed-tests.test.ts"],
  ["src/cli/enter/piped-log.ts", "tests/cli/enter/enter.test.ts"],
  ["src/cli/enter/kitchen-target.ts", "tests/cli/enter/take-readings.test.ts, enter.test.ts"],
  ["src/cli/enter/file-target.ts", "tests/cli/enter/take-readings.test.ts, enter.test.ts"],
  ["src/cli/enter/said-asked.ts", "tests/cli/enter/enter.test.ts, terminal.test.ts"],
  ["src/cli/command-run.ts", "tests/cli/kitchen/refusals.test.ts"],
  ["src/input/flag-name.ts", "tests/input/check-options.test.ts"],
]);

const hasReason = (file: string): boolean =>
  testedElsewhere.has(file) || testedElsewhere.has(`${dirname(file)}/`);

const hasCode = (file: string): boolean =>
  /^\s*(?:export\s+)?(?:const|let|function|async function|class)\s/m.test(codeOf(file));

describe("files", () => {
  it("have at most 200 lines", () => {
    const long = sources.filter((file) => (textOf.get(file) ?? "").split("\n").length > 201);
    expect(long.filter((file) => !longFiles.has(file))).toEqual([]);
  });

  it("have a test of the same name, or a reason", () => {
    const untested = sources
      .filter((file) => hasCode(file) && !shapes.has(file) && !hasReason(file))
      .filter((file) => !tests.has(file.replace(/^src/, "tests").replace(/\.tsx?$/, ".test.ts")));
    expect(untested).toEqual([]);
  });

  it("keep the lists of exceptions true", () => {
    const known = new Set(sources);
    for (const file of [...longFiles.keys(), ...testedElsewhere.keys(), ...shapes]) {
      const there = known.has(file) || sources.some((one) => `${dirname(one)}/` === file);
      expect(there, file).toBe(true);
    }
  });
});
