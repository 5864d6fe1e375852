/** One case from its seed to its score: simulated, written in a random dialect, analysed. */
import { createHash } from "node:crypto";
import { execFile } from "node:child_process";
import { mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { analyse, type Analysis } from "../../src/analysis.ts";
import type { Structure } from "./appliance.ts";
import {
  dialectFits,
  dialectOptions,
  probeOptions,
  sampleDialect,
  writeDialect,
} from "./dialect.ts";
import type { Dialect, Table } from "./dialect-types.ts";
import { sampleCase, type SimulatedCase } from "./population.ts";
import { readBack } from "./read-back.ts";
import { requestOf } from "./score-request.ts";
import type { Answer, CaseScore, ReadingFault } from "./score-types.ts";

export interface WrittenCase {
  readonly simulated: SimulatedCase;
  readonly table: Table;
  readonly dialect: Dialect;
  readonly bytes: Uint8Array;
  readonly dialectOptions: readonly string[];
  /** Everything after `check FILE`. */
  readonly options: readonly string[];
}

/** The case in the first of its dialects that can hold it. */
export function writtenCase(seed: number, structure: Structure | undefined): WrittenCase {
  const simulated = sampleCase(seed, structure === undefined ? {} : { structure });
  const { log, startWallClock } = simulated;
  const food = { role: "food" as const, celsius: log.celsius };
  const table: Table = {
    seconds: log.seconds,
    startWallClock,
    resolution: log.resolution,
    columns: log.second === null ? [food] : [food, log.second],
  };
  let dialect = sampleDialect(seed * 1000);
  for (let next = 1; !dialectFits(table, dialect); next += 1)
    dialect = sampleDialect(seed * 1000 + next);
  const open = dialectOptions(table, dialect);
  const options = [...simulated.commandOptions, ...probeOptions(table, dialect), ...open];
  const bytes = writeDialect(table, dialect);
  return { simulated, table, dialect, bytes, dialectOptions: open, options };
}

export async function scoreCase(
  seed: number,
  structure: Structure | undefined,
  throughProgram: boolean,
): Promise<CaseScore> {
  const written = writtenCase(seed, structure);
  const { fault, answer } = await analysed(written);
  const score = { ...caseFacts(written), fault, answer };
  return throughProgram ? { ...score, program: await programAnswer(written) } : score;
}

function caseFacts({ simulated, dialect, dialectOptions: open }: WrittenCase) {
  const { truth } = simulated;
  return {
    seed: simulated.seed,
    dialectSeed: dialect.seed,
    dialect: `${dialect.time}, ${dialect.encoding}, "${dialect.delimiter}" and "${dialect.decimal}", ${dialect.language}, ${dialect.unit} ${dialect.unitPlace}`,
    dialectOptions: open,
    description: simulated.description,
    kind: simulated.kind,
    structure: simulated.structure,
    testHours: simulated.testHours,
    byHand: simulated.log.intervalSeconds === null,
    roomStated: simulated.roomStated,
    events: truth.phases.flatMap(
      ({ cause, kind, fromSeconds }) =>
        cause ?? (kind === "idle" && fromSeconds <= -300 ? kind : []),
    ),
    errorLeft: simulated.errorLeft,
    truth: {
      starts: {
        start: truth.startMinute,
        startFirstEntry: truth.startFirstEntryMinute,
        startWithinHalfDegree: truth.startWithinHalfDegreeMinute,
        startOwnRange: truth.startOwnRangeMinute,
      },
      endMinute: truth.endMinute,
      endLeftRangeMinute: truth.endLeftRangeMinute,
      band: truth.band,
      holds: truth.verdict.holds,
    },
  };
}

interface Analysed {
  readonly fault: ReadingFault | null;
  readonly answer: Answer | null;
}

async function analysed({ bytes, options, table }: WrittenCase): Promise<Analysed> {
  const sha256 = (): string => createHash("sha256").update(bytes).digest("hex");
  async function* chunks(): AsyncIterable<Uint8Array> {
    yield bytes;
  }
  try {
    const source = { name: "night.csv", chunks: chunks(), sha256 };
    const outcome = await analyse(requestOf(options), [source]);
    if (outcome.ok) return fromAnalysis(outcome.value, table);
    return { fault: { kind: "problem", code: outcome.problem.code }, answer: null };
  } catch (error) {
    return { fault: { kind: "crash", message: String(error) }, answer: null };
  }
}

function fromAnalysis(analysis: Analysis, table: Table): Analysed {
  const raw = analysis.files[0]!.readings.probes.find(({ role }) => role === "food");
  const probe = analysis.probes.find(({ series }) => series.role === "food");
  const verdict = probe?.verdicts[0];
  if (raw === undefined || probe === undefined || verdict === undefined)
    return { fault: { kind: "no food probe" }, answer: null };
  const holds = probe.phases.filter(({ kind }) => kind === "hold");
  const answer: Answer = {
    startMinute: holds[0]?.fromMinute ?? null,
    endMinute: holds.at(-1)?.toMinute ?? null,
    band: probe.night.hold?.band ?? null,
    verdict: verdict.verdict,
    probability: verdict.probability,
  };
  return { fault: readBack(table, raw), answer };
}

/** What `check --json` prints, as far as it is looked at here. */
interface Printed {
  readonly probes: readonly {
    readonly role: string;
    readonly phases: readonly {
      readonly kind: string;
      readonly fromMinute: number;
      readonly toMinute: number;
    }[];
    readonly hold: { readonly band: Answer["band"] } | null;
    readonly verdicts: readonly Pick<Answer, "verdict" | "probability">[];
  }[];
}

async function programAnswer({
  bytes,
  options,
}: WrittenCase): Promise<NonNullable<CaseScore["program"]>> {
  const folder = await mkdtemp(join(tmpdir(), "holdband-case-"));
  try {
    const file = join(folder, "night.csv");
    await writeFile(file, bytes);
    return await new Promise((resolve) => {
      const line = ["dist/holdband.js", "check", file, "--json", ...options];
      execFile(process.execPath, line, { maxBuffer: 1e9 }, (error, out, message) =>
        resolve(
          error === null
            ? { answer: fromPrinted(JSON.parse(out) as Printed), message: "" }
            : { answer: null, message: message || out.slice(0, 400) },
        ),
      );
    });
  } finally {
    await rm(folder, { recursive: true });
  }
}

function fromPrinted({ probes }: Printed): Answer | null {
  const probe = probes.find(({ role }) => role === "food");
  const verdict = probe?.verdicts[0];
  if (probe === undefined || verdict === undefined) return null;
  const holds = probe.phases.filter(({ kind }) => kind === "hold");
  return {
    startMinute: holds[0]?.fromMinute ?? null,
    endMinute: holds.at(-1)?.toMinute ?? null,
    band: probe.hold?.band ?? null,
    verdict: verdict.verdict,
    probability: verdict.probability,
  };
}
