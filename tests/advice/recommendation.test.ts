import { describe, expect, it } from "vitest";
import { studyCase } from "./study-case.ts";
import {
  answerShares,
  calibration,
  candidateChances,
  chosenChances,
  gapAllowed,
  gapOf,
  judgedAnswers,
} from "./study-judges.ts";
import { mostAt } from "./study-limits.ts";

/**
 * Advice on simulated appliances with known response against the best they
 * really offer, the whole way from logger texts. Asked: the true share inside
 * the window within 0.05 of the best in 90 % of the cultures of appliances with two
 * tests or more, and no more than 3 % wrong among `can`. Answers of one appliance go
 * together, so the binomial limits are those of as many trials as there are appliances.
 */
const appliances = 40;
const firstSeed = 53_001;

const records: Awaited<ReturnType<typeof studyCase>>[] = [];
for (let index = 0; index < appliances; index += 1) {
  // oxlint-disable-next-line no-await-in-loop -- one case at a time keeps memory small
  records.push(await studyCase(firstSeed + index));
}
const answers = judgedAnswers(records);

/** Highest share of events, judged in groups, that a rate still gives. */
const most = (rate: number, groups: number): number => mostAt(rate, groups) / groups;

describe("set-ups advised", () => {
  const tested = answers.filter(({ of }) => of.usedTests >= 2);
  const groups = new Set(tested.map(({ of }) => of.seed)).size;

  it("come within 0.05 of the best share in nine of ten", () => {
    expect(groups).toBeGreaterThan(appliances / 3);
    const lost = tested.filter((answer) => gapOf(answer) > gapAllowed);
    expect(lost.length / tested.length).toBeLessThanOrEqual(most(0.1, groups));
  });

  it("do so in nearly all that are recommended, and not only the nearest of what is unknown", () => {
    const recommended = tested.filter(({ answer }) => answer === "can" || answer === "may");
    expect(recommended.length).toBeGreaterThan(tested.length / 2);
    const lost = recommended.filter((answer) => gapOf(answer) > gapAllowed);
    expect(lost.length / recommended.length).toBeLessThanOrEqual(most(0.05, groups));
  });
});

describe("answers", () => {
  it("say `can` wrongly no more often than 3 % allow", () => {
    const { can, wrongCan } = answerShares(answers);
    expect(can).toBeGreaterThan(answers.length / 10);
    expect(wrongCan.met).toBeLessThanOrEqual(mostAt(0.03, can));
  });

  it("say `cannot` of what truly can no more often than 3 % allow", () => {
    const { wrongCannot } = answerShares(answers);
    expect(wrongCannot.of).toBeGreaterThan(5);
    expect(wrongCannot.met).toBeLessThanOrEqual(mostAt(0.03, wrongCannot.of));
  });

  it("say high chances of what mostly holds, and low ones of what does not", () => {
    for (const chances of [chosenChances(answers), candidateChances(answers)]) {
      const deciles = calibration(chances);
      expect(deciles[9]!.true).toBeGreaterThan(0.8);
      expect(deciles[0]!.true).toBeLessThan(0.2);
    }
  });
});
