/** Where each culture goes if all run at the same time, one appliance each. */
import type { MatchPlace } from "../../advice/advice-types.ts";
import type { KitchenPage } from "../kitchen-page.ts";
import { markup } from "../markup.ts";
import type { Markup } from "../markup.ts";
import { percent } from "../number-format.ts";
import { shortCultureName } from "../wording/cultures.ts";
import { basisNames, matchPlaceText } from "../wording/matches.ts";
import { probabilityText } from "../wording/probability.ts";
import { applianceName, containerName, settingText } from "../wording/set-ups.ts";
import { rowsTable } from "./rows-table.ts";
import type { TableRow } from "./rows-table.ts";

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

export const kitchenMatch = (page: KitchenPage): Markup | null => {
  const { places } = page.analysis.advice.match;
  // With a single appliance there is nothing to share out: its advice says it all.
  if (places.length === 0 || (places.length > 1 && page.analysis.advice.appliances.length < 2)) {
    return null;
  }
  return markup`${rowsTable({
    caption: caption(page),
    columns: ["Culture", "Where", "Likely to hold"],
    rows: places.map((place) => row(page, place)),
  })}
${rule(page)}`;
};
