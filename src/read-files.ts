import type { AnalysedFile, AnalysisRequest, FileRequest, HashedSource } from "./analysis-types.ts";
import { warmestWindow } from "./culture/culture.ts";
import type { Requirement } from "./culture/verdict-types.ts";
import { done, failed, type Outcome, type Problem } from "./problem.ts";
import { alignFiles } from "./readings/align-files.ts";
import { meansProbe } from "./readings/columns/probe-names.ts";
import { readReadings } from "./readings/read-readings.ts";
import type { ReadingsFile } from "./readings/readings-file.ts";
import { highest } from "./stats/summary.ts";

/** Reads every file of a request, one after the other, and puts loggers that ran together on one clock. */
export const readFiles = async (
  request: AnalysisRequest,
  sources: readonly HashedSource[],
): Promise<Outcome<readonly AnalysedFile[]>> => {
  const files: AnalysedFile[] = [];
  for (const [index, source] of sources.entries()) {
    const said = request.files?.[index] ?? null;
    // One file after the other: two at once would only double the memory.
    // oxlint-disable-next-line no-await-in-loop
    const read = await readReadings(source, said?.reading ?? request.reading);
    if (!read.ok) return read;
    const problem = wrongUnit(request.requirements, read.value) ?? missingProbe(said, read.value);
    if (problem !== null) return { ok: false, problem };
    files.push({ readings: read.value, sha256: source.sha256() });
  }
  const stray = request.files === undefined ? strayRole(request, files) : null;
  return stray === null ? onOneClock(request, files) : { ok: false, problem: stray };
};

const wrongUnit = (requirements: readonly Requirement[], file: ReadingsFile): Problem | null => {
  const warmest = highest(file.probes.map((probe) => highest(probe.celsius)));
  const wrong = requirements.find(({ low }) => low >= warmestWindow && warmest < low);
  if (wrong === undefined) return null;
  const readings = `in degC, highest ${warmest.toFixed(1)}`;
  return failed("window-wrong-unit", { low: wrong.low, high: wrong.high, readings }).problem;
};

/** A role said for a probe that no file has: a mistyped name must not pass for a role that was heeded. */
const strayRole = (
  { reading }: AnalysisRequest,
  files: readonly AnalysedFile[],
): Problem | null => {
  const probes = files.flatMap((file) => file.readings.probes);
  for (const said of reading.roles?.keys() ?? []) {
    if (probes.some((probe) => meansProbe(said, probe))) continue;
    return failed("probe-unknown", { option: "--probe", probe: said, probes: quoted(probes) })
      .problem;
  }
  return null;
};

/** The same for a file whose probes are listed one by one. */
const missingProbe = (said: FileRequest | null, { name, probes }: ReadingsFile): Problem | null => {
  const listed = [...(said?.reading.roles?.keys() ?? []), ...(said?.thermometers.keys() ?? [])];
  const stray = listed.find((one) => !probes.some((probe) => meansProbe(one, probe)));
  if (stray === undefined) return null;
  return failed("listed-probe-missing", { file: name, probe: stray, probes: quoted(probes) })
    .problem;
};

const quoted = (probes: readonly { readonly name: string }[]): string =>
  probes.map(({ name }) => `"${name}"`).join(", ");

const onOneClock = (
  request: AnalysisRequest,
  files: readonly AnalysedFile[],
): Outcome<readonly AnalysedFile[]> => {
  const startsAt = files.map((_, index) => request.files?.[index]?.startsAt ?? null);
  if (request.together !== true || files.length < 2) {
    return done(files.map((file, index) => startedAt(file, startsAt[index]!)));
  }
  const aligned = alignFiles(
    files.map(({ readings }) => readings),
    startsAt,
  );
  if (!aligned.ok) return aligned;
  return done(files.map((file, index) => ({ ...file, readings: aligned.value[index]! })));
};

const startedAt = (file: AnalysedFile, said: number | null): AnalysedFile =>
  said === null ? file : { ...file, readings: { ...file.readings, startWallClock: said } };
