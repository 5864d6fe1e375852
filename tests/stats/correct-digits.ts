/**
 * Number of correct significant digits, -log10 of the relative error
 * (McCullough 1998, Assessing the reliability of statistical software: part I,
 * The American Statistician 52:358); 16 where equal.
 */
export const correctDigits = (found: number, certified: number): number => {
  if (found === certified) return 16;
  const error = certified === 0 ? Math.abs(found) : Math.abs((found - certified) / certified);
  return Number.isNaN(error) ? 0 : -Math.log10(error);
};
