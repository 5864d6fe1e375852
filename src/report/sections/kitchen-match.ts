/** Where each culture goes if all run at the same time, one appliance each. */
import type { MatchPlace } from "../../advice/advice-types.ts";
import type { KitchenPage } from "../kitchen-page.ts";
import { markup } from "../markup.ts";
import type { Markup } from "../markup.ts";
import { percent } from "../number-format.ts";
import { shortCultureName } from "../wording/cultures.ts";
import { basisNames, matchPlaceText, pairingText } from "../wording/matches.ts";
import { probabilityText } from "../wording/probability.ts";
import { applianceName, containerName, settingText } from "../wording/set-ups.ts";
import { rowsTable } from "./rows-table.ts";
import type { TableRow } from "./rows-table.ts";
import { separated } from "./verdict-clauses.ts";

const nameOf = ({ analysis }: KitchenPage, { culture }: MatchPlace): string => {
  const asked = analysis.requirements.find((one) => one.culture === culture);
  return asked === undefined ? culture : shortCultureName(asked);
};

const row = (page: KitchenPage, place: MatchPlace): TableRow => {
  const { analysis, writing } = page;
  const head = nameOf(page, place);
  const { placed } = place;
  if (placed === null) return { head, cells: [matchPlaceText(analysis, place, writing), "–"] };
  const { setUp, basis } = placed.candidate;
  const setting = settingText(setUp.setting, writing);
  const chance = probabilityText(placed.chance.probability, analysis.confidence, writing.space);
  const where = [setting, containerName(analysis.kitchen, setUp)].filter((text) => text !== null);
  return {
    head,
    cells: [
      markup`<b>${applianceName(analysis.kitchen, setUp)}</b>, ${where.join(", ")}`,
      markup`<span class="odds">${chance}</span><span class="gist">${basisNames[basis]}</span>`,
    ],
  };
};

const caption = ({ analysis }: KitchenPage): string =>
  analysis.requirements.length > 1
    ? "What to use if all run at the same time, one appliance each"
    : "What to use: where it is likeliest to hold";

/** Why the table may differ from what is best for one culture alone. */
const rule = ({ analysis, writing }: KitchenPage): Markup | null =>
  analysis.requirements.length > 1
    ? markup`<p class="small">As many cultures as possible have a place; then the least likely place is made as likely as it can be. None is put where it is less than ${percent(analysis.advice.match.floor, writing.space)} likely to hold. What is predicted was not tested: test it once with water before trusting a batch to it.</p>`
    : null;

/** With a single appliance there is nothing to share out: its own answers say it all. */
const isShared = ({ analysis }: KitchenPage): boolean =>
  analysis.advice.match.places.length > 0 && analysis.advice.appliances.length > 1;

/** Those without a place, for the same reason together. */
const alike = (places: readonly MatchPlace[]): MatchPlace[][] =>
  [...new Set(places.map(({ why }) => why))].map((why) =>
    places.filter((place) => place.why === why),
  );

const pairOf = (page: KitchenPage, group: readonly MatchPlace[]): Markup => {
  const names = group.map((place) => markup`<b>${nameOf(page, place)}</b>`);
  const [first] = group;
  if (first === undefined) return markup``;
  const text = pairingText(page.analysis, first);
  return markup`${separated(names, ", ")}${first.placed === null ? ": " : " "}${text}`;
};

/** Which appliance for which culture, in a sentence. */
export const pairing = (page: KitchenPage): Markup | null => {
  const { places } = page.analysis.advice.match;
  if (!isShared(page)) return null;
  const homes = places.filter(({ placed }) => placed !== null).map((one) => [one]);
  const homeless = alike(places.filter(({ placed }) => placed === null));
  const said = homes.concat(homeless).map((group) => pairOf(page, group));
  const opening = places.length > 1 ? "All at the same time" : "Likeliest place";
  return markup`<p class="pairing">${opening}: ${separated(said, "; ")}.</p>`;
};

/** The same with settings, chances and what they rest on. */
export const kitchenMatch = (page: KitchenPage): Markup | null =>
  isShared(page)
    ? markup`${rowsTable({
        caption: caption(page),
        columns: ["Culture", "Where", "Likely to hold"],
        rows: page.analysis.advice.match.places.map((place) => row(page, place)),
      })}
${rule(page)}`
    : null;
