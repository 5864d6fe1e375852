/** What the heading of a time column says. */
export interface TimeHeading {
  readonly unit: "milliseconds" | "seconds" | "minutes" | "hours" | null;
  /** Elapsed, duration, run time. */
  readonly elapsed: boolean;
  /** Names a time or a date. */
  readonly time: boolean;
  /** Parts of a clock as the heading shows them. */
  readonly parts: "hours-minutes" | "minutes-seconds" | null;
  /** Names something else: a row's number, or what is measured. */
  readonly other: boolean;
}

const list = (words: string): ReadonlySet<string> => new Set(words.split(" "));

const units = [
  ["milliseconds", list("ms msec millis millisecond milliseconds millisekunden")],
  [
    "seconds",
    list(
      "s sec secs second seconds sek sekunde sekunden seconde secondes segundo segundos secondi",
    ),
  ],
  ["minutes", list("min mins minute minutes minuten minuto minutos minuti")],
  ["hours", list("h hr hrs hour hours std stunde stunden heures horas")],
] as const;
const elapsedWords = list(
  "elapsed duration runtime uptime since laufzeit dauer verstrichen ecoule ecoulee duree transcurrido duracion trascorso durata",
);
const timeWords = list(
  "time t zeit uhrzeit zeitpunkt zeitstempel temps heure hora tempo ora tid tijd aika czas godzina " +
    "timestamp stamp datetime clock date datum fecha data dato paivays when epoch unix unixtime",
);
const otherWords = list(
  "index idx no nr num number record rec row sample count counter id zeile lfd " +
    "temp temperature temperatur temperatura celsius fahrenheit degc degf humidity rh ch channel probe sensor",
);

/** Lower-case words, accents and camel case undone: "tElapsed [min]" gives t, elapsed, min. */
const wordsOf = (heading: string): string[] =>
  heading
    .replace(/([a-z])([A-Z])/g, "$1 $2")
    .normalize("NFD")
    .replace(/[\u0300-\u036f]/g, "")
    .toLowerCase()
    .split(/[^a-z]+/)
    .filter((word) => word !== "");

const partsOf = (heading: string): TimeHeading["parts"] => {
  const plain = heading.toLowerCase();
  if (/\bh{1,3}:m{1,2}|hours?:min/.test(plain)) return "hours-minutes";
  return /\bm+:s+|min:sec/.test(plain) ? "minutes-seconds" : null;
};

/**
 * Reads the heading(s) of a candidate time column. Of several units the last
 * stands ("Time since start, h [min]"); "min" and "h" alone are units, so the
 * values must show that they are times.
 */
export const readTimeHeading = (headings: readonly string[]): TimeHeading => {
  const words = headings.flatMap(wordsOf);
  const has = (known: ReadonlySet<string>): boolean => words.some((word) => known.has(word));
  const last = words.findLast((word) => units.some(([, known]) => known.has(word)));
  const unit = units.find(([, known]) => last !== undefined && known.has(last))?.[0] ?? null;
  return {
    unit,
    elapsed: has(elapsedWords),
    time: has(timeWords),
    parts: partsOf(headings.join(" ")),
    other: headings.includes("#") || has(otherWords),
  };
};
