import { describe, expect, it } from "vitest";
import { headingKind, headingWords } from "../../../src/readings/columns/headings.ts";

describe("headingWords", () => {
  it("parts words and drops accents", () => {
    expect(headingWords("relHumidity_%")).toBe("rel humidity %");
    expect(headingWords("Lämpötila (°C)")).toBe("lampotila °c");
  });
});

describe("headingKind", () => {
  it.each([
    [
      "time",
      "Time Timestamp Uhrzeit Zeit Heure Hora Aika Temps Date/Time Elapsed(min) Zeitstempel t(s) Datum/Zeit epoch",
    ],
    ["date", "Date Datum Fecha Data Päivä Dato"],
    [
      "temperature",
      "Temp Temperature Temperatur Température Temperatura Lämpötila T1 temp_c T2[°C] Innentemperatur Teplota Temperatuur °C",
    ],
    ["place", "Jar Bath CH1 Probe_2 Sensor Wasserbad Room Fühler"],
    [
      "other",
      "Humidity Luftfeuchtigkeit RH(%) Battery(V) Akku Druck Pressure CO2 Index No. Reading# mote_id label Event status Dew_Point(°C) Taupunkt Setpoint Sollwert(°C) Alarm_high_(°C) Min_Temp CH3(V) Light(lx) Orvalho",
    ],
    ["unit", "Unit Einheit units"],
    ["unknown", "Foo"],
  ])("%s", (kind, headings) => {
    const found = headings
      .split(" ")
      .map((heading) => [heading, headingKind(heading.replaceAll("_", " "))]);
    expect(found).toEqual(headings.split(" ").map((heading) => [heading, kind]));
  });
});
