import { drawingStyle } from "./drawing.js";

/** Figures, tables, results, sketches. */
export const figureStyle = `
figure { margin: 2rem 0; max-width: 58rem; min-width: 0; }
figure.picture { max-width: none; margin: 2.2rem 0 0; }
figcaption { font: 600 1rem/1.4 var(--sans); max-width: 44rem; margin-bottom: 0.5rem; text-wrap: balance; }
.picture figcaption { font-size: 1.125rem; }
.caption, .note { display: block; font: 0.875rem/1.55 var(--sans); color: var(--quiet1); max-width: 44rem; margin: 0.5rem 0 0; }
.chart .wide { max-width: 60rem; }
.chart .narrow { display: none; max-width: 27rem; }
.chart .live { width: 100%; overflow: hidden; }
@media screen {
  .chart.exploring > :not(.live) { display: none; }
}
.explore { font: 0.875rem/1.5 var(--sans); color: var(--water); background: none; border: 0; padding: 0.35rem 0; margin-top: 0.2rem; text-decoration: underline; text-decoration-thickness: 1px; text-underline-offset: 0.18em; cursor: pointer; }
.explore:hover { text-decoration-thickness: 2px; }
.explore:disabled { color: var(--quiet1); cursor: progress; text-decoration: none; }
.numbers { font: 0.875rem/1.5 var(--sans); margin-top: 0.5rem; }
.numbers .scroll { margin-top: 0.8rem; }

${drawingStyle}
.rows > summary { font: 0.9375rem/1.5 var(--sans); margin-bottom: 1rem; }

.trace { font: 0.875rem/1.5 var(--sans); margin: 0 0 1.4rem; }
.trace .scroll { margin-top: 0.8rem; }
.trace td:last-child { min-width: 14rem; }

.verdicts { margin: 1.2rem 0 1.4rem; max-width: 46rem; font: 0.9375rem/1.5 var(--sans); }
.verdicts h3 { font-size: 0.9375rem; margin: 0 0 0.4rem; }
.verdicts ul { list-style: none; margin: 0; padding: 0; max-width: none; border-top: 1px solid var(--grid); }
.verdicts li { display: grid; grid-template-columns: 5.2rem minmax(0, 1fr); gap: 0 1rem; padding: 0.6rem 0; margin: 0; border-bottom: 1px solid var(--grid); }
.verdicts p { margin: 0.15rem 0 0; max-width: none; color: var(--quiet1); }
.verdicts .change { color: var(--water); }
.outcome { white-space: nowrap; border-left: 4px solid var(--quiet2); padding-left: 0.6rem; font-weight: 600; }
.unclear .outcome { border-left: 4px double var(--rope); color: var(--rope); }
.short .outcome { border-left-color: var(--brick); color: var(--brick); }

.results { margin: 1.2rem 0 1.4rem; }
.results > div { display: flex; flex-wrap: wrap; align-items: baseline; gap: 0 1.2rem; padding: 0.4rem 0; border-bottom: 1px solid var(--grid); }
.results > div:first-child { border-top: 1px solid var(--grid); }
.results dt { flex: 1 1 14rem; font: 0.9375rem/1.4 var(--sans); }
.results dd { margin: 0; font-size: 1.125rem; line-height: 1.3; }
.results .range { font: 0.875rem/1.4 var(--sans); color: var(--quiet1); }

.reports { list-style: none; padding: 0; max-width: none; margin: 0; }
.reports li { display: grid; grid-template-columns: minmax(0, 1fr); gap: 0.6rem 2.5rem; padding: 1.4rem 0; border-bottom: 1px solid var(--grid); margin: 0; }
.reports li:first-child { padding-top: 0.2rem; }
.reports h3 { margin: 0 0 0.35rem; font-size: 1.3125rem; }
.reports p { margin: 0; }
.sketch { width: 10rem; height: auto; display: block; }
.sketch * { fill: none; stroke: var(--quiet2); stroke-width: 1.4; stroke-linejoin: round; stroke-linecap: round; }
.sketch .frame { stroke: var(--grid); stroke-width: 1; }
.sketch .easing { stroke-dasharray: 4 3.4; }
.sketch .ours { stroke: var(--water); stroke-width: 2.4; }
.sketch .limit { stroke: var(--brick); stroke-width: 1; }
.sketch circle { fill: var(--quiet2); stroke: none; }
.sketch circle.ours { fill: var(--water); stroke: none; }
@media (min-width: 44rem) {
  .reports li { grid-template-columns: 11rem minmax(0, 1fr); align-items: start; }
  .sketch { width: 11rem; }
}

@media screen and (max-width: 719.98px) {
  .chart { margin: 0 -0.5rem; }
  .chart .wide { display: none; }
  .chart:not(.exploring) .narrow { display: block; }
}
@media (max-width: 44.99rem) {
  .verdicts li { grid-template-columns: minmax(0, 1fr); gap: 0.25rem; }
}
`;
