/**
 * Words found in stamps: months and weekdays in English and common European
 * languages, the halves of the day, units and zones. Lower case, without
 * accents; a full stop after an abbreviation is taken off before looking up.
 */

/** One line for each month: en, de, fr, es, it, pt, nl, sv/da/no, pl, fi; short and long. */
const months = [
  "jan january januar janv janvier ene enero gen gennaio janeiro januari sty styczen stycznia tammi tammikuu tammikuuta janner",
  "feb february februar fevr fev fevrier febr febrero febbraio fevereiro februari lut luty lutego helmi helmikuu helmikuuta",
  "mar march marz mrz maerz mars marzo mrt maart marco marts marca marzec maalis maaliskuu maaliskuuta",
  "apr april avr avril abr abril aprile kwi kwiecien kwietnia huhti huhtikuu huhtikuuta",
  "may mai mayo mag maggio maio mei maj maja touko toukokuu toukokuuta",
  "jun june juni juin junio giu giugno junho cze czerwiec czerwca kesa kesakuu kesakuuta",
  "jul july juli juil juillet julio lug luglio julho lip lipiec lipca heina heinakuu heinakuuta",
  "aug august aout ago agosto augustus augusti sie sierpien sierpnia elo elokuu elokuuta",
  "sep sept september septembre septiembre set settembre setembro wrz wrzesien wrzesnia syys syyskuu syyskuuta",
  "oct october okt oktober octobre octubre ott ottobre out outubro paz pazdziernik pazdziernika loka lokakuu lokakuuta",
  "nov november novembre noviembre novembro lis listopad listopada marras marraskuu marraskuuta",
  "dec december dez dezember decembre dic diciembre dicembre dezembro des desember gru grudzien grudnia joulu joulukuu joulukuuta",
];

/** "mar" (Tuesday in es, fr, it) stands with the months; a stamp with two months starts with a weekday. */
const weekdays =
  "mon tue tues wed thu thur thurs fri sat sun monday tuesday wednesday thursday friday saturday sunday " +
  "mo di mi do fr sa so montag dienstag mittwoch donnerstag freitag samstag sonntag sonnabend " +
  "lun mer jeu ven sam dim lundi mardi mercredi jeudi vendredi samedi dimanche " +
  "mie jue vie sab dom lunes martes miercoles jueves viernes sabado domingo " +
  "gio lunedi martedi mercoledi giovedi venerdi sabato domenica " +
  "seg ter qua qui sex segunda terca quarta quinta sexta feira " +
  "ma wo vr za zo maandag dinsdag woensdag donderdag vrijdag zaterdag zondag " +
  "man tir tirs tis ons tor tors fre lor son mandag tirsdag tisdag onsdag torsdag fredag lordag sondag " +
  "pon wt sr czw pt sob niedz poniedzialek wtorek sroda czwartek piatek sobota niedziela ke pe la su maanantai tiistai keskiviikko torstai perjantai lauantai sunnuntai";

const fillers = "at um uhr klo kl le de del den der the of on a as alle ore st nd rd th er";

/** Kinds of token, as letters of a stamp's shape. `skip` is not a token. */
export interface Word {
  readonly kind: string;
  readonly value: number;
}

const words = new Map<string, Word>();
const learn = (list: string, kind: string, value: number): void => {
  for (const word of list.split(" ")) words.set(word, { kind, value });
};
learn(weekdays, "skip", 0);
learn(fillers, "skip", 0);
for (const [index, list] of months.entries()) learn(list, "M", index + 1);
learn("am vorm matin", "a", 0);
learn("pm nachm soir", "a", 12);
learn("day days tag tage jour jours dia dias giorni d", "D", 0);
learn("h hr hrs hour hours", "h", 0);
learn("m min mins minute minutes", "m", 0);
learn("s sec secs second seconds", "s", 0);
learn("t", "T", 0);
learn("z utc gmt", "Z", 0);

const withoutAccents = (word: string): string =>
  word
    .toLowerCase()
    .normalize("NFD")
    .replace(/[\u0300-\u036f.]/g, "")
    .replaceAll("ł", "l")
    .replaceAll("ø", "o");

/** What a word in a stamp means; a zone's abbreviation ("CET") is `z`; null where it is none of these. */
export const wordOf = (word: string): Word | null => {
  const known = words.get(word.toLowerCase()) ?? words.get(withoutAccents(word));
  if (known !== undefined) return known;
  return /^[A-Z]{3,5}$/.test(word) ? { kind: "z", value: 0 } : null;
};
