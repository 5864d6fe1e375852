/**
 * `heating --json`, contract version 1 of kind "heating": temperatures in degC,
 * times in minutes from the first reading. Fields may be added, none renamed or
 * dropped.
 */
import type { HeatingAnalysis } from "../heating-analysis.ts";
import { contractVersion, fileEntry, noticeEntry, rounded, writing } from "./contract.ts";
import {
  coolDownText,
  coolingText,
  equivalentText,
  heatingCautions,
  heatingNext,
  heatingReasonText,
  spellText,
} from "./wording/heating.ts";

/** The analysis as plain data, ready for JSON.stringify. */
export const toHeatingContract = (analysis: HeatingAnalysis) => {
  const { step, coolDowns, file } = analysis;
  const words = {
    writing,
    startWallClock: file.readings.startWallClock,
    confidence: analysis.confidence,
  };
  return rounded({
    holdband: analysis.version,
    contract: contractVersion,
    kind: "heating" as const,
    file: fileEntry(file),
    probe: analysis.probe,
    heating: {
      ...step,
      reasons: step.reasons.map((reason) => heatingReasonText(reason, words)),
      reasonCodes: step.reasons.map(({ code }) => code),
      next: heatingNext(step, words),
      spellText: spellText(step, words),
      equivalentText: equivalentText(step, words),
    },
    culture: analysis.culture,
    coolDown: coolDowns.map((cool) => ({ ...cool, text: coolDownText(cool, words) })),
    cooling: coolingText(coolDowns, words),
    thermometer: { id: analysis.thermometerId, ...analysis.thermometer },
    surroundings: analysis.surroundings,
    confidence: analysis.confidence,
    notices: analysis.notices.map(noticeEntry),
    cautions: heatingCautions,
  });
};
