/** What counts say of a rate. */
export interface Share {
  readonly met: number;
  readonly of: number;
}

export const shareOf = <Item>(items: readonly Item[], met: (item: Item) => boolean): Share => ({
  met: items.filter(met).length,
  of: items.length,
});

/** Score interval of a binomial rate (Wilson 1927), 95 %; 0 to 1 where nothing was counted. */
export function rateInterval({ met, of }: Share): { readonly low: number; readonly high: number } {
  if (of === 0) return { low: 0, high: 1 };
  const z = 1.959963984540054;
  const rate = met / of;
  const centre = rate + (z * z) / (2 * of);
  const reach = z * Math.sqrt((rate * (1 - rate)) / of + (z * z) / (4 * of * of));
  const whole = 1 + (z * z) / of;
  return {
    low: Math.max(0, (centre - reach) / whole),
    high: Math.min(1, (centre + reach) / whole),
  };
}
