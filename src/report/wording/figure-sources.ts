import type { FigureSource } from "../../culture/culture.ts";

/** Where a figure comes from, in words. */
export const sourceText = (source: FigureSource): string => {
  switch (source.kind) {
    case "published":
      return source.work;
    case "common practice":
      return "common practice, no source";
    case "from memory":
      return `from memory of ${source.work}`;
    case "own":
      return "your own figures";
  }
};
