/** Paper, and readers who want nothing to move. */
export const printStyle = `
@media (prefers-reduced-motion: no-preference) { html { scroll-behavior: smooth; } }
@page { size: A4; margin: 16mm 15mm 18mm; }
@media print {
  html { font-size: 13px; }
  :root { --measure: 40rem; }
  body { max-width: none; padding: 0; font-size: 10.5pt; line-height: 1.45; }
  .top a, .skip, .contents, .numbers, .explore, .trace, .part.working, .part.glossary, .trial .controls { display: none; }
  .top { padding: 0; }
  .opening { padding: 0.6rem 0 0; }
  h1 { font-size: 22pt; }
  .answer { font-size: 12.5pt; }
  .part:not(.working, .glossary) { display: block; margin-top: 1.4rem; padding-top: 0.8rem; }
  .part > h2 { font-size: 13pt; }
  h1, h2, h3, figcaption, caption { break-after: avoid; }
  thead, .sentence, .checks tr:has(th[colspan]) { break-after: avoid; }
  figure, .wide > .scroll:not(:has(tr:nth-child(9))), tr, caption, li, .results, .question { break-inside: avoid; }
  .wide tr:nth-child(-n + 2) { break-after: avoid; }
  .wide tr:nth-last-child(-n + 2) { break-before: avoid; }
  figure, figure.picture { max-width: none; margin: 1rem 0; }
  .chart .wide { max-width: none; }
  .chart .wide .drawing { max-height: 215mm; }
  .trial .drawing { width: auto; max-width: 100%; max-height: 78mm; }
  .chart .live { display: none; }
  p, li { orphans: 3; widows: 3; }
  .formula { break-before: avoid; }
  a { color: inherit; text-decoration: none; }
  .scroll { overflow: visible; }
  table { font-size: 8pt; }
  .sheet { font-size: 10pt; width: calc(100% - 2px); }
  .sheet th, .sheet td { height: 9mm; min-width: 0; }
  .part:has(.sheet) { break-before: page; border-top: 0; }
  thead th { min-width: 0; }
  th, td { padding-right: 0.6rem; }
  .checks th, .checks td { padding-right: 0.5rem; }
  .checks tbody th { min-width: 0; }
  .checks th, .checks td { padding-block: 0.2rem; }
  .checks th[colspan] { padding-top: 0.6rem; }
  .checks thead th { white-space: nowrap; }
  .sources { max-width: none; padding-left: 2rem; font-size: 8.5pt; }
  .rows > :not(summary) { display: none; }
  .rows > summary { list-style: none; margin: 0; color: inherit; }
  .rows > summary::after { content: ": on the page this was printed from."; }
  .question > :not(summary) { display: none; }
  .question::details-content { display: none; }
  .question summary { list-style: none; padding-left: 0; text-indent: 0; }
  .question summary::-webkit-details-marker { display: none; }
  .answers { display: block; break-before: page; }
  .foot { margin-top: 1.5rem; }
}
`;
