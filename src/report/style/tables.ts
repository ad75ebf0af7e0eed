/** Most columns of a table whose numbers are lined up. */
const mostColumns = 16;

/** Class of a table whose column of that number, from 0, holds numbers. */
export function numberColumn(column: number): string {
  return `n${column + 1}`;
}

const numberCells = Array.from(
  { length: mostColumns },
  (_, column) => `.${numberColumn(column)} > * > tr > :nth-child(${column + 1})`,
);

/** Tables: their boxes, rows, and columns of numbers. */
export const tableStyle = `
.scroll { overflow-x: auto; max-width: 100%; margin: 0 0 1.4rem; }
table { border-collapse: collapse; font: 0.875rem/1.45 var(--sans); font-variant-numeric: lining-nums tabular-nums; }
caption { text-align: left; font-weight: 600; padding: 0 0 0.5rem; max-width: min(44rem, 100vw - 2.5rem); position: sticky; left: 0; }
th, td { text-align: left; vertical-align: top; padding: 0.38rem 0.9rem 0.38rem 0; font-weight: 400; overflow-wrap: normal; }
@media screen and (min-width: 45rem) and (max-width: 59.99rem) {
  table { font-size: 0.8125rem; }
  th, td { padding-right: 0.6rem; }
}
th:last-child, td:last-child { padding-right: 0; }
thead th { min-width: 4rem; color: var(--quiet1); vertical-align: bottom; border-bottom: 1.5px solid var(--ink); line-height: 1.3; }
tbody tr { border-bottom: 1px solid var(--grid); }
tbody th { min-width: 6rem; }
:is(${numberCells.join(", ")}), .all-numbers :is(th, td) { text-align: right; }
@media print, (min-width: 45rem) {
  :is(${numberCells.join(", ")}, .all-numbers td):not(th) { white-space: nowrap; }
}
@media screen and (max-width: 44.99rem) {
  tr > :first-child { position: sticky; left: 0; background: var(--paper); clip-path: inset(1px 0); }
  th, td { padding-right: 0.6rem; }
  tbody th { min-width: 5.5rem; }
  thead .wordy { min-width: 9rem; }
}
`;
