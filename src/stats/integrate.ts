/** Where to evaluate a function and how much each value counts. */
export interface Quadrature {
  readonly nodes: Float64Array;
  readonly weights: Float64Array;
}

type Recurrence = (k: number) => number;

/** b_k in b_{k+1} p_{k+1} = x p_k - b_k p_{k-1}, the recurrence of a symmetric weight. */
const hermiteRecurrence: Recurrence = (k) => Math.sqrt(k / 2);
const legendreRecurrence: Recurrence = (k) => k / Math.sqrt(Math.max(1, 4 * k * k - 1));

/** Number of eigenvalues of the recurrence's matrix below x (Sturm sequence). */
const rootsBelow = (n: number, x: number, b: Recurrence): number => {
  let count = 0;
  let pivot = 1;
  for (let k = 0; k < n; k++) {
    pivot = -x - (k === 0 ? 0 : b(k) ** 2 / pivot);
    if (pivot === 0) pivot = -1e-300;
    if (pivot < 0) count++;
  }
  return count;
};

/** The `index`-th root by bisection on the Sturm count: sure, and exact to rounding. */
const root = (n: number, index: number, b: Recurrence): number => {
  let low = -2 * b(n) - 1;
  let high = -low;
  for (let step = 0; step < 80 && high - low > 1e-17 * Math.abs(low); step++) {
    const middle = (low + high) / 2;
    if (rootsBelow(n, middle, b) > index) high = middle;
    else low = middle;
  }
  return (low + high) / 2;
};

/** Sum of p_k(x)^2, k < n, over the orthonormal polynomials: the reciprocal of the weight. */
const christoffel = (n: number, x: number, b: Recurrence, first: number): number => {
  let previous = 0;
  let value = first;
  let sum = 0;
  for (let k = 0; k < n; k++) {
    sum += value * value;
    const next = (x * value - b(k) * previous) / b(k + 1);
    previous = value;
    value = next;
  }
  return sum;
};

const build = (n: number, b: Recurrence, total: number): Quadrature => {
  const nodes = new Float64Array(n);
  const weights = new Float64Array(n);
  const first = 1 / Math.sqrt(total);
  for (let i = 0; i < Math.ceil(n / 2); i++) {
    const x = 2 * i + 1 === n ? 0 : root(n, i, b);
    const weight = 1 / christoffel(n, x, b, first);
    nodes[i] = x;
    nodes[n - 1 - i] = -x;
    weights[i] = weight;
    weights[n - 1 - i] = weight;
  }
  return { nodes, weights };
};

const cached = (b: Recurrence, total: number): ((n: number) => Quadrature) => {
  const known = new Map<number, Quadrature>();
  return (n) => {
    const found = known.get(n) ?? build(n, b, total);
    known.set(n, found);
    return found;
  };
};

/**
 * Gauss-Hermite rule: the integral of exp(-x^2) f(x) over the real line is
 * about the sum of weights times f(nodes), exact for polynomials to degree
 * 2n - 1. For the mean of f over a normal distribution (m, s) take
 * f(m + s sqrt(2) node) and divide by sqrt(pi). n from 1 to about 150.
 */
export const gaussHermite = cached(hermiteRecurrence, Math.sqrt(Math.PI));

/**
 * Gauss-Legendre rule on -1..1, exact for polynomials to degree 2n - 1.
 * Nodes by bisection on the Sturm count of the Jacobi matrix, weights by the
 * Christoffel numbers (Golub & Welsch 1969), n from 1 to a few hundred.
 */
export const gaussLegendre = cached(legendreRecurrence, 2);
