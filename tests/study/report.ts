import type { StudyRecord } from "./record.ts";
export const studyReport = (records: readonly StudyRecord[], seed: number): string =>
  `${records.length} ${seed}`;
