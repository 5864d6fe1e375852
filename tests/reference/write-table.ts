import { writeFileSync } from "node:fs";
import { allReferences } from "./all-references.ts";
import { countValues, referenceTable } from "./reference-table.ts";
import { tablePath } from "./table-path.ts";

writeFileSync(tablePath, referenceTable(allReferences));
console.log(`${tablePath}: ${countValues(allReferences)} values`);
