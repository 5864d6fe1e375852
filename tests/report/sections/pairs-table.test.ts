import { expect, it } from "vitest";
import { headedPairsTable, pairsTable } from "../../../src/report/sections/pairs-table.ts";

it("heads each row for screen readers, and is nothing without rows", () => {
  expect(pairsTable("Hold", [{ label: "A<b", text: "1 & 2" }])!.html).toContain(
    '<tr><th scope="row">A&lt;b</th><td>1 &amp; 2</td></tr>',
  );
  expect(pairsTable("Hold", [])).toBeNull();
});

it("says what it is about to a screen reader only, under a heading that says it to the eye", () => {
  const rows = [{ label: "A", text: "1" }];
  expect(headedPairsTable("Hold", rows)!.html).toContain('<caption class="heard">Hold</caption>');
  expect(pairsTable("Hold", rows)!.html).toContain("<caption>Hold</caption>");
});
