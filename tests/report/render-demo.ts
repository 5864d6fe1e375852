/** Both reports of the demo, one after the other; run on its own, under another time zone, by same-bytes.test.ts. */
import { toHtml } from "../../src/report/html.ts";
import { toKitchenHtml } from "../../src/report/kitchen-html.ts";
import { demoKitchen, demoNight } from "./demo-kitchen.ts";

const rendered = { renderedOn: "2026-11-20" };

export const renderDemo = async (): Promise<string> => {
  const night = await toHtml(await demoNight(), rendered);
  return night + (await toKitchenHtml(await demoKitchen(), rendered));
};

if (process.argv[2] === "print") process.stdout.write(await renderDemo());
