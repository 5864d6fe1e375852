/**
 * A page printed by Chromium, read back as far as the tests of print need it: on
 * which sheet the ends of each part land, and how much ink a sheet carries.
 * Skia writes a PDF's objects as plain text, only their streams deflated, so no
 * library is needed (ISO 32000-1: 7.3.10 objects, 7.7.3 page tree, 12.5 annotations).
 */
import { inflateSync } from "node:zlib";
import type { Page } from "playwright-core";

export interface Sheet {
  /** Numbers of the marks whose upper end lies on it. */
  readonly tops: readonly number[];
  readonly bottoms: readonly number[];
  /** How many letters it shows. */
  readonly letters: number;
  /** How far down the lowest end of a mark lies, as a part of the sheet. */
  readonly usedTo: number;
}

const place = "https://mark.invalid";

/**
 * Puts a link at the upper and at the lower end of every element of a selector,
 * each with an address of its own that the PDF repeats; gives their names.
 * They take no room, so nothing moves.
 */
export const markEnds = (page: Page, selector: string): Promise<readonly string[]> =>
  page.evaluate(
    ([selected, base]) => {
      const named = [...document.querySelectorAll<HTMLElement>(selected!)]
        // Before the first link is in, which may be one of those asked for.
        .filter((element) => element.checkVisibility());
      return named.map((element, at) => {
        if (getComputedStyle(element).position === "static") element.style.position = "relative";
        for (const end of ["top", "bottom"]) {
          const link = document.createElement("a");
          link.href = `${base}/${at}/${end}`;
          link.style.cssText = `position: absolute; left: 0; width: 3px; height: 1px; ${end}: 0`;
          element.append(link);
        }
        return `${element.localName}.${element.className}#${at}: ${element.textContent.trim().slice(0, 60)}`;
      });
    },
    [selector, place],
  );

type Objects = ReadonlyMap<string, string>;

const objectsOf = (pdf: string): Objects =>
  new Map(
    [...pdf.matchAll(/(\d+) 0 obj\n([\s\S]*?)\nendobj/g)].map(([, id, body]) => [id!, body!]),
  );

const references = (object: string, key: string): string[] => {
  const list = new RegExp(`/${key} \\[?((?:\\d+ 0 R ?)+)`).exec(object)?.[1] ?? "";
  return [...list.matchAll(/(\d+) 0 R/g)].map(([, id]) => id!);
};

/** Pages in the order of the tree. */
const pagesBelow = (objects: Objects, id: string): string[] => {
  const object = objects.get(id) ?? "";
  return object.includes("/Type /Pages")
    ? references(object, "Kids").flatMap((kid) => pagesBelow(objects, kid))
    : [object];
};

const streamOf = (object: string): string => {
  const from = object.indexOf("stream\n") + "stream\n".length;
  const bytes = Buffer.from(object.slice(from, object.lastIndexOf("\nendstream")), "latin1");
  return (object.includes("/FlateDecode") ? inflateSync(bytes) : bytes).toString("latin1");
};

/** Skia shows letters by their numbers in the font, four digits each. */
const lettersIn = (content: string): number =>
  [...content.matchAll(/<([0-9A-F]+)> Tj/g)].reduce(
    (sum, [, digits]) => sum + digits!.length / 4,
    0,
  );

const markIn = new RegExp(`/URI \\(${place}/(\\d+)/(top|bottom)\\)`);
const boxIn = /\/Rect \[[\d.-]+ ([\d.-]+)/;

const sheetOf = (objects: Objects, page: string): Sheet => {
  const height = Number(/\/MediaBox \[0 0 [\d.]+ ([\d.]+)/.exec(page)?.[1]);
  const links = references(page, "Annots").map((id) => objects.get(id) ?? "");
  const marks = links.flatMap((link) => {
    const mark = markIn.exec(link);
    if (mark === null) return [];
    return [{ at: Number(mark[1]), end: mark[2], low: Number(boxIn.exec(link)?.[1]) }];
  });
  const content = references(page, "Contents").map((id) => streamOf(objects.get(id) ?? ""));
  const ends = (end: string) => marks.filter((mark) => mark.end === end).map(({ at }) => at);
  return {
    tops: ends("top"),
    bottoms: ends("bottom"),
    letters: lettersIn(content.join("\n")),
    usedTo: marks.reduce((most, { low }) => Math.max(most, 1 - low / height), 0),
  };
};

export const readSheets = (pdf: Buffer): readonly Sheet[] => {
  const objects = objectsOf(pdf.toString("latin1"));
  const catalog = [...objects.values()].find((object) => object.includes("/Type /Catalog")) ?? "";
  const [root] = references(catalog, "Pages");
  return pagesBelow(objects, root ?? "").map((page) => sheetOf(objects, page));
};

/** Numbers of the marks that begin on one sheet and end on another, or are not on any. */
export const splitMarks = (sheets: readonly Sheet[], count: number): number[] =>
  Array.from({ length: count }, (_, at) => at).filter((at) => {
    const from = sheets.findIndex(({ tops }) => tops.includes(at));
    return from === -1 || from !== sheets.findIndex(({ bottoms }) => bottoms.includes(at));
  });

/** Parts of a PDF that are made of pixels. */
export const pixelImages = (pdf: Buffer): number =>
  pdf.toString("latin1").match(/\/Subtype \/Image\b/g)?.length ?? 0;
