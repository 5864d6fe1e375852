import { autocorrelations } from "../../../src/stats/autocorrelation.ts";
import { mean, standardDeviation } from "../../../src/stats/summary.ts";
import * as nist from "../../stats/nist-data.ts";
import { value } from "../reference-values.ts";
import type { ReferenceGroup } from "../reference-values.ts";

const source = "NIST StRD, univariate summary statistics";

const certified: readonly (readonly [string, readonly number[], string, string, string])[] = [
  ["Lew", nist.lew, "-177.435000000000", "277.332168044316", "-0.307304800605679"],
  ["Lottery", nist.lottery, "518.958715596330", "291.699727470969", "-0.120948622967393"],
  ["Mavro", nist.mavro, "2.00185600000000", "0.000429123454003053", "0.937989183438248"],
  ["Michelso", nist.michelso, "299.852400000000", "0.0790105478190518", "0.535199668621283"],
  ["NumAcc1", nist.numAcc1, "10000002", "1", "-0.5"],
  ["NumAcc2", nist.numAcc2, "1.2", "0.1", "-0.999"],
  ["NumAcc3", nist.numAcc3, "1000000.2", "0.1", "-0.999"],
  ["NumAcc4", nist.numAcc4, "10000000.2", "0.1", "-0.999"],
];

/** 10000000.1 as a double is off by up to 9.3e-10. */
const askedOfDeviation = (name: string) => (name === "NumAcc4" ? { digits: 8 } : null);

/** Mean, standard deviation (n - 1) and lag-one autocorrelation. */
export const univariate: ReferenceGroup = {
  title: "Mean, standard deviation, autocorrelation",
  about: ["stats/summary", "stats/autocorrelation"],
  blocks: [
    {
      source,
      asked: { digits: 14 },
      because: "sums are compensated, so that only the last rounding is left",
      values: certified.map(([name, data, centre]) => value(`${name}, mean`, centre, mean(data))),
    },
    {
      source,
      asked: { digits: 9 },
      because:
        "the rule for certified univariate values; eight for NumAcc4, whose readings are off by 1e-8 of their deviation as soon as they are doubles, whatever the algorithm",
      values: certified.map(([name, data, , deviation]) =>
        value(
          `${name}, standard deviation`,
          deviation,
          standardDeviation(data),
          askedOfDeviation(name),
        ),
      ),
    },
    {
      source,
      asked: { digits: 9 },
      because: "the rule for certified univariate values",
      values: certified.map(([name, data, , , lagOne]) =>
        value(`${name}, autocorrelation at lag one`, lagOne, autocorrelations(data, 1)[1]!),
      ),
    },
  ],
};
