/** How far a share counted in few cases may lie from the one asked: the binomial distribution. */

/** In 99 of 100 studies a true rate stays within its limit. */
const sureness = 0.99;

/** Most events in n trials that a rate of p still gives in 99 of 100 such studies. */
export const mostAt = (p: number, n: number): number => {
  let term = (1 - p) ** n;
  let sum = term;
  let events = 0;
  while (sum < sureness && events < n) {
    term *= ((n - events) / (events + 1)) * (p / (1 - p));
    events += 1;
    sum += term;
  }
  return events;
};

/** Fewest, likewise. */
export const fewestAt = (p: number, n: number): number => n - mostAt(1 - p, n);
