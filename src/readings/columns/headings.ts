import { headingUnit } from "./heading-unit.ts";

/** What a heading's words say about its column. */
export type HeadingKind =
  | "time"
  | "date"
  /** a temperature: the word, or a unit of temperature */
  | "temperature"
  /** a place or a channel ("jar 2", "CH1"): a temperature where the values agree */
  | "place"
  /** the unit of the temperature beside it, one per row */
  | "unit"
  /** something else, such as humidity, battery, set-point, limit, index or remark */
  | "other"
  | "unknown";

/** Small letters, no accents, words apart: "relHumidity_%" becomes "rel humidity %". */
export const headingWords = (heading: string): string =>
  heading
    .replaceAll(/(\p{Ll})(\p{Lu})/gu, "$1 $2")
    .normalize("NFD")
    .replaceAll(/\p{M}/gu, "")
    .toLowerCase()
    .replaceAll(/[_.:;,/\\|()[\]{}<>"'*!=-]+/gu, " ")
    .replaceAll(/(?<=[a-z]{3})(?=\d)/gu, " ")
    .replaceAll(/\s+/gu, " ")
    .trim();

/** One alternation of whole words; a "~" at the end stands for any ending, at the beginning for any beginning. */
const wordPattern = (words: string): RegExp => {
  const parts = words
    .trim()
    .split(/\s+/u)
    .map((word) => word.replaceAll("+", " ").replace(/^~/u, "[a-z]*").replace(/~$/u, "[a-z]*"));
  return new RegExp(`(?:^|[^a-z])(?:${parts.join("|")})(?=$|[^a-z])`, "u");
};

/** Not a reading even where the word temperature stands beside it. */
const derived = wordPattern(`
  set+?point setpt setp set+temp~ set+value soll~ sollwert target ziel~ zielwert consigne consigna setpunkt
  asetus~ tavoite~ borvarde instelling gewenst~ desired wanted preset sp set
  alarm~ alert~ limit~ threshold grenz~ schwell~ limite umbral soglia halytys raja
  min minimum max maximum mini maxi tmin tmax minim~ maxim~ low high hi lo
  delta diff~ stdev std sd deviation variance rate slope
  dew~ taupunkt tau rosee rocio rugiada orvalho dauwpunt~ kastepiste dagg~ duggpunkt~ doggpunkt~ wet+bulb heat+index feels+like humidex
  humid~ rh hum feucht~ luftfeucht~ ~feuchte ~feuchtigkeit humidite humedad umidita umidade kosteus vochtigheid
  fukt~ luftfukt~ wilgotnosc vlhkost
  cpu mcu chip board soc die raw adc correction korrektur offset calibration
`);
const other = wordPattern(`
  batt~ bat akku~ batterie bateria batteria vbat accu volt~ voltage spannung tension voltaje mv vcc vdd supply
  current amp~ strom power watt~ leistung puissance energy energie kwh
  press~ druck~ luftdruck pression presion pressione paine baro~ hpa mbar kpa psi
  co voc tvoc ppm ppb lux light licht~ lumiere luz pm uv noise
  rssi snr lqi signal~ link quality
  index idx indice no nr num number numero nummer n record~ rec row line zeile ligne linea fila seq sequence sample~
  count~ counter zahler lfd pos position item packet
  id ids mote~ serial sn device gerat appareil dispositivo node unit+id mac address firmware version model name
  status state zustand etat estado stato tila flag~ label~ event~ ereignis evenement evento tapahtuma marker mark
  note~ comment~ remark~ bemerkung~ kommentar~ remarque~ nota notas observ~ annotation~ huomautus tag+name text message
  error~ fehler~ erreur~ fault~ code type typ mode modus mod action
  relay relais heater heizung heating duty output ausgang pwm valve fan pump door tur porte
  wind~ speed rain ph conductivity weight gewicht mass level fullstand lat latitude lon lng longitude gps altitude
  resistance widerstand ohm~ ec tds flow durchfluss memory uptime timezone zone tz gmt dst
`);
const time = wordPattern(`
  time times timestamp datetime date+time localtime zeit ~zeit zeitstempel zeitpunkt heure heures horodat~ temps hora horas
  ora orario ore tempo tid tidspunkt klokkeslett klockslag aika kello~ klo aikaleima tijd tijdstip czas godzina cas hodina
  ido idopont orae utc epoch unix clock elapsed since duration dauer duree
  s sec secs second seconds sekunde~ secondes segundos secondi sekunnit min mins minute minutes minuten minuti minutos
  minuutit h hr hrs hour hours stunde~ tunnit ms millis milliseconds ts hh hh+mm hh+mm+ss when
`);
const date = wordPattern(`
  date datum fecha data dato paiva~ paivays pvm day jour tag giorno dia dagen datestamp
  yyyy~ dd mm+dd~ dd+mm~
`);
const temperature = wordPattern(`
  temp temp~ temperatur~ ~temperatur ~temperatura ~temp temperature lampotila lamp+tila lampo~ teplota homerseklet
  hitastig thermo~ termo~ pt ntc tc rtd celsius fahrenheit degc degf deg+c deg+f grad+c readout
`);
const place = wordPattern(`
  probe~ sensor~ fuhler ~fuhler messfuhler sonde~ sonda~ anturi~ giver voeler channel~ chan ch kanal~ kanaal~ voie~ canal~ canale kanava input eingang
  food jar~ glas glass bath ~bad bad water wasser ~wasser eau agua acqua vesi vatten vann milk milch lait leche latte maito melk
  yogurt yoghurt curd room raum zimmer ambient ambiente ambiance air luft outside inside indoor outdoor aussen innen kitchen kuche
  oven ofen pot topf vessel basin tank core kern center centre top bottom box chamber lid wall reading value wert messwert
  valeur valor valore mesure measurement medida misura arvo mittaus mesures a b c d
`);

const isNumberedT = (words: string): boolean => /^(?:t|tc|temp) ?\d*(?: [cf])?$/u.test(words);
const isIndexMark = (heading: string): boolean => /^#|#$/u.test(heading.trim());
const unitWord = wordPattern("unit units einheit unite unidad unita yksikko enhet eenheid");
/** A unit in brackets that is not one of temperature: "CH3 (V)". */
const otherUnit =
  /[([]\s*(?:[mku\u00b5]?[vawj]|kwh|[hkm]?pa|m?bar|psi|ppm|ppb|lu?x|lm|dbm?|[kM]?ohms?|\u03a9|[kM]?hz|g|kg|m?l|rpm|rh|m\/s|l\/min|ph|bool|0\/1|on\/off)\s*[)\]]/iu;
const isPercent = (heading: string): boolean => heading.includes("%");

/** What a heading says about its column; the column's values have the last word (see `temperature-columns.ts`). */
export const headingKind = (heading: string): HeadingKind => {
  const words = headingWords(heading);
  if (words === "" && headingUnit(heading) === null)
    return isIndexMark(heading) ? "other" : "unknown";
  if (isPercent(heading) || otherUnit.test(heading)) return "other";
  // French, Italian and Portuguese for time; a lone small t may be either.
  if (/^(?:temps|tempo)(?= |$)/u.test(words) && headingUnit(heading) === null) return "time";
  if (heading.trim() === "t") return "unknown";
  const isTemperature =
    isNumberedT(words) || temperature.test(words) || headingUnit(heading) !== null;
  if (unitWord.test(words) && !time.test(words)) return "unit";
  if (isTemperature) return derived.test(words) ? "other" : "temperature";
  if (isIndexMark(heading)) return "other";
  if (time.test(words) && !/set|alarm|zone/u.test(words)) return "time";
  if (date.test(words)) return "date";
  if (derived.test(words) || other.test(words)) return "other";
  return place.test(words) ? "place" : "unknown";
};
