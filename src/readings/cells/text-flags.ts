/**
 * Words by which loggers say that there is no reading: common practice of
 * loggers and meters (an open or shorted probe, over range "OL"), no source.
 */
const words =
  /^(?:err(?:or)?[ #:-]?\d*|fault|fail(?:ed|ure)?|open(?: ?circuit)?|short(?:ed)?|(?:no|lost|bad|missing) ?(?:sensor|probe|data|signal|value|reading)|disconnected|unplugged|[-+]?ol|o\.l\.?|over(?: ?range|flow|load)?|under(?: ?range|flow)?|[-+]?inf(?:inity)?|n[./]?a\.?|#n\/a|#value!|#ref!|#div\/0!|nan|-nan|1\.#qnan|null|nil|none|void|invalid|missing|lost|bad|hi+|lo+|hhh|lll|fehler|offen|kurzschluss|defekt|erreur|ouvert|errore|aperto|fallo|abierto|virhe|fel|fejl|fout|blad)$/iu;
/** Dashes, stars, dots, question marks and the like instead of digits. */
const strokes = /^(?:-+(?:[.,]-+)?|x{2,}|[*?_~=.#\u2013\u2014]+)$/iu;

/** True when the cell is a word or sign for a failed sensor rather than a damaged number. */
export const isTextFlag = (cell: string): boolean => {
  const text = cell.trim();
  return text !== "" && (words.test(text) || strokes.test(text));
};
