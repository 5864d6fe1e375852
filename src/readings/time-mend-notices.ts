import { notice, type Notice } from "../notice.ts";
import type { LineRecord } from "./time-column.ts";
import { mendClockJumps } from "./time-mend.ts";

/** Mends summer time's jumps in place and tells of each. */
export const mendedNotices = (seconds: Float64Array, lines: LineRecord): readonly Notice[] =>
  mendClockJumps(seconds).map((jump) =>
    notice("clock-jump-mended", { line: lines.lineOf(jump.row), jumpMinutes: jump.seconds / 60 }),
  );
