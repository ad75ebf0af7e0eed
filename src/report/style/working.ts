/** Numbers that unfold, and the workings that they open. */
export const workingStyle = `
.worked, .symbols button {
  display: inline; font: inherit; color: inherit; letter-spacing: inherit; text-align: inherit; white-space: normal;
  background: none; border: 0; border-radius: 0; padding: 0; margin: 0; cursor: pointer;
  text-decoration: underline dotted var(--water) 0.09em; text-underline-offset: 0.2em;
}
.worked:hover, .symbols button:hover { color: var(--water); }
.how { max-width: 44rem; margin: 0 0 1.4rem; padding: 0.9rem 1.1rem; background: var(--paper); color: var(--ink); border: 1px solid var(--rope); border-radius: 3px; font: 0.875rem/1.5 var(--sans); text-align: left; }
.how[popover]:popover-open {
  position: fixed; inset: auto; top: 4rem; right: 1.25rem; margin: 0.4rem 0;
  width: min(40rem, 100vw - 2.5rem); max-height: min(36rem, 100vh - 6rem); overflow: auto; overscroll-behavior: contain;
  box-shadow: 0 0.3rem 1.4rem rgb(0 0 0 / 0.22);
}
@supports (position-area: bottom span-right) {
  @media (min-width: 45rem) {
    .how[popover]:popover-open { top: auto; right: auto; position-area: bottom span-right; max-height: min(36rem, 100% - 0.8rem); position-try: most-height bottom span-left, bottom, top span-right, top span-left, top; }
  }
}
@media (max-width: 44.99rem) {
  .how[popover]:popover-open { top: auto; left: 0; right: 0; bottom: 0; margin: 0; width: 100%; max-width: none; max-height: 75vh; border-width: 1px 0 0; border-radius: 0; }
}
.how > b { display: block; margin-bottom: 0.4rem; }
.shut { float: right; margin-left: 1rem; font: inherit; color: var(--water); background: none; border: 0; padding: 0.2rem 0; cursor: pointer; text-decoration: underline; text-underline-offset: 0.18em; }
.how p { max-width: none; margin: 0 0 0.3rem; }
.how .step { font-weight: 600; }
.how .formula { max-width: none; margin: 0 0 0.4rem; font-size: 1rem; }
.formula mtable { math-style: normal; }
.how .formula mtd { text-align: left; }
.how .formula mtd:first-child { text-align: right; }
.symbols { display: grid; grid-template-columns: 4.2rem minmax(0, 1fr); margin: 0.4rem 0 0.5rem; max-width: none; border-top: 1px solid var(--grid); }
.symbols > * { padding: 0.25rem 0; margin: 0; border-bottom: 1px solid var(--grid); }
.symbols dt { font-family: ui-serif, "Noto Serif", "DejaVu Serif", Georgia, serif; font-size: 0.9375rem; }
.symbols b { white-space: nowrap; }
.symbols p { margin: 0; font-size: 0.8125rem; color: var(--quiet1); }
.how .note { font-size: 0.8125rem; color: var(--quiet1); }
@media print {
  .worked { text-decoration: none; color: inherit; }
  .how { display: none; }
}
`;
