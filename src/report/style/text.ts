/** Words: columns, headings, lists, formulas, code, links. */
export const textStyle = `
* { box-sizing: border-box; }
html { -webkit-text-size-adjust: 100%; text-size-adjust: 100%; background: var(--paper); }
body {
  margin: 0 auto; max-width: 74rem; padding: 0 1.25rem 3rem;
  background: var(--paper); color: var(--ink);
  font: 1.0625rem/1.6 ui-serif, "Iowan Old Style", Charter, "Source Serif 4", "Noto Serif", "DejaVu Serif", Georgia, serif;
  font-variant-numeric: lining-nums tabular-nums; overflow-wrap: break-word; hanging-punctuation: first last;
}
:root { --sans: ui-sans-serif, system-ui, -apple-system, "Segoe UI", Roboto, "Noto Sans", "Liberation Sans", Arial, sans-serif; --measure: 36rem; }
p, ul, ol, dl, blockquote, .formula { margin: 0 0 1em; max-width: var(--measure); }
a { color: var(--water); text-decoration-thickness: 1px; text-underline-offset: 0.18em; }
a:hover { text-decoration-thickness: 2px; }
:focus-visible { outline: 3px solid var(--water); outline-offset: 3px; border-radius: 2px; }
h1, h2, h3, h4 { line-height: 1.2; text-wrap: balance; font-weight: 600; }
h3, h4 { font-size: 1.0625rem; margin: 1.8em 0 0.4em; }
blockquote { padding-left: 1.1rem; border-left: 2px solid var(--rope); margin-left: 0; }
li { margin-bottom: 0.35em; }
li::marker { color: var(--rope); }
code, pre { font: 0.84em/1.55 ui-monospace, "Cascadia Mono", Menlo, "DejaVu Sans Mono", monospace; }
pre { overflow-x: auto; margin: 0.5rem 0 1rem; padding-left: 1rem; border-left: 2px solid var(--grid); white-space: pre; }
math { font-size: 1.08em; }
.formula { overflow-x: auto; overflow-y: hidden; padding: 0.25rem 0; }
.formula math { display: inline math; }
hr { border: 0; border-top: 1px solid var(--grid); margin: 2rem 0; max-width: var(--measure); }

.skip { position: absolute; left: 0.5rem; top: -4rem; padding: 0.5rem 0.9rem; background: var(--paper); border: 1px solid var(--water); border-radius: 3px; font: 0.9375rem/1.4 var(--sans); z-index: 3; }
.skip:focus { top: 0.5rem; }
main:focus { outline: none; }

.top { padding: 1.5rem 0 0; font: 600 0.8125rem/1.4 var(--sans); color: var(--rope); display: flex; gap: 0.4rem 1.5rem; flex-wrap: wrap; }
.top span { letter-spacing: 0.02em; }
.top a { color: var(--rope); font-weight: 400; }
.opening { padding: 2.5rem 0 1rem; }
h1 { font-size: clamp(1.9rem, 1.3rem + 2.6vw, 3rem); letter-spacing: -0.012em; margin: 0 0 0.6em; max-width: 22em; line-height: 1.12; }
.answer { font-size: clamp(1.15rem, 1.05rem + 0.5vw, 1.375rem); line-height: 1.45; font-weight: 700; max-width: 33em; margin: 0; }
.answer p { margin: 0 0 0.4em; max-width: none; }

.contents { font: 0.875rem/1.5 var(--sans); margin: 2rem 0 0; max-width: 60rem; }
.contents ol { list-style: none; margin: 0.3rem 0 0; padding: 0; max-width: none; display: flex; flex-wrap: wrap; gap: 0.3rem 1.6rem; }
.contents li { margin: 0; }

.part { padding-top: 1.2rem; margin-top: 2.6rem; border-top: 1px solid var(--grid); }
.part.lead { border-top: 0; margin-top: 1rem; }
.part > h2 { font-size: 1.375rem; margin: 0 0 0.8rem; color: var(--ink); }
.body > :first-child { margin-top: 0; }
.body > :last-child { margin-bottom: 0; }
@media (min-width: 60rem) {
  .part:not(.full) { display: grid; grid-template-columns: 12rem minmax(0, 1fr); column-gap: 2.5rem; }
  .part > h2 { font-size: 1.125rem; line-height: 1.35; padding-top: 0.1rem; }
  .body { grid-column: 2; min-width: 0; }
}

summary { cursor: pointer; color: var(--water); }
summary::marker { color: var(--rope); }
details > :not(summary):first-of-type { margin-top: 0.6rem; }
.question { max-width: var(--measure); margin: 0 0 1.1rem; }
.question summary { color: var(--ink); font-weight: 600; padding-left: 1.3rem; text-indent: -1.3rem; }
.question summary p { display: inline; }
.question .reply { padding-left: 1.3rem; }
.question .reply > :last-child { margin-bottom: 0; }
.answers { display: none; }
[aria-labelledby="take-care"] li::marker { color: var(--brick); }
p.cautions { padding-left: 1.1rem; border-left: 3px solid var(--brick); }
.cell { margin: 0 0 0.7rem; font: 0.875rem/1.5 var(--sans); }
.cell .printed { border-left-color: var(--rope); }
.cell p { font: inherit; margin: 0; color: var(--quiet1); }
.sources { padding-left: 2rem; font-size: 0.9375rem; }
.seen { color: var(--quiet1); }
.sheet { border-collapse: collapse; width: 100%; font: 0.875rem/1.4 var(--sans); }
.sheet th, .sheet td { border: 1px solid var(--rope); padding: 0.2rem 0.5rem; text-align: left; height: 2.3rem; min-width: 4.2rem; overflow-wrap: anywhere; }
.foot { margin-top: 3.5rem; padding-top: 1.2rem; border-top: 3px double var(--rope); font: 0.8125rem/1.55 var(--sans); color: var(--quiet1); }
.foot p { max-width: 46rem; }
`;
