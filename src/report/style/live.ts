/**
 * The panel in which a reader tries a boat of their own: controls beside what they do. The parts of a page are painted
 * each by itself, so that a panel that moves leaves the pictures of all others as they are.
 */
export const liveStyle = `
.opening, .picture, .contents, .part { isolation: isolate; }
.trial { display: grid; grid-template-columns: minmax(0, 1fr); gap: 1.6rem 3rem; }
.setting { display: contents; }
.trial .controls[hidden] { display: none; }
.controls { font: 0.9375rem/1.4 var(--sans); max-width: 36rem; }
.controls > * { padding: 0.7rem 0; margin: 0; border: 0; border-bottom: 1px solid var(--grid); min-width: 0; }
.controls > :first-child { padding-top: 0; }
.controls > :nth-last-child(-n + 2) { border-bottom: 0; }
.slide { display: flex; flex-wrap: wrap; justify-content: space-between; gap: 0 1rem; }
.slide output { font-weight: 600; white-space: nowrap; }
.slide input { flex: 1 0 100%; width: 100%; margin: 0.4rem 0 0; height: 1.5rem; accent-color: var(--water); cursor: pointer; }
.choice { display: flex; flex-wrap: wrap; align-items: baseline; gap: 0.3rem 1.1rem; }
.choice > :first-child { flex: 1 0 100%; padding: 0; }
fieldset.choice > legend { float: left; width: 100%; }
.choice select { font: inherit; color: var(--ink); background: var(--paper); border: 0; border-bottom: 1.5px solid var(--water); border-radius: 0; padding: 0.35rem 0.2rem; min-height: 2.2rem; max-width: 100%; }
.controls label:has(input[type="radio"]), .controls .switch { display: inline-flex; align-items: center; gap: 0.45rem; min-height: 1.9rem; cursor: pointer; }
.controls .switch { display: flex; }
.controls input[type="radio"], .controls input[type="checkbox"] { accent-color: var(--water); width: 1.05rem; height: 1.05rem; margin: 0; }
.controls label:has(input[type="radio"]:checked), .controls .switch:has(:checked) { font-weight: 600; }
.controls .units { display: flex; flex-wrap: wrap; gap: 0.2rem 1.8rem; color: var(--quiet1); }
.units .choice { border: 0; margin: 0; padding: 0; min-width: 0; gap: 0 0.9rem; }
.actions { display: flex; flex-wrap: wrap; gap: 0.4rem 1.6rem; align-items: baseline; }
.actions button { font: inherit; color: var(--water); background: none; border: 0; padding: 0.3rem 0; text-align: left; text-decoration: underline; text-decoration-thickness: 1px; text-underline-offset: 0.18em; cursor: pointer; }
.actions button:hover { text-decoration-thickness: 2px; }
.actions .link { flex: 1 0 100%; }
.actions .link[hidden] { display: none; }
.actions .link input { font: inherit; width: 100%; color: var(--ink); background: var(--paper); border: 1px solid var(--quiet2); padding: 0.3rem 0.4rem; }
.controls .told { padding: 0; color: var(--rope); max-width: none; }
.sentence { font-size: 1.1875rem; line-height: 1.4; font-weight: 600; margin: 0; }
.numbers-now .results { margin: 0; }
.trial .broad { max-width: 40rem; }
.trial .slim { display: none; }
.trial figure, .numbers-now { contain: layout style; }
.trial figure { margin: 0; max-width: none; min-width: 0; }
@media (min-width: 60rem) {
  .trial.open { grid-template-columns: 18rem minmax(0, 1fr); grid-template-rows: auto auto 1fr; }
  .trial .controls { grid-column: 1; grid-row: 1 / span 3; }
  .trial > :not(.setting), .setting > :not(.controls) { grid-column: -2 / -1; }
}
@media (max-width: 39.99rem) {
  .trial .broad { display: none; }
  .trial .slim { display: block; }
}
@media screen and (max-width: 59.99rem) {
  .setting { display: grid; gap: 1.2rem; }
  .trial.open .sentence { position: sticky; top: 0; z-index: 1; background: var(--paper); padding: 0.5rem 0; border-bottom: 1px solid var(--grid); font-size: 1.0625rem; }
}
`;
