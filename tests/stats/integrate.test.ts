import { describe, expect, it } from "vitest";
import { gaussHermite, gaussLegendre, type Quadrature } from "../../src/stats/integrate.ts";
import { normalCdf } from "../../src/stats/normal.ts";

const integral = ({ nodes, weights }: Quadrature, f: (x: number) => number): number =>
  nodes.reduce((sum, x, i) => sum + weights[i]! * f(x), 0);

describe("gaussHermite", () => {
  // Abramowitz & Stegun table 25.10, here with the digits of numpy.polynomial.hermite.hermgauss.
  it("has the tabulated five points", () => {
    const { nodes, weights } = gaussHermite(5);
    const expected = [-2.0201828704560856, -0.9585724646138185, 0, 0.9585724646138185];
    expected.forEach((value, i) => expect(nodes[i]).toBeCloseTo(value, 14));
    expect(weights[0]).toBeCloseTo(0.019953242059045917, 14);
    expect(weights[2]).toBeCloseTo(0.9453087204829418, 14);
  });

  // numpy.polynomial.hermite.hermgauss(20), NumPy 2.4.6.
  it("keeps the smallest weights exact", () => {
    const { nodes, weights } = gaussHermite(20);
    expect(nodes[19]).toBeCloseTo(5.387480890011233, 13);
    expect(weights[19]! / 2.2293936455341447e-13).toBeCloseTo(1, 11);
  });

  // Mean of Phi(a + b z) over the standard normal z is Phi(a/sqrt(1 + b^2)).
  it("averages over a normal distribution", () => {
    const mean = integral(gaussHermite(40), (x) => normalCdf(0.7 + 0.8 * Math.SQRT2 * x));
    expect(mean / Math.sqrt(Math.PI)).toBeCloseTo(normalCdf(0.7 / Math.sqrt(1.64)), 10);
  });

  it("sums to the whole for every size", () => {
    for (const n of [1, 2, 3, 8, 33, 100, 150]) {
      expect(integral(gaussHermite(n), () => 1)).toBeCloseTo(Math.sqrt(Math.PI), 12);
    }
  });
});

describe("gaussLegendre", () => {
  // Abramowitz & Stegun table 25.4, here with the digits of numpy.polynomial.legendre.leggauss.
  it("has the tabulated five points, and the ends of 64", () => {
    const five = gaussLegendre(5);
    expect(five.nodes[0]).toBeCloseTo(-0.906179845938664, 14);
    expect(five.weights[2]).toBeCloseTo(0.5688888888888888, 14);
    const many = gaussLegendre(64);
    expect(many.nodes[63]).toBeCloseTo(0.9993050417357722, 14);
    expect(many.weights[63]).toBeCloseTo(0.00178328072169414, 14);
    expect(many.weights[32]).toBeCloseTo(0.048690957009139814, 14);
  });

  // Integral of x^k over -1..1 is 2/(k + 1) for even k: exact to degree 2n - 1, not beyond.
  it("is exact to degree 2n - 1", () => {
    for (let k = 0; k <= 15; k++) {
      const exact = k % 2 === 0 ? 2 / (k + 1) : 0;
      expect(integral(gaussLegendre(8), (x) => x ** k)).toBeCloseTo(exact, 14);
    }
    expect(Math.abs(integral(gaussLegendre(8), (x) => x ** 16) - 2 / 17)).toBeGreaterThan(1e-6);
  });

  it("is made once for each size", () => expect(gaussLegendre(12)).toBe(gaussLegendre(12)));
});
