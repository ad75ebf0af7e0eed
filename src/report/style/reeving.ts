/** Drawings of lines: one arrangement for wide pages and paper, one for narrow pages. */
export const reevingStyle = `
.reeving svg { display: block; font-variant-numeric: lining-nums tabular-nums; }
.reeving text { user-select: text; -webkit-user-select: text; }
.reeving .on-narrow { display: none; }
@media screen and (max-width: 44.99rem) {
  .reeving .on-wide { display: none; }
  .reeving .on-narrow { display: block; margin: 0 -0.5rem; }
}
@media print { .reeving svg { max-height: 200mm; } }
`;
