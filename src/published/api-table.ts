import { pullOverLoad } from "./purchase-models.js";
import type { CheckRow, CheckSet } from "./row.js";

/** Lead-line factors for 2 to 12 parts, hauled from the fixed block: rolling bearings (1.04), plain bearings (1.09). */
const table: readonly (readonly [parts: number, rolling: string, plain: string])[] = [
  [2, "0.530", "0.568"],
  [3, "0.360", "0.395"],
  [4, "0.275", "0.309"],
  [5, "0.225", "0.257"],
  [6, "0.191", "0.223"],
  [7, "0.167", "0.199"],
  [8, "0.148", "0.181"],
  [9, "0.134", "0.167"],
  [10, "0.123", "0.156"],
  [11, "0.114", "0.147"],
  [12, "0.107", "0.140"],
];

function row(parts: number, ratio: number, printed: string): CheckRow {
  return {
    id: `api-rp-9b-${parts}-parts-${ratio}`,
    quantity: `lead-line factor, ${parts} parts, K = ${ratio}`,
    printed,
    unit: "1",
    evidence: "independent",
    status: "from memory",
    source: "api-rp-9b",
    place: "table of lines; the last digit of the remembered table may be off by one",
    readingError: 0.001,
    compute: () => pullOverLoad(parts, "fixed", ratio),
  };
}

/** Drilling-line table, remembered: it does not count as published. */
export const apiTable: CheckSet = {
  topic: "purchase",
  rows: table.flatMap(([parts, rolling, plain]) => [row(parts, 1.04, rolling), row(parts, 1.09, plain)]),
};
