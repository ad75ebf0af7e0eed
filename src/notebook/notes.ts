import { figures } from "../quantity/print.js";
import type { Outcome } from "../quantity/verdict.js";
import { origin } from "../sources/coefficient.js";
import type { Coefficients, Table } from "./output.js";

/** Outcomes as a reader sees them. */
export const outcomeWords: Readonly<Record<Outcome, string>> = {
  enough: "enough",
  "can't tell": "can't tell",
  "not enough": "not enough",
};

/**
 * Coefficient records as a table: value, spread, unit, origin.
 *
 * @param shown  the records under their names
 * @returns table with a row a record
 * Example: coefficientTable(coefficients("Rings", { anodised: surfaces.anodised.friction })).rows.length → 1
 */
export function coefficientTable({ caption, entries }: Coefficients): Table {
  return {
    kind: "table",
    caption,
    columns: ["Coefficient", "Value", "5th to 95th percentile", "Unit", "Where from"],
    rows: entries.map(({ name, record }) => [
      name,
      figures(record.value),
      record.low === record.high ? "exact" : `${figures(record.low)} to ${figures(record.high)}`,
      record.unit === "1" ? "–" : record.unit.replaceAll("^2", "²").replaceAll("^3", "³"),
      origin(record),
    ]),
  };
}
