/** Search and lists of the page that leads to all reports. */
export const searchStyle = `
.search { margin: 1.6rem 0 0; max-width: 46rem; font: 0.9375rem/1.5 var(--sans); }
.search[hidden] { display: none; }
.search label { display: block; font-weight: 600; margin-bottom: 0.3rem; }
.search input { font: inherit; font-size: 1.0625rem; color: var(--ink); background: var(--paper); border: 1px solid var(--quiet1); border-radius: 3px; padding: 0.45rem 0.7rem; width: 100%; max-width: 30rem; }
.search .found { margin: 0.5rem 0 0; min-height: 1.5em; color: var(--quiet1); }
.search .finds { list-style: none; padding: 0; margin: 0; max-width: none; }
.search .finds li { padding: 0.6rem 0; margin: 0; border-top: 1px solid var(--grid); }
.search .finds a { font-weight: 600; }
.search .finds p { margin: 0.1rem 0 0; max-width: none; color: var(--quiet1); }
.search mark { color: var(--ink); background: none; font-weight: 650; text-decoration: underline; text-decoration-color: var(--rope); }
.roles { display: grid; grid-template-columns: repeat(auto-fit, minmax(min(13rem, 100%), 1fr)); gap: 1.6rem 1.8rem; }
.roles h3 { margin: 0; }
.roles p { margin: 0.2rem 0 0.6rem; color: var(--quiet1); font: 0.9375rem/1.45 var(--sans); }
.roles ul { list-style: none; margin: 0; padding: 0; font: 0.9375rem/1.45 var(--sans); }
@media print {
  .search { display: none; }
}
`;
