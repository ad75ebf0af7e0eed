/** Paper, and readers who want nothing to move. */
export const printStyle = `
@media (prefers-reduced-motion: no-preference) { html { scroll-behavior: smooth; } }
@page { size: A4; margin: 16mm 15mm 18mm; }
@media print {
  html { font-size: 13px; }
  :root { --measure: 40rem; }
  body { max-width: none; padding: 0; font-size: 10.5pt; line-height: 1.45; }
  .top a, .skip, .contents, .numbers, .explore, .trace, .part.working, .part.glossary { display: none; }
  .top { padding: 0; }
  .opening { padding: 0.6rem 0 0; }
  h1 { font-size: 22pt; }
  .answer { font-size: 12.5pt; }
  .part:not(.working, .glossary) { display: block; margin-top: 1.4rem; padding-top: 0.8rem; }
  .part > h2, .answers > h2 { font-size: 13pt; }
  h1, h2, h3, figcaption, caption { break-after: avoid; }
  thead, .sentence, .checks tr:has(th[colspan]) { break-after: avoid; }
  figure, .wide > .scroll:not(:has(tr:nth-child(9))), tr, caption, p, li, .results, .question, .answers { break-inside: avoid; }
  .wide tr:nth-child(-n + 2) { break-after: avoid; }
  .wide tr:nth-last-child(-n + 2) { break-before: avoid; }
  figure, figure.picture { max-width: none; margin: 0.8rem 0; }
  .caption { margin-top: 0.3rem; line-height: 1.4; }
  .chart .wide { max-width: none; }
  .chart .wide .drawing { max-height: 215mm; }
  .trial .drawing { width: auto; max-width: 100%; max-height: 78mm; }
  .chart .live { display: none; }
  .trial { gap: 0.6rem; }
  .trial .results > div { padding: 0.2rem 0; }
  .controls :is(input, .units, .actions, .told, label:has([type="radio"]:not(:checked))) { display: none; }
  .trial .controls { display: flex; flex-wrap: wrap; gap: 0 1.6rem; max-width: none; font-size: 8.5pt; }
  .controls > * { display: flex; gap: 0.4rem; align-items: baseline; padding: 0; border: 0; }
  .controls > * > :first-child { flex: none; width: auto; }
  .controls label { min-height: 0 !important; }
  .controls select { appearance: none; border: 0; padding: 0; min-height: 0; font-weight: 600; field-sizing: content; }
  .controls .switch { font-weight: 400 !important; }
  .controls .switch::after { content: "no"; font-weight: 600; }
  .controls .switch:has(:checked)::after { content: "yes"; }
  .formula { break-before: avoid; }
  a { color: inherit; text-decoration: none; }
  .scroll { overflow: visible; }
  table { font-size: 8pt; }
  .sheet { font-size: 10pt; width: calc(100% - 2px); }
  .sheet th, .sheet td { height: 9mm; min-width: 0; }
  .part:has(.sheet) { break-before: page; border-top: 0; }
  thead th, .checks tbody th { min-width: 0; }
  th, td, .checks :is(th, td) { padding-right: 0.5rem; }
  .checks :is(th, td) { padding-block: 0.2rem; }
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
  .answers { display: block; margin: 1.4rem 0 -9rem; padding: 0.8rem 0 9rem; border-top: 1px solid var(--grid); }
  .answers > h2 { margin: 0; }
  .answers > h3 { margin: 1em 0 0.3em; }
  .reports li:last-child { border-bottom: 0; }
  .foot { margin-top: 1rem; padding-top: 0.7rem; }
}
`;
