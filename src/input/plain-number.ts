/** A typed number as kitchen.yaml shows it best: without quotes where nothing is lost. */
export const plainNumber = (written: string): number | string =>
  String(Number(written)) === written ? Number(written) : written;
