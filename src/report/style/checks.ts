/** Columns of a table of comparisons. */
export const checkColumns = ["Compared", "Computed", "Expected", "Allowed\u00a0±", "Deviation", "Unit"] as const;

const labels = checkColumns
  .slice(1)
  .map((title, index) => `  .checks td:nth-child(${index + 2})::before { content: "${title}"; }`)
  .join("\n");

/** Comparisons: rows below what they are compared with; on a phone each row is a card, its numbers with their titles. */
export const checkStyle = `
.checks { width: 100%; margin-bottom: 2rem; }
.checks th, .checks td { padding-right: 0.8rem; }
.checks tbody th { min-width: 10rem; }
.checks th[colspan] { padding-top: 1.1rem; color: var(--quiet1); }
.checks tr:has(th[colspan]) { border-bottom-color: var(--quiet2); }
@media (max-width: 44.99rem) {
  .checks thead { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); }
  .checks, .checks tbody, .checks tr, .checks th, .checks td, .checks caption { display: block; }
  .checks tr { padding: 0.6rem 0; }
  .checks tr:has(th[colspan]) { padding-bottom: 0.2rem; }
  .checks th[scope="row"] { padding: 0 0 0.3rem; font-weight: 600; }
  .checks td { display: inline-flex; gap: 0.4rem; padding: 0.08rem 1rem 0.08rem 0; white-space: normal; }
  .checks td::before { color: var(--quiet1); flex: none; }
${labels}
}
`;
