import type { SourceId } from "../sources/bibliography.js";
import type { CheckRow } from "./row.js";

/**
 * A row of published evidence, its id led by its source: the columns of a table of examples.
 *
 * @param source  id in the bibliography
 * @param id  rest of the row's id
 * @param quantity  what is compared
 * @param printed  value as it is printed [unit]
 * @param unit  unit of the printed value
 * @param place  page, table or example
 * @param compute  model call that answers in the unit
 * @returns the row [unit]
 */
export function publishedRow(
  source: SourceId,
  id: string,
  quantity: string,
  printed: string,
  unit: string,
  place: string,
  compute: () => number,
): CheckRow {
  const evidence = "published";
  return { id: `${source}-${id}`, quantity, printed, unit, evidence, status: evidence, source, place, compute };
}

/**
 * A row for a rule of the trade: nobody printed it, so it proves nothing and stands apart.
 *
 * @param id  row's id, without its lead
 * @param quantity  what is compared
 * @param printed  value as the trade says it [unit]
 * @param unit  unit of the value
 * @param place  the rule in words, and what is allowed where that is not half a digit
 * @param compute  model call that answers in the unit
 * @param readingError  how far the rule of thumb may be off [unit]; half its last digit when absent
 * @returns the row [unit]
 */
export function practiceRow(
  id: string,
  quantity: string,
  printed: string,
  unit: string,
  place: string,
  compute: () => number,
  readingError?: number,
): CheckRow {
  const row = { id: `practice-${id}`, quantity, printed, unit, place, compute };
  return {
    ...row,
    evidence: "none",
    status: "common practice",
    ...(readingError !== undefined && { readingError }),
  };
}
