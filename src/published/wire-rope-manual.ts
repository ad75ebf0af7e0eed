import { convert } from "../quantity/parse.js";
import { pullOverLoad } from "./purchase-models.js";
import type { CheckRow, CheckSet } from "./row.js";

const common = { evidence: "published", status: "published", source: "wire-rope-users-manual" } as const;

const rows: readonly CheckRow[] = [
  {
    ...common,
    id: "wire-rope-users-manual-4-parts",
    quantity: "lead-line factor, 4 parts, plain bearings (K = 1.09)",
    printed: "0.309",
    unit: "1",
    place: "p. 87",
    compute: () => pullOverLoad(4, "fixed", 1.09),
  },
  {
    ...common,
    id: "wire-rope-users-manual-4-parts-2-leads",
    quantity: "lead-line factor, 4 parts and 2 lead sheaves (K = 1.09)",
    printed: "0.367",
    unit: "1",
    place: "p. 88",
    compute: () => pullOverLoad(4, "fixed", 1.09, 2),
  },
  {
    ...common,
    id: "wire-rope-users-manual-lead-line-load",
    quantity: "lead-line load of that system under 6000 lbf, from the printed factor",
    printed: "2202",
    unit: "lbf",
    place: "p. 88: printed as 6000 × 0.367, so known to half a thousandth of the load",
    readingError: 0.0005 * 6000,
    compute: () => convert(pullOverLoad(4, "fixed", 1.09, 2) * convert(6000, "lbf", "N"), "N", "lbf"),
  },
  {
    ...common,
    id: "wire-rope-users-manual-static",
    quantity: "lead-line load of 4 parts under 6000 lbf, no friction",
    printed: "1500",
    unit: "lbf",
    place: "p. 86",
    compute: () => convert(pullOverLoad(4, "fixed", 1) * convert(6000, "lbf", "N"), "N", "lbf"),
  },
];

/** Worked example of the wire-rope handbook. */
export const wireRopeManual: CheckSet = { topic: "purchase", rows };
