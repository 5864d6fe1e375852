import {
  max as highestOf,
  mean as meanOf,
  sampleStandardDeviation,
  sum as compensatedSumOf,
} from "simple-statistics";

/** simple-statistics asks for arrays but only counts and indexes, which typed arrays do as well. */
const listed = (values: ArrayLike<number>): readonly number[] => values as readonly number[];

/** Sum by Neumaier's compensated summation, so that long series of nearly equal readings lose no digits. */
export const compensatedSum = (values: ArrayLike<number>): number =>
  compensatedSumOf(listed(values));

/** Arithmetic mean, in the unit of the values. NaN when there are none. */
export const mean = (values: ArrayLike<number>): number =>
  values.length === 0 ? NaN : meanOf(listed(values));

/**
 * Standard deviation with n - 1 (JCGM 100, 4.2.2), in the unit of the values,
 * in two passes. NaN under two values.
 */
export const standardDeviation = (values: ArrayLike<number>): number =>
  values.length < 2 ? NaN : sampleStandardDeviation(listed(values));

/** The highest value; -Infinity when there are none. */
export const highest = (values: ArrayLike<number>): number =>
  values.length === 0 ? -Infinity : highestOf(listed(values));
