/** A number as a source prints it. */
export interface PrintedNumber {
  readonly value: number;
  /** One unit of the last printed place; 0 for a fraction, which is exact. */
  readonly lastPlace: number;
  readonly significantDigits: number;
  readonly hasExponent: boolean;
}

const ofFraction = (over: readonly number[]): PrintedNumber => ({
  value: over[0]! / over[1]!,
  lastPlace: 0,
  significantDigits: 15,
  hasExponent: false,
});

/** Reads "0.0029", "5.4E-4" or "17/35". */
export const printedNumber = (text: string): PrintedNumber => {
  if (text.includes("/")) return ofFraction(text.split("/").map(Number));
  const [mantissa = "", exponent = "0"] = text.toLowerCase().split("e");
  const decimals = mantissa.split(".")[1]?.length ?? 0;
  return {
    value: Number(text),
    lastPlace: Number(`1e${Number(exponent) - decimals}`),
    significantDigits: Math.max(1, mantissa.replace(/[-+.]/g, "").replace(/^0+/, "").length),
    hasExponent: text.toLowerCase().includes("e"),
  };
};
