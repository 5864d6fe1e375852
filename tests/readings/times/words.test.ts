import { describe, expect, it } from "vitest";
import { wordOf } from "../../../src/readings/times/words.ts";
import { foundTimes } from "./time-rows.ts";

/** Names by the Unicode locale data that the language carries: the outside reference. */
const locales = [
  "en-GB",
  "en-US",
  "de-DE",
  "de-AT",
  "fr-FR",
  "es-ES",
  "it-IT",
  "pt-PT",
  "nl-NL",
  "sv-SE",
  "da-DK",
  "nb-NO",
  "pl-PL",
];

const nameIn = (locale: string, month: number, width: "short" | "long", day?: "numeric"): string =>
  new Intl.DateTimeFormat(locale, { month: width, timeZone: "UTC", ...(day ? { day } : {}) })
    .formatToParts(Date.UTC(2026, month, 15))
    .find(({ type }) => type === "month")!.value;

describe("wordOf", () => {
  it.each(locales)("knows the months of %s", (locale) => {
    for (let month = 0; month < 12; month++)
      for (const width of ["short", "long"] as const)
        for (const day of [undefined, "numeric"] as const) {
          const name = nameIn(locale, month, width, day);
          // Some locales write short months as numbers.
          if (/\d/.test(name)) continue;
          expect([name, wordOf(name)?.value]).toEqual([name, month + 1]);
        }
  });

  it.each(locales)("passes over the weekdays of %s in front of a date", (locale) => {
    for (const weekday of ["short", "long"] as const)
      for (let day = 1; day <= 7; day++) {
        const at = Date.UTC(2026, 10, day);
        const name = new Intl.DateTimeFormat(locale, { weekday, timeZone: "UTC" }).format(at);
        const found = foundTimes([`${name} ${day} Nov 2026 22:30`]);
        expect([name, found.startWallClock]).toEqual([name, at + 81_000_000]);
      }
  });

  it("takes capitals it does not know for a zone, and other words for nothing", () => {
    expect(wordOf("CEST")?.kind).toBe("z");
    expect(wordOf("Jar")).toBeNull();
  });
});
