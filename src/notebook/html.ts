import type { CheckResult } from "../published/row.js";
import { figures } from "../quantity/print.js";
import { escapeHtml } from "./escape.js";
import { foldHtml } from "./fold.js";
import { plainMarked } from "./marker.js";
import { coefficientTable, outcomeWords } from "./notes.js";
import type { DrawnReeving, Figure, Shown, Table } from "./output.js";
import { lightPalette, plotlyFigure } from "./plotly.js";
import { drawingSvg } from "./reeving/drawing-svg.js";
import { reevingDrawing } from "./reeving/reeving-drawing.js";
import { stationTable } from "./reeving/station-table.js";
import { workingHtml } from "./working-html.js";

/** Makes the HTML with which a live notebook shows a thing. */
export type LiveHtml = (shown: Shown) => string;

/**
 * Makes what a live notebook shows, for one kernel session: the first figure brings the chart library along, later ones use it.
 *
 * @param librarySource  gives the text of the chart library
 * @returns function from a shown thing to HTML that needs no network and no module loader
 * Example: liveHtml(() => source)({ kind: "answer", text: "About 80 N." }) → "<p><strong>About 80 N.</strong></p>"
 */
export function liveHtml(librarySource: () => string): LiveHtml {
  let figuresShown = 0;
  const numbered = (figure: Figure) => {
    figuresShown += 1;
    const library = figuresShown === 1 ? librarySource() : undefined;
    return figureHtml(figure, `haulbook-figure-${figuresShown}`, library);
  };
  return (shown) => {
    switch (shown.kind) {
      case "figure":
        return numbered(shown);
      case "panel":
        return `<p><strong>${escapeHtml(shown.sentence)}</strong></p>${tableHtml({
          kind: "table",
          caption: "The page's own case; its controls work on the report page",
          columns: ["What", "Value", "Likely"],
          rows: shown.results.map(({ label, text, range = "" }) => [label, text, range]),
        })}${numbered(shown.figure)}`;
      case "reeving":
        return reevingHtml(shown);
      case "table":
        return tableHtml(shown);
      case "result": {
        const range = shown.range === undefined ? "" : ` <span>(${escapeHtml(shown.range)})</span>`;
        const working = shown.working === undefined ? "" : workingHtml(shown.label, shown.working);
        return `<p>${escapeHtml(shown.label)}: <strong>${escapeHtml(shown.text)}</strong>${range}</p>${working}`;
      }
      case "title":
        return `<h2>${escapeHtml(shown.text)}</h2>`;
      case "answer":
        return `<p><strong>${escapeHtml(plainMarked(shown.text))}</strong></p>`;
      case "question":
        return foldHtml(escapeHtml(shown.question), `<p>${escapeHtml(plainMarked(shown.answer))}</p>`);
      case "checks":
        return tableHtml({
          kind: "table",
          caption: shown.title,
          columns: checkColumns,
          rows: shown.results.map(checkRow),
        });
      case "verdicts":
        return tableHtml({
          kind: "table",
          caption: shown.caption,
          columns: ["What", "Verdict", "Why", "Nearest change that passes"],
          rows: shown.verdicts.map(({ subject, outcome, reason, change }) => [
            subject,
            outcomeWords[outcome],
            reason,
            change ?? "",
          ]),
        });
      case "rule":
        return `<p>${escapeHtml(shown.text)} <span>(${escapeHtml(shown.range)})</span></p>`;
      case "sheetTable":
        return tableHtml({
          kind: "table",
          caption: shown.caption,
          columns: shown.columns,
          rows: shown.rows.map((row) => shown.columns.map((_, column) => row[column] ?? "")),
        });
      case "workings":
        return shown.entries.map(({ name, working }) => workingHtml(name, working)).join("\n");
      case "coefficients":
        return foldHtml(escapeHtml(shown.caption), tableHtml(coefficientTable(shown)));
    }
  };
}

function tableHtml({ caption, columns, rows }: Table): string {
  const row = (cells: readonly (string | number)[], tag: "th" | "td") =>
    `<tr>${cells.map((cell) => `<${tag}>${escapeHtml(typeof cell === "number" ? figures(cell) : plainMarked(cell))}</${tag}>`).join("")}</tr>`;
  const body = rows.map((cells) => row(cells, "td")).join("");
  return `<table><caption>${escapeHtml(caption)}</caption><thead>${row(columns, "th")}</thead><tbody>${body}</tbody></table>`;
}

const checkColumns = ["What", "Computed", "Expected", "Allowed ±", "Unit", "Holds", "Evidence", "Source"];

function checkRow(check: CheckResult): (string | number)[] {
  const { quantity, computed, expected, allowed, unit, holds, evidence, source, place } = check;
  return [
    quantity,
    computed,
    expected,
    allowed,
    unit === "1" ? "" : unit,
    holds ? "yes" : "NO",
    evidence,
    source === undefined ? place : `${source}, ${place}`,
  ];
}

/** Text of a script inside HTML: nothing in it can end the script element or open a comment in it. */
function scriptText(source: string): string {
  return source.replaceAll(/<(\/script|script|!--)/gi, "\\x3C$1");
}

function reevingHtml(shown: DrawnReeving): string {
  const drawing = reevingDrawing(shown);
  const [widest] = drawing.arrangements;
  const svg = drawingSvg(drawing, { width: widest?.width ?? 0, title: shown.title, altText: shown.altText });
  const numbers = tableHtml({ kind: "table", caption: "From the load to the hand", ...stationTable(shown) });
  return [
    `<figure style="margin:0"><p><strong>${escapeHtml(shown.title)}</strong></p>`,
    `<div style="background:${lightPalette.paper}">${svg}</div>`,
    `<figcaption>${escapeHtml(shown.caption)}</figcaption></figure>`,
    foldHtml("Numbers", numbers),
  ].join("\n");
}

function figureHtml(figure: Figure, id: string, library: string | undefined): string {
  const { data, layout, config } = plotlyFigure(figure, lightPalette, { columns: Math.min(2, figure.panels.length) });
  const chart = scriptText(JSON.stringify({ data, layout, config }));
  // The library looks for a module loader and would hand itself to it: inside this function it finds only what is given here.
  const load =
    library === undefined
      ? ""
      : `<script>(function () { var define, module = { exports: {} }, exports = module.exports;\n${scriptText(library)}\nwindow.Plotly = module.exports; })();</script>`;
  const missing = "The chart library came with the first figure of this session: restart the kernel and run all cells.";
  return [
    `<figure style="margin:0"><p><strong>${escapeHtml(figure.title)}</strong></p>`,
    `<div id="${id}" role="img" aria-label="${escapeHtml(figure.altText)}" style="width:100%"></div>`,
    `<figcaption>${escapeHtml(figure.caption)}</figcaption></figure>${load}`,
    `<script>(function () { var place = document.getElementById("${id}"), chart = ${chart};`,
    `if (window.Plotly) window.Plotly.newPlot(place, chart.data, chart.layout, chart.config);`,
    `else place.textContent = ${JSON.stringify(missing)}; })();</script>`,
  ].join("\n");
}
