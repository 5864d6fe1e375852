/** The answer of the built program, dist/holdband.js, to one case. */
import { execFile } from "node:child_process";
import { mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Answer, CaseScore } from "./score-types.ts";
import type { WrittenCase } from "./written-case.ts";

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

export async function programAnswer({
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
