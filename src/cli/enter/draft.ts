/** Readings that are not finished yet, as text in a file: what a power cut must not take. */
import * as z from "zod";
import type { TypedLog } from "../../readings/typed/typed-types.ts";
import { probeRoles } from "../../readings/series.ts";
import type { SaidOfTest } from "../../input/water-test/entered-test.ts";

const digits = z.string().regex(/^-?\d+(?:\.\d+)?$/u);
const unit = z.enum(["degC", "degF"]);
const text = z.string().nullable();

const draftShape = z
  .object({
    holdband: z.literal(1),
    test: z.object({
      name: text,
      appliance: z.string(),
      setting: text,
      container: z.string(),
      fill: text,
      room: z.object({ low: z.number(), high: z.number() }).nullable(),
      notes: text,
      probes: z.array(z.object({ name: z.string(), place: z.enum(probeRoles), thermometer: text })),
    }),
    log: z.object({
      unit,
      unitAssumed: z.boolean(),
      probes: z.array(z.string()).min(1),
      firstDay: z.number().int().nullable(),
      dayAssumed: z.boolean(),
      readings: z.array(
        z.object({ seconds: z.number().int(), values: z.array(digits.nullable()), comment: text }),
      ),
    }),
  })
  .refine(({ log }) => log.readings.every(({ values }) => values.length === log.probes.length))
  .refine(
    ({ log, test }) => log.probes.join("\n") === test.probes.map(({ name }) => name).join("\n"),
  );

/** A test whose readings are still being typed. */
export interface Draft {
  readonly test: SaidOfTest;
  readonly log: TypedLog;
}

export const draftText = ({ test, log }: Draft): string =>
  `${JSON.stringify({ holdband: 1, test, log }, null, 2)}\n`;

/** null where the text is no draft of ours, or was damaged. */
export const readDraft = (written: string): Draft | null => {
  try {
    const parsed = draftShape.safeParse(JSON.parse(written));
    return parsed.success ? { test: parsed.data.test, log: parsed.data.log } : null;
  } catch {
    return null;
  }
};
