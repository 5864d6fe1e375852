import { studentTCdf, studentTQuantile } from "../../../src/stats/student-t.ts";
import { value } from "../reference-values.ts";
import type { ReferenceGroup } from "../reference-values.ts";

const degrees = [1, 2, 4, 5, 9, 10, 19, 20, 29, 30, 42, 49, 60, 99, 120];
// prettier-ignore
const table: readonly (readonly [number, string])[] = [
  [0.95, "6.313752 2.919986 2.131847 2.015048 1.833113 1.812461 1.729133 1.724718 1.699127 1.697261 1.681952 1.676551 1.670649 1.660391 1.657651"],
  [0.975, "12.706205 4.302653 2.776445 2.570582 2.262157 2.228139 2.093024 2.085963 2.045230 2.042272 2.018082 2.009575 2.000298 1.984217 1.979930"],
  [0.99, "31.820516 6.964557 3.746947 3.364930 2.821438 2.763769 2.539483 2.527977 2.462021 2.457262 2.418470 2.404892 2.390119 2.364606 2.357825"],
  [0.995, "63.656741 9.924843 4.604095 4.032143 3.249836 3.169273 2.860935 2.845340 2.756386 2.749996 2.698066 2.679952 2.660283 2.626405 2.617421"],
];
// prettier-ignore
const quantiles: readonly (readonly [number, number, string])[] = [
  [0.001, 0.5, "-102849.11563017555"], [1e-10, 1.5, "-2422663.101134394"],
  [0.4, 2.3, "-0.28396571289827327"], [0.025, 3.7, "-2.8675207071911895"],
  [0.49999, 10, "-2.5699780352442555e-5"], [1e-6, 25.5, "-6.112518136857524"],
  [0.005, 150, "-2.6090025658655382"],
];
// prettier-ignore
const probabilities: readonly (readonly [number, number, string])[] = [
  [-0.1, 0.5, "0.4731658105643032"], [-2, 1, "0.14758361765043326"], [-1e6, 1.5, "3.770852432013216e-10"],
  [-1, 3.7, "0.18907069988022623"], [-3, 7.25, "0.009567066496584542"], [-10, 12, "1.7906618438361874e-7"],
  [-1e-8, 5, "0.4999999962039331"], [-2, 34.5, "0.026711022478113702"], [-2.1, 1000, "0.01798943715539098"],
  [-4, 12345.6, "3.1855908492959775e-5"], [-1, 1e6, "0.15865537491678908"], [-5, 1e6, "2.866998935445371e-7"],
  [-2, 1e9, "0.022750132083156623"],
];

/** Student's t: quantiles and probabilities. */
export const studentT: ReferenceGroup = {
  title: "Student's t",
  about: ["stats/student-t", "stats/incomplete-beta"],
  blocks: [
    {
      source:
        "SciPy 1.17.1 and R 4.2.2 alike; rounded to three decimals NIST/SEMATECH e-Handbook 1.3.6.7.2",
      asked: { absolute: 5.1e-7 },
      because: "half the last decimal",
      values: table.flatMap(([p, row]) =>
        row
          .split(" ")
          .map((published, i) =>
            value(
              `quantile ${p}, ${degrees[i]} degrees of freedom`,
              published,
              studentTQuantile(p, degrees[i]!),
            ),
          ),
      ),
    },
    {
      source: "mpmath 1.3.0, root of the regularized incomplete beta function with 30 digits",
      asked: { digits: 11 },
      because: "near 1/2 the spacing of p itself, 5e-17 of 1e-5, leaves eleven",
      values: quantiles.map(([p, df, published]) =>
        value(`quantile ${p}, ${df} degrees of freedom`, published, studentTQuantile(p, df)),
      ),
    },
    {
      source:
        "mpmath 1.3.0 with 30 to 40 digits, from 1e4 degrees of freedom by quadrature of the density",
      asked: { digits: 12 },
      because: "as the incomplete beta function behind it",
      values: probabilities.map(([t, df, published]) =>
        value(`probability below ${t}, ${df} degrees of freedom`, published, studentTCdf(t, df)),
      ),
    },
  ],
};
