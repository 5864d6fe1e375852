/** The frame of every report: one HTML file that stands alone, its own style sheet allowed by hash and nothing else. */
import { escapeText } from "./markup.ts";
import type { Markup } from "./markup.ts";
import { style, styleHash } from "./style.ts";

export interface HtmlOptions {
  /** When the report is made, as text; an ISO date and time is shortened to the minute. */
  readonly renderedOn: string;
}

const isoTime = /^(\d{4}-\d\d-\d\d)T(\d\d:\d\d)[^Z]*Z$/;
export const shownDate = (renderedOn: string): string => renderedOn.replace(isoTime, "$1, $2 UTC");

const policy = async (): Promise<string> =>
  `default-src 'none'; style-src '${await styleHash()}'; base-uri 'none'; form-action 'none'`;

/**
 * A report without its frame, for a document of its own or for another's, which
 * then needs `style` too. All four are markup, escaped where they hold names:
 * `title` as well, so it is no plain text for a window's title.
 */
export interface HtmlParts {
  readonly title: string;
  readonly heading: string;
  readonly byline: string;
  readonly main: string;
}

interface PageParts {
  readonly title: string;
  readonly heading: string;
  readonly byline: Markup;
  readonly main: Markup;
}

export const htmlParts = ({ title, heading, byline, main }: PageParts): HtmlParts => ({
  title: escapeText(title),
  heading: escapeText(heading),
  byline: byline.html,
  main: main.html,
});

/** The frame around a report's parts. */
export const htmlPage = async ({ title, heading, byline, main }: HtmlParts): Promise<string> =>
  `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${await policy()}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="referrer" content="no-referrer">
<meta name="color-scheme" content="light dark">
<title>${title}</title>
<style>${style}</style>
</head>
<body>
<a class="skip" href="#answers">To the answer</a>
<div class="sheet">
<header>
<h1>${heading}</h1>
${byline}
</header>
<main id="answers">
${main}
</main>
<footer class="small">
<p>Made on your own computer from the files named above; nothing was sent anywhere. It makes no health claim.</p>
</footer>
</div>
</body>
</html>
`;
