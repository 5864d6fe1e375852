/**
 * Text that stands in a page's `<script type="text/plain">` and comes out as it
 * was. HTML reads such an element up to the next end tag, whatever the text means
 * by it, so what could begin or end a script or a comment is written as a character
 * reference; HTML decodes none there, so the reader does.
 */

/** For the page. Text with a carriage return or U+0000 would not come out as it was: HTML changes both. */
export const toInert = (text: string): string =>
  text.replaceAll(/&(?=amp;|lt;)|<(?=!--|\/?script)/gi, (one) => (one === "&" ? "&amp;" : "&lt;"));

/** Undoes `toInert`. */
export const fromInert = (inert: string): string =>
  inert.replaceAll(/&(?:amp|lt);/g, (one) => (one === "&amp;" ? "&" : "<"));
