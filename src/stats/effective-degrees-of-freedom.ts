/** A standard uncertainty and the degrees of freedom behind it (Infinity: taken as exactly known). */
export interface UncertaintyShare {
  readonly standardUncertainty: number;
  readonly degreesOfFreedom: number;
}

/**
 * Effective degrees of freedom of independent uncertainties added in
 * quadrature: u^4 / sum(u_i^4 / v_i), by Welch and Satterthwaite.
 *
 * Source: JCGM 100:2008, G.4.1. The shares are in one unit, with their
 * sensitivities already applied. Infinity where no share that counts has
 * finite degrees of freedom, also without shares.
 */
export const effectiveDegreesOfFreedom = (shares: readonly UncertaintyShare[]): number => {
  const largest = shares.reduce((most, one) => Math.max(most, one.standardUncertainty), 0);
  if (largest === 0) return Infinity;
  let squares = 0;
  let fourths = 0;
  for (const { standardUncertainty, degreesOfFreedom } of shares) {
    // Relative to the largest, so that no fourth power underflows.
    const square = (standardUncertainty / largest) ** 2;
    squares += square;
    fourths += (square * square) / degreesOfFreedom;
  }
  return fourths === 0 ? Infinity : (squares * squares) / fourths;
};
