/** What was opened, sorted: the kitchen's file, and files that may be its readings. */
import { done, failed } from "../../problem.ts";
import type { Outcome } from "../../problem.ts";
import type { ChosenFile } from "../protocol.ts";
import { baseName } from "./chosen-names.ts";

const previousFile = "kitchen.previous.yaml";

/** Folders that some systems add to a zip. */
const strangeFolder = /^__MACOSX$/;

const partsOf = (path: string): readonly string[] => path.split("/");

/** A file of a kitchen folder by its path: no folder, nothing hidden, nothing that leaves it, no report. */
export const isWanted = (path: string): boolean => {
  const parts = partsOf(path);
  if (path.endsWith("/") || /^[A-Za-z]:/.test(path) || path.includes("\\")) return false;
  if (parts.some((part) => part === "" || part.startsWith(".") || strangeFolder.test(part))) {
    return false;
  }
  const name = baseName(path).toLowerCase();
  return name !== previousFile && !/\.html?$/.test(name);
};

const isKitchen = (path: string): boolean => /\.ya?ml$/i.test(path);
export const isZip = (path: string): boolean => /\.zip$/i.test(path);

/** The nearest to the top; one called kitchen.yaml before any other. */
const rank = (path: string): number =>
  partsOf(path).length * 2 + (baseName(path).toLowerCase() === "kitchen.yaml" ? 0 : 1);

/** null where there is none; fails where two have the same claim. */
const kitchenAmong = (files: readonly ChosenFile[]): Outcome<ChosenFile | null> => {
  const [first, second] = files
    .filter(({ name }) => isKitchen(name))
    .toSorted((a, b) => rank(a.name) - rank(b.name));
  if (first === undefined) return done(null);
  if (second === undefined || rank(first.name) < rank(second.name)) return done(first);
  const why = "one kitchen can be open at a time";
  return failed("options-contradict", { first: first.name, second: second.name, why });
};

export interface OpenedFiles {
  readonly kitchen: ChosenFile | null;
  /** Files that may be readings of it. */
  readonly others: readonly ChosenFile[];
}

/** Of files that are no zips. Fails where two kitchens are among them, or nothing at all. */
export const openedFiles = (files: readonly ChosenFile[]): Outcome<OpenedFiles> => {
  const wanted = files.filter(({ name }) => isWanted(name));
  const kitchen = kitchenAmong(wanted);
  if (!kitchen.ok) return kitchen;
  const others = wanted.filter(({ name }) => !isKitchen(name));
  if (kitchen.value === null && others.length === 0) {
    return failed("option-missing", {
      option: "kitchen.yaml, a zipped kitchen folder or a logger's file",
      why: "nothing of the kind is in what was opened",
    });
  }
  return done({ kitchen: kitchen.value, others });
};
