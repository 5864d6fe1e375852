/**
 * The frame of the page: one HTML file that holds its style, its script, its
 * worker's code and its licences, and whose policy allows these and nothing else.
 */
import { createHash } from "node:crypto";
import { toInert } from "../page/inert-text.ts";

export interface PageTexts {
  readonly style: string;
  /** The screen's script, which runs. */
  readonly screen: string;
  /** The worker's code, which the screen runs from a blob's address. */
  readonly worker: string;
  readonly licences: string;
}

const hashOf = (text: string): string =>
  `'sha256-${createHash("sha256").update(text).digest("base64")}'`;

/** A worker from a blob's address inherits all of it: no request and no `eval` there either. */
export const pagePolicy = ({ style, screen }: Pick<PageTexts, "style" | "screen">): string =>
  [
    "default-src 'none'",
    `script-src ${hashOf(screen)}`,
    "worker-src blob:",
    `style-src ${hashOf(style)}`,
    "connect-src 'none'",
    "base-uri 'none'",
    "form-action 'none'",
  ].join("; ");

/** HTML would change these characters, and then no hash would fit and no code be what it was. */
const asItStands = (name: string, text: string): string => {
  // oxlint-disable-next-line no-control-regex -- the very character HTML does not let through
  if (/[\r\0]/.test(text)) throw new Error(`The page's ${name} holds a character HTML changes.`);
  return text;
};

/** What HTML reads as it stands up to the end tag, so nothing in it may look like one. */
const runs = (name: string, text: string): string => {
  if (/<!--|<\/(?:script|style)/i.test(text)) {
    throw new Error(`The page's ${name} holds what HTML would take for the end of it.`);
  }
  return asItStands(name, text);
};

const inert = (name: string, text: string): string => toInert(asItStands(name, text));

export const pageHtml = (texts: PageTexts): string =>
  `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${pagePolicy(texts)}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="referrer" content="no-referrer">
<meta name="color-scheme" content="light dark">
<title>holdband</title>
<style>${runs("style", texts.style)}</style>
</head>
<body>
<div id="page"></div>
<noscript><p>This page works out its answers by a script of its own, on your computer. Allow scripts here to use it; it asks nothing of any network.</p></noscript>
<script type="text/plain" id="worker-code">${inert("worker", texts.worker)}</script>
<script type="text/plain" id="licences">${inert("licences", texts.licences)}</script>
<script>${runs("screen", texts.screen)}</script>
</body>
</html>
`;
