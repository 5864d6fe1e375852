/** What the command line would write, as a file to save. */
import { storedKitchen } from "../../../input/water-test/kitchen-store.ts";
import { done, failed } from "../../../problem.ts";
import type { Outcome } from "../../../problem.ts";
import { toContract } from "../../../report/contract.ts";
import { htmlPage } from "../../../report/html-page.ts";
import { toKitchenContract } from "../../../report/kitchen-contract.ts";
import type { FileToSave, SavedFile } from "../../protocol.ts";
import { keptKitchen, keptReport } from "../analyse-kept.ts";
import { kitchenZip } from "../kitchen-zip.ts";
import { kitchenFile } from "../memory-store.ts";
import { nightName } from "../saved-names.ts";
import type { Handler, LastNight, Workroom } from "../workroom.ts";

type Saving = Promise<Outcome<SavedFile>>;

const file = (name: string, content: BlobPart, type: string): Outcome<SavedFile> =>
  done({ name, content: new Blob([content], { type }) });

const html = (name: string, text: string) => file(name, text, "text/html;charset=utf-8");

/** As the command line prints it. */
const data = (name: string, value: unknown) =>
  file(name, `${JSON.stringify(value, null, 2)}\n`, "application/json");

const nothingYet = (option: string, why: string) => failed("option-missing", { option, why });

const ofNight =
  (save: (night: LastNight) => Outcome<SavedFile> | Saving) =>
  ({ desk: { night } }: Workroom): Saving =>
    Promise.resolve(
      night === null
        ? nothingYet("A night", "none was read yet, so there is nothing to save of it")
        : save(night),
    );

const nightReport = ofNight(async ({ analysis, parts }) =>
  html(nightName(analysis, ".html"), await htmlPage(parts)),
);

const nightData = ofNight(({ analysis }) =>
  data(nightName(analysis, ".json"), toContract(analysis)),
);

const nightReadings = ofNight(({ typed }) =>
  typed === null
    ? nothingYet("Typed readings", "these came from a file, which you have already")
    : file(typed.name, typed.text, "text/csv;charset=utf-8"),
);

const kitchenReport = async (room: Workroom): Saving => {
  const kitchen = await keptReport(room);
  return kitchen.ok ? html("kitchen.html", await htmlPage(kitchen.value.parts)) : kitchen;
};

const kitchenData = async (room: Workroom): Saving => {
  const kitchen = await keptKitchen(room);
  return kitchen.ok ? data("kitchen.json", toKitchenContract(kitchen.value.analysis)) : kitchen;
};

/** As it stands, even where it was kept by another version and cannot be read by this one. */
const kitchenYaml = ({ store }: Workroom): Saving =>
  Promise.resolve(file(kitchenFile, store.text(), "application/yaml"));

const wholeKitchen = async ({ store }: Workroom): Saving => {
  const stored = await storedKitchen(store);
  if (!stored.ok) return stored;
  const { text, kitchen } = stored.value;
  return done({ name: "kitchen.zip", content: await kitchenZip(text, kitchen, store.raw()) });
};

const savings: Readonly<Record<FileToSave, (room: Workroom) => Saving>> = {
  "night-report": nightReport,
  "night-data": nightData,
  "night-readings": nightReadings,
  "kitchen-report": kitchenReport,
  "kitchen-data": kitchenData,
  "kitchen-yaml": kitchenYaml,
  "kitchen-zip": wholeKitchen,
};

export const save: Handler<"save"> = (room, { what }) => savings[what](room);
