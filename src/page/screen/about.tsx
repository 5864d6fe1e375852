/** The foot of the page: version, cautions in short, and the notices of what it is made with. */
import type { JSX } from "preact";
import { useState } from "preact/hooks";
import { fromInert } from "../inert-text.ts";

const licences = (): string => fromInert(document.getElementById("licences")?.textContent ?? "");

export const About = ({ version }: { readonly version: string }): JSX.Element => {
  const [open, setOpen] = useState(false);
  return (
    <footer class="small">
      <p>
        Milk held warm can grow harmful bacteria before the culture sours it: start clean, with
        heat-treated milk and a lively starter, and throw away whatever is pink, orange, fuzzy or
        smells off. Use appliances only as their makers allow. This page makes no health claim.
      </p>
      <details onToggle={(event) => setOpen(event.currentTarget.open)}>
        <summary>holdband {version}: what it is made with</summary>
        {open ? <pre class="licences">{licences()}</pre> : null}
      </details>
    </footer>
  );
};
