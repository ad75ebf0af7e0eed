/** Lines and words of a drawn figure; colours are those of its page. */
export const drawingStyle = `.drawing { display: block; width: 100%; height: auto; fill: var(--ink); font-family: var(--sans); font-variant-numeric: lining-nums tabular-nums; }
.drawing text { user-select: text; -webkit-user-select: text; }
.drawing svg { overflow: visible; }
.drawing svg.clipped { overflow: hidden; }
.drawing .plot > g { fill: none; stroke-linejoin: round; }
.drawing .grid { stroke: var(--grid); fill: none; }
.drawing .axis { stroke: var(--ink); fill: none; }
.drawing .axis.upper { stroke: var(--rope); }
.drawing .ticks.upper, .drawing .axis-title.upper { fill: var(--rope); }
.drawing .ticks { text-anchor: middle; }
.drawing .ticks.y { text-anchor: end; }
.drawing .panel-title, .drawing .name.strong { font-weight: 650; }
.drawing .panel-title { font-size: 1.1em; }
.drawing path.limit { stroke: var(--brick); fill: none; }
.drawing rect.limit { fill: var(--brick); opacity: 0.1; }
.drawing text.limit { fill: var(--brick); }
.drawing .name { paint-order: stroke; stroke: var(--paper); stroke-width: 3px; stroke-linejoin: round; }
.drawing .leader { fill: none; opacity: 0.6; }
`;
