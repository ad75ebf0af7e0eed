/** Words of the trade: their links in the text and their list. */
export const wordStyle = `
.word { color: inherit; text-decoration: underline dotted var(--rope) 0.09em; text-underline-offset: 0.2em; }
.word:hover { color: var(--rope); text-decoration-thickness: 0.12em; }
.words > summary { font: 0.9375rem/1.5 var(--sans); }
.words dl { margin: 0.8rem 0 0; max-width: 46rem; border-top: 1px solid var(--grid); font: 0.9375rem/1.45 var(--sans); }
.words dl > div { display: grid; grid-template-columns: minmax(8rem, 12rem) minmax(0, 1fr); gap: 0 1rem; padding: 0.4rem 0.3rem; border-bottom: 1px solid var(--grid); scroll-margin-top: 1rem; }
.words dl > :target { outline: 2px solid var(--water); }
.words dt { font-weight: 600; }
.words dd { margin: 0; }
@media (max-width: 29.99rem) {
  .words dl > div { grid-template-columns: minmax(0, 1fr); }
}
@media print {
  .word { text-decoration: none; }
}
`;
