/** One case from its seed to its score: simulated, written in a random dialect, analysed. */
import { createHash } from "node:crypto";
import { analyse, type Analysis } from "../../src/analysis.ts";
import type { Structure } from "./appliance-kinds.ts";
import type { Table } from "./dialect-types.ts";
import { programAnswer } from "./program-answer.ts";
import { readBack } from "./read-back.ts";
import { requestOf } from "./score-request.ts";
import type { Answer, CaseScore, ReadingFault } from "./score-types.ts";
import { writtenCase, type WrittenCase } from "./written-case.ts";

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
