/** The example report that stands in reports/: the demo kitchen's, as the program makes it today. */
import { readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { expect, it } from "vitest";
import { toKitchenHtml } from "../../src/report/kitchen-html.ts";
import { demoKitchen } from "./demo-kitchen.ts";

const path = fileURLToPath(new URL("../../reports/example.html", import.meta.url));

/** `npm run golden` writes it anew. */
it("is the demo kitchen's report, byte for byte", async () => {
  const html = await toKitchenHtml(await demoKitchen(), { renderedOn: "2026-11-20" });
  if (process.env["UPDATE_GOLDEN"] === "1") writeFileSync(path, html);
  expect(html).toBe(readFileSync(path, "utf8"));
}, 60_000);
