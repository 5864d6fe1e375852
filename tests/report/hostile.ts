/**
 * Strings that try to become markup, script or style, at every place where a
 * person or a logger can write one: kitchen.yaml and readings as text, read and
 * decided by the program as any other.
 */
import { stringify } from "yaml";
import { analyse } from "../../src/analysis.ts";
import type { Analysis } from "../../src/analysis.ts";
import { analyseKitchen } from "../../src/kitchen-analysis.ts";
import type { KitchenAnalysis } from "../../src/kitchen-analysis-types.ts";
import { parseKitchen } from "../../src/kitchen/parse-kitchen.ts";
import { problemText } from "../../src/problem.ts";
import type { Outcome } from "../../src/problem.ts";
import { fraction } from "../../src/quantity.ts";
import { opener, options, sourceOf } from "../kitchen-analysis/small-kitchen.ts";
import { requirement } from "./sample-analysis.ts";

/** Short enough for a name of the kitchen, with its place behind it. */
export const attacks = {
  script: "<script>alert(1)</script>",
  style: "</style><script>alert(1)</script>",
  picture: "</title></svg><img src=x onerror=alert(1)>",
  attribute: `" onload="alert(1)' onclick='alert(1) \``,
  link: "javascript:alert(1)",
  template: "${alert(1)} {{7*7}} <%=7*7%> $& $1 $' $`",
  entity: "&lt;img src=x onerror=alert(1)&gt; &#60;b&#62;",
  comment: "--><!-- ]]><![CDATA[ <b>",
  otherWay: "\u05e9\u05dc\u05d5\u05dd \u0645\u0631\u062d\u0628\u0627 \u200f <i>",
  unbreakable: "W".repeat(42),
} as const;

/** More that a logger's file may hold, but no name of the kitchen. */
export const fileAttacks = {
  ...attacks,
  override: "\u202enekcihc\u202c \u2066<b>\u2069 \u001b[31m",
  nothing: "a\u0000<b>\u0000b",
  endless: "<b>".repeat(3400),
  lines: "one\n<script>alert(1)</script>\ntwo",
} as const;

export const harmless = "name";

export const valueOf = <Value>(outcome: Outcome<Value>): Value => {
  if (!outcome.ok) throw new Error(problemText(outcome.problem));
  return outcome.value;
};

const quoted = (cell: string): string => `"${cell.replaceAll('"', '""')}"`;
const clock = (minute: number): string =>
  new Date(Date.UTC(2026, 2, 2, 20) + minute * 60_000).toISOString().slice(0, 16).replace("T", " ");

/** Twelve hours every five minutes: warm-up, then a hold with a slow wobble, about a level. */
const readingAt = (level: number, minute: number): string =>
  (level - 18 * Math.exp(-minute / 40) + 0.2 * Math.sin(minute / 30)).toFixed(2);

/** Two probes under their headings, a column of remarks, and a cell that is no reading. */
export const hostileCsv = (name: string, headings: readonly [string, string]): string => {
  const head = ["Time", ...headings, `${name} remark`].map(quoted).join(",");
  const rows = Array.from({ length: 144 }, (_, at) => {
    const minute = at * 5;
    const jar = at === 70 ? name : readingAt(38.4, minute);
    return [clock(minute), jar, readingAt(39, minute), name].map(quoted).join(",");
  });
  return [head, ...rows].join("\r\n");
};

/** One night whose file, headings, cells and culture all bear the name. */
export const hostileNight = async (name: string): Promise<Analysis> => {
  const asked = requirement("own", 36.5, 39.5, 43, 36);
  const headings = [`${name} jar`, `${name} bath`] as const;
  const text = hostileCsv(name, headings);
  const request = {
    version: "0.1.0",
    requirements: [{ ...asked, culture: name, name }],
    thermometer: null,
    room: null,
    runToRun: null,
    share: fraction(0.95),
    confidence: fraction(0.95),
    shownUnit: "degC",
    // Headings are read with their line breaks as spaces.
    reading: { columns: headings.map((one) => one.replaceAll(/\s+/g, " ")) },
  } as const;
  return valueOf(await analyse(request, [sourceOf(`${name}.csv`, text)]));
};

/** What stands behind each name, so that it can be found again. */
export const places = {
  thermometer: "thermometer",
  appliance: "appliance",
  program: "program",
  mark: "mark",
  container: "container",
  culture: "culture",
  test: "test",
  fill: "fill",
  note: "note",
  probe: "probe",
  file: "file",
} as const;

type Called = (place: string) => string;

const testIn = (called: Called, appliance: string, setting: string, file: string) => ({
  appliance: called(appliance),
  setting: called(setting),
  container: called("container id"),
  fill: called(places.fill),
  notes: called(places.note),
  files: [
    {
      file: called(file),
      sha256: "0".repeat(64),
      columns: [called(places.probe), called("bath probe")],
      probes: {
        [called(places.probe)]: { place: "food", thermometer: called("pen id") },
        [called("bath probe")]: { place: "bath", thermometer: called("pen id") },
      },
    },
  ],
});

const batchIn = (called: Called, day: number) => ({
  date: `2026-04-0${day}`,
  culture: called("culture id"),
  appliance: called("cooker id"),
  setting: called(places.program),
  container: called("container id"),
  separated: "much",
  sourness: "sharp",
  hours: 40,
  trouble: day === 2 ? ["pink", "fuzzy"] : [],
  notes: called("batch note"),
});

/** kitchen.yaml with a name at every place that takes one. */
const kitchenText = (called: Called): string =>
  stringify({
    holdband: 1,
    room: "18..24",
    thermometers: {
      [called("pen id")]: {
        name: called(places.thermometer),
        resolution: 0.1,
        accuracy: 0.5,
        checks: [{ ice: [0.2, 0.2], date: "2026-02-14" }],
      },
    },
    appliances: {
      [called("cooker id")]: {
        name: called(places.appliance),
        kind: "cooker",
        programs: [called(places.program), called("program 2")],
      },
      [called("box id")]: {
        name: called("box"),
        kind: "warming box",
        marks: [called(places.mark), called("mark 2")],
      },
    },
    containers: {
      [called("container id")]: { name: called(places.container), stands: "jars in water" },
    },
    cultures: [
      {
        id: called("culture id"),
        name: called(places.culture),
        low: 36.5,
        high: 39.5,
        ceiling: 43,
        hours: 36,
      },
      "yoghurt",
    ],
    tests: {
      [called(places.test)]: testIn(called, "cooker id", places.program, places.file),
      [called("box test")]: testIn(called, "box id", places.mark, "box file"),
      [called("torn test")]: testIn(called, "box id", places.mark, "torn file"),
    },
    batches: [1, 2, 3].map((day) => batchIn(called, day)),
  });

export const hostileKitchen = async (name: string): Promise<KitchenAnalysis> => {
  const called: Called = (place) => `${name} ${place}`;
  const kitchen = valueOf(parseKitchen(kitchenText(called), "kitchen.yaml"));
  const csv = hostileCsv(name, [called(places.probe), called("bath probe")]);
  const texts = {
    [called(places.file)]: csv,
    [called("box file")]: csv
      .replaceAll("2026-03-02", "2026-03-09")
      .replaceAll("2026-03-03", "2026-03-10"),
    [called("torn file")]: `${name}\n${name}`,
  };
  return valueOf(await analyseKitchen(kitchen, options, opener(texts)));
};
