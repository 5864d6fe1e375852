/** The bundled example kitchen as files that a person opens. */
import { cpSync, readFileSync, readdirSync } from "node:fs";
import { join } from "node:path";
import { root, temporaryFolder } from "../../cli/run-holdband.ts";
import { chosen } from "./page-room.ts";

const example = join(root, "fixtures", "kitchen");

const bytesAt = (path: string): Uint8Array<ArrayBuffer> => new Uint8Array(readFileSync(path));

export const demoText = (): string => readFileSync(join(example, "kitchen.yaml"), "utf8");

export const demoReadings = () =>
  readdirSync(join(example, "readings")).map((name) =>
    chosen(`kitchen/readings/${name}`, bytesAt(join(example, "readings", name))),
  );

/** As a browser gives a dropped folder: every file with its path. */
export const demoFiles = () => [
  chosen("kitchen/kitchen.yaml", bytesAt(join(example, "kitchen.yaml"))),
  ...demoReadings(),
];

/** A copy of it on disk. */
export const demoFolder = (): string => {
  const folder = temporaryFolder();
  cpSync(example, folder, { recursive: true });
  return folder;
};
