/** Step response of two lags in series (0: only one), 0 to 1, for constructed courses. */
export const stepResponse = (since: number, slow: number, fast: number): number =>
  fast === 0
    ? 1 - Math.exp(-since / slow)
    : 1 - (slow * Math.exp(-since / slow) - fast * Math.exp(-since / fast)) / (slow - fast);
