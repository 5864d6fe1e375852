/** A report's markup as the text that it shows. */
const signs: readonly (readonly [entity: string, sign: string])[] = [
  ["&lt;", "<"],
  ["&gt;", ">"],
  ["&quot;", '"'],
  ["&#39;", "'"],
  // Last: what it gives is no sign of another.
  ["&amp;", "&"],
];

/** Undoes `escapeText`, after the tags are gone; in our markup every other "<" is escaped. */
export const plainText = (html: string): string =>
  signs.reduce(
    (text, [entity, sign]) => text.replaceAll(entity, sign),
    html.replaceAll(/<[^>]*>/g, ""),
  );
