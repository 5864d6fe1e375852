/** A simulated case as a file and the options that go with it. */
import type { SimulatedCase } from "./case-types.ts";
import type { Structure } from "./appliance-kinds.ts";
import {
  dialectFits,
  dialectOptions,
  probeOptions,
  sampleDialect,
  writeDialect,
} from "./dialect.ts";
import type { Dialect, Table } from "./dialect-types.ts";
import { sampleCase } from "./population.ts";

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
