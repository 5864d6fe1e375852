/** Run on its own, under another time zone, by html.test.ts. */
import { toHtml } from "../../src/report/html.ts";
import { smallNight } from "./sample-analysis.ts";

void toHtml(smallNight(), { renderedOn: "2026-03-15" }).then((html) => process.stdout.write(html));
