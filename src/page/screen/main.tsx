/** Where the page begins. */
import { render } from "preact";
import { App } from "./app.tsx";
import { startWorker } from "./start-worker.ts";

const root = document.getElementById("page");
// A file that misses the drop field must not open in the page's place.
for (const name of ["dragover", "drop"]) {
  addEventListener(name, (event) => event.preventDefault());
}
if (root !== null) render(<App client={startWorker()} />, root);
