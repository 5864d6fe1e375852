/** An option's key as it is typed: thermometerAccuracy to --thermometer-accuracy. */
export const flagName = (key: string): string =>
  `--${key.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`)}`;
