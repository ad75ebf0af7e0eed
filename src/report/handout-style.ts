import { lightPalette } from "../notebook/palette.js";
import { drawingStyle } from "./style/drawing.js";

const colours = Object.entries({ ...lightPalette, paper: "#ffffff" })
  .map(([role, colour]) => `--${role}: ${colour};`)
  .join(" ");

/** Style of the handout: a sheet of A4 for each topic, on the screen as on paper; the picture gives way where words need room. */
export const handoutStyle = `@page { size: A4 portrait; margin: 0; }
:root { color-scheme: light; ${colours} --sans: ui-sans-serif, system-ui, -apple-system, "Segoe UI", Roboto, "Noto Sans", "Liberation Sans", Arial, sans-serif; }
* { box-sizing: border-box; }
body { margin: 0; background: var(--grid); color: var(--ink); font: 10.5pt/1.35 ui-serif, "Iowan Old Style", Charter, "Source Serif 4", "Noto Serif", "DejaVu Serif", Georgia, serif; font-variant-numeric: lining-nums tabular-nums; overflow-wrap: break-word; }
p, ol, h1, h2, figure { margin: 0; }
a { color: inherit; }
.topic { width: 210mm; max-width: 100%; margin: 6mm auto; padding: 9mm 14mm 7mm; background: var(--paper); display: flex; flex-direction: column; gap: 3.4mm; }
.head { display: flex; align-items: flex-end; justify-content: space-between; flex-wrap: wrap; gap: 2mm 8mm; font: 8.5pt/1.2 var(--sans); }
.head b { color: var(--rope); }
.who { display: flex; gap: 5mm; flex: 0 1 118mm; }
.blank { display: flex; flex: 1; gap: 1.5mm; align-items: flex-end; white-space: nowrap; }
.blank::after { content: ""; flex: 1; min-width: 20mm; height: 6mm; border-bottom: 0.3mm solid var(--ink); }
h1 { font-size: 21pt; line-height: 1.12; letter-spacing: -0.01em; font-weight: 600; text-wrap: balance; }
.dense h1 { font-size: 15pt; }
h2 { font: 700 9.5pt/1.2 var(--sans); margin-bottom: 1.4mm; }
figure { display: flex; flex-direction: column; gap: 1.2mm; min-height: 0; }
figcaption { font: 600 9.5pt/1.3 var(--sans); text-wrap: balance; }
.picture { min-height: 0; }
.picture .drawing { max-height: 100%; }
.caption { font: 7.8pt/1.35 var(--sans); }
.line .beside { display: flex; gap: 14px; align-items: center; }
.line .drawn { flex: none; max-width: 100%; }
.line .drawn svg { display: block; }
.rules { border-top: 0.5mm solid var(--ink); padding-top: 2mm; }
.rules ol { padding-left: 5mm; display: grid; gap: 1.1mm; }
.rules li::marker { font: 700 9.5pt/1 var(--sans); color: var(--water); }
.rules .text { font-weight: 600; }
.rules .range { font: 8.8pt/1.35 var(--sans); }
.dense .rules { font-size: 9.5pt; }
.dense .rules .range { font-size: 8.2pt; }
.dense .sheet table { font-size: 8pt; }
.sheet { display: flex; flex-direction: column; }
.sheet table { border-collapse: collapse; width: 100%; table-layout: fixed; font: 8.8pt/1.25 var(--sans); flex: 1; }
.sheet caption { text-align: left; padding-bottom: 1.4mm; font: 9.5pt/1.3 var(--sans); }
.sheet caption b { margin-right: 1mm; }
.sheet th, .sheet td { border: 0.25mm solid var(--ink); padding: 0.8mm 1.6mm; text-align: left; vertical-align: middle; font-weight: 400; height: 7.2mm; }
.sheet thead th { font-weight: 600; vertical-align: bottom; height: auto; border-bottom-width: 0.5mm; }
.foot { display: flex; gap: 4mm; align-items: center; border-top: 0.5mm solid var(--ink); padding-top: 1.5mm; font: 7.8pt/1.35 var(--sans); }
.foot .code { display: block; flex: none; margin-left: -2.5mm; }
.foot .says { display: grid; gap: 1.2mm; min-width: 0; flex: 1; }
.foot .address { overflow-wrap: anywhere; }
.foot .cautions { padding-left: 2mm; border-left: 0.8mm solid var(--brick); }
@media screen and (max-width: 209mm) {
  .topic { padding: 5mm; margin: 0 0 4mm; }
  .sheet { overflow-x: auto; }
  .sheet table { min-width: 150mm; }
  .line .beside, .foot { flex-wrap: wrap; }
}
@media print {
  body { background: none; }
  .topic { height: 296.5mm; margin: 0; break-after: page; break-inside: avoid; }
  .topic:last-child { break-after: auto; }
  figure { flex: 0 1 auto; }
  .picture { flex: 0 1 auto; display: flex; justify-content: center; }
  .picture .drawing { height: auto; min-height: 0; }
  .line { flex: none; }
  .sheet { flex: 1 0 auto; }
  .head, h1, .rules, .foot { flex: none; }
  a { text-decoration: none; }
}
${drawingStyle}.drawing { overflow: visible; }
`;
