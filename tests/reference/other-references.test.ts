import { describeReferences } from "./describe-references.ts";
import { chiSquare } from "./values/chi-square.ts";
import { cooling } from "./values/heating.ts";
import { conformity } from "./values/uncertainty.ts";
import { conversions } from "./values/water.ts";

// Parts whose own tests hold constructed cases.
describeReferences(chiSquare);
describeReferences(conformity);
describeReferences(cooling);
describeReferences(conversions);
