import { efficiency, leadLineFactor, ratioFromPull } from "../reeving/rules.js";
import { pullOverLoad } from "./purchase-models.js";
import type { CheckRow, CheckSet } from "./row.js";

/** Printed pull over load and useful work of tackles of natural-fibre rope, by parts. */
const receipts: readonly (readonly [parts: number, pull: string, usefulWork: string])[] = [
  [1, "1.1", "90"],
  [2, "0.62", "81"],
  [3, "0.45", "75"],
  [4, "0.37", "68"],
  [5, "0.32", "61.5"],
  [6, "0.28", "59"],
];

const receiptRows = receipts.map(
  ([parts, pull, usefulWork]): CheckRow => ({
    id: `workshop-receipts-${parts}-parts`,
    quantity: `useful work of a measured tackle of ${parts} parts, from its pull of ${pull} of the load`,
    printed: usefulWork,
    unit: "%",
    evidence: "published",
    status: "published",
    source: "workshop-receipts",
    place: "taps, part 6; allowed: half a digit of the printed work and of the printed pull",
    readingError:
      0.5 * (usefulWork.includes(".") ? 0.1 : 1) +
      (Number(usefulWork) * 0.5 * (parts === 1 ? 0.1 : 0.01)) / Number(pull),
    compute: () => 100 * efficiency({ load: 1, pull: Number(pull), velocityRatio: parts }),
  }),
);

const rest: readonly CheckRow[] = [
  {
    id: "lineham-mechanics-2-cords",
    quantity: "load over pull of a 2-cord block, from the loss of a single one (K = 1.195)",
    printed: "1.54",
    unit: "1",
    evidence: "published",
    status: "published",
    source: "lineham-mechanics",
    place: "Appendix II, calculated row (scan with damaged digits)",
    compute: () => 1 / pullOverLoad(2, "fixed", 1.195),
  },
  {
    id: "rollen-formelbuch-chain",
    quantity: "efficiency of a moving and a fixed pulley, chain, 0.96 a pulley",
    printed: "0.94",
    unit: "1",
    evidence: "published",
    status: "published",
    source: "rollen-formelbuch",
    place: "p. 39",
    compute: () => efficiency({ load: 1, pull: pullOverLoad(2, "fixed", 1 / 0.96), velocityRatio: 2 }),
  },
  {
    id: "navy-builder-luff",
    quantity: "pull on a luff tackle under 600 lbf, no friction",
    printed: "200",
    unit: "lbf",
    evidence: "published",
    status: "published",
    source: "navy-builder",
    place: "block and tackle",
    compute: () => 600 * pullOverLoad(3, "fixed", 1),
  },
  ...[2, 4, 6, 8].map(
    (parts): CheckRow => ({
      id: `linear-against-geometric-${parts}`,
      quantity: `ratio K that gives the tenth rule's pull with ${parts} parts`,
      printed: { 2: "1.1307", 4: "1.1496", 6: "1.1534", 8: "1.1529" }[parts] ?? "",
      unit: "1",
      evidence: "independent",
      status: "published",
      source: "statics",
      place: "geometric series solved for K in Python: tests/reference/tenth_rule_ratio.py",
      compute: () => ratioFromPull({ pullOverLoad: (1 + 0.1 * parts) / parts, parts, sheaves: parts }),
    }),
  ),
  ...[2, 5, 9].map(
    (parts): CheckRow => ({
      id: `geometric-series-${parts}`,
      quantity: `force balance against geometric series, ${parts} parts to advantage with a lead block, K = 1.13`,
      printed: String(leadLineFactor({ tensionRatio: 1.13, parts, sheaves: parts })),
      unit: "1",
      evidence: "exact",
      status: "published",
      source: "statics",
      place: "two ways to the same number",
      readingError: 1e-12,
      compute: () => pullOverLoad(parts, "moving", 1.13, 1),
    }),
  ),
];

/** Measured and worked tackles. */
export const measuredTackles: CheckSet = { topic: "purchase", rows: [...receiptRows, ...rest] };
