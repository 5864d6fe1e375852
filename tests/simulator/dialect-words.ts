/** Headings in seven languages, all of them within windows-1252. */
import type { Dialect, ExtraColumn, Language } from "./dialect-types.ts";

interface Words {
  readonly date: string;
  readonly time: string;
  readonly dateTime: string;
  readonly elapsed: string;
  readonly number: string;
  readonly food: string;
  readonly bath: string;
  readonly room: string;
  readonly channel: string;
  readonly extras: { readonly [Column in ExtraColumn]: string };
}

const words: { readonly [Name in Language]: Words } = {
  en: {
    date: "Date",
    time: "Time",
    dateTime: "Date/Time",
    elapsed: "Elapsed",
    number: "No.",
    food: "Temperature",
    bath: "Bath temperature",
    room: "Room temperature",
    channel: "Channel",
    extras: {
      humidity: "Humidity (%RH)",
      battery: "Battery (V)",
      light: "Light (lx)",
      status: "Status",
      "dew point": "Dew point",
    },
  },
  de: {
    date: "Datum",
    time: "Uhrzeit",
    dateTime: "Datum/Uhrzeit",
    elapsed: "Zeit",
    number: "Nr.",
    food: "Temperatur",
    bath: "Temperatur Bad",
    room: "Temperatur Raum",
    channel: "Kanal",
    extras: {
      humidity: "Feuchte (%rF)",
      battery: "Batterie (V)",
      light: "Licht (lx)",
      status: "Status",
      "dew point": "Taupunkt",
    },
  },
  fr: {
    date: "Date",
    time: "Heure",
    dateTime: "Date et heure",
    elapsed: "Temps",
    number: "N°",
    food: "Température",
    bath: "Température bain",
    room: "Température pièce",
    channel: "Voie",
    extras: {
      humidity: "Humidité (%HR)",
      battery: "Pile (V)",
      light: "Lumière (lx)",
      status: "État",
      "dew point": "Point de rosée",
    },
  },
  es: {
    date: "Fecha",
    time: "Hora",
    dateTime: "Fecha y hora",
    elapsed: "Tiempo",
    number: "N.º",
    food: "Temperatura",
    bath: "Temperatura baño",
    room: "Temperatura ambiente",
    channel: "Canal",
    extras: {
      humidity: "Humedad (%HR)",
      battery: "Batería (V)",
      light: "Luz (lx)",
      status: "Estado",
      "dew point": "Punto de rocío",
    },
  },
  it: {
    date: "Data",
    time: "Ora",
    dateTime: "Data e ora",
    elapsed: "Tempo",
    number: "N.",
    food: "Temperatura",
    bath: "Temperatura bagno",
    room: "Temperatura ambiente",
    channel: "Canale",
    extras: {
      humidity: "Umidità (%UR)",
      battery: "Batteria (V)",
      light: "Luce (lx)",
      status: "Stato",
      "dew point": "Punto di rugiada",
    },
  },
  nl: {
    date: "Datum",
    time: "Tijd",
    dateTime: "Datum en tijd",
    elapsed: "Tijd",
    number: "Nr.",
    food: "Temperatuur",
    bath: "Temperatuur bad",
    room: "Temperatuur kamer",
    channel: "Kanaal",
    extras: {
      humidity: "Vochtigheid (%RV)",
      battery: "Batterij (V)",
      light: "Licht (lx)",
      status: "Status",
      "dew point": "Dauwpunt",
    },
  },
  pt: {
    date: "Data",
    time: "Hora",
    dateTime: "Data e hora",
    elapsed: "Tempo",
    number: "N.º",
    food: "Temperatura",
    bath: "Temperatura banho",
    room: "Temperatura ambiente",
    channel: "Canal",
    extras: {
      humidity: "Umidade (%UR)",
      battery: "Bateria (V)",
      light: "Luz (lx)",
      status: "Estado",
      "dew point": "Ponto de orvalho",
    },
  },
};

export const wordsOf = (dialect: Dialect): Words => words[dialect.language];

const celsiusStyles = [" (°C)", " [°C]", " [C]", "/°C", " °C", " (C)", "_C", " (degC)"];
const fahrenheitStyles = [" (°F)", " [°F]", " [F]", "/°F", " °F", " (F)", "_F", " (degF)"];
export const unitStyles = celsiusStyles.length;

const unitSuffix = ({ unit, unitStyle }: Dialect): string =>
  (unit === "degC" ? celsiusStyles : fahrenheitStyles)[unitStyle % unitStyles]!;

/** Heading of a probe's column. */
export function probeHeading(
  dialect: Dialect,
  role: "food" | "bath" | "room",
  position: number,
): string {
  const own = wordsOf(dialect);
  const name = dialect.plainNames ? `${own.channel} ${position + 1}` : own[role];
  return dialect.unitPlace === "header" ? name + unitSuffix(dialect) : name;
}

/** Unit as it stands behind a number in a cell. */
export const cellUnit = ({ unit, unitStyle }: Dialect): string => {
  const letter = unit === "degC" ? "C" : "F";
  return [` °${letter}`, `°${letter}`, ` ${letter}`][unitStyle % 3]!;
};

export const extraHeading = (dialect: Dialect, column: ExtraColumn): string =>
  wordsOf(dialect).extras[column] + (column === "dew point" ? unitSuffix(dialect) : "");
