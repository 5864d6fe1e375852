import { expect, it } from "vitest";
import { pairsTable } from "../../../src/report/sections/pairs-table.ts";

it("heads each row for screen readers, and is nothing without rows", () => {
  expect(pairsTable("Hold", [{ label: "A<b", text: "1 & 2" }])!.html).toContain(
    '<tr><th scope="row">A&lt;b</th><td>1 &amp; 2</td></tr>',
  );
  expect(pairsTable("Hold", [])).toBeNull();
});
