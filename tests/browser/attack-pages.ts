import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { join } from "node:path";
import { realDisk } from "../../src/cli/disk.js";
import type { CellOutput, ExecutedNotebook, ProseCell } from "../../src/notebook/executed.js";
import type { Figure, Shown } from "../../src/notebook/output.js";
import { buildReports } from "../../src/report/build.js";

const plotly = readFileSync(createRequire(import.meta.url).resolve("plotly.js-dist-min"), "utf8");
const bundles = new URL("../../dist/page/bundles/", import.meta.url);
export const marker = "attacked by";

/** Texts that would run, or call home, wherever a page took them for anything but text. */
export const payloadOf = (address: string) =>
  `${marker} </script></title></style></textarea><script>window.attacked='script'</script>` +
  `<img src="${address}/img" onerror="window.attacked='img'"><svg onload="window.attacked='svg'">` +
  `<a href="javascript:window.attacked='link'">a</a><iframe srcdoc="<script>parent.attacked=1</script>"></iframe>` +
  `" onmouseover="window.attacked='attribute'" style="background:url(${address}/css)" x='` +
  "<!--<script>\u2028%{x} {{attacked=1}} &lt;script&gt;";

export interface Page {
  readonly prose?: string;
  readonly shown?: readonly Shown[];
  readonly code?: string;
  readonly printed?: string;
  readonly heading?: string;
}

function notebook({ prose = "", shown = [], code = "1;", printed, heading = "Hold?" }: Page): ExecutedNotebook {
  const cell = (number: number, source: string): ProseCell => ({ type: "markdown", number, source });
  const answered = shown.some(({ kind }) => kind === "answer");
  const outputs: CellOutput[] = [...(answered ? [] : [{ kind: "answer", text: "86 N." } as const]), ...shown];
  if (printed !== undefined) outputs.push({ kind: "stream", stream: "stdout", text: printed });
  return {
    name: "page",
    cells: [cell(1, `# ${heading}`), { type: "code", number: 2, source: code, outputs }, cell(3, `## Why\n\n${prose}`)],
  };
}

const minisearch = readFileSync(
  join(createRequire(import.meta.url).resolve("minisearch"), "../../umd/index.js"),
  "utf8",
);

let count = 0;

/** Builds a page in both forms; answers with its folder, or with the refusal. */
export async function buildIn(
  folder: string,
  page: Page,
  name = "page",
  inputs?: readonly string[],
): Promise<{ place: string; refusal: string }> {
  const place = join(folder, String(count++));
  let refusal = "";
  for (const singleFile of [false, true]) {
    const { failures } = await buildReports({
      notebooks: [{ name, path: `${name}.ipynb`, ...(inputs && { inputs }) }],
      outputFolder: join(place, singleFile ? "single" : "folder"),
      singleFile,
      run: async () => notebook(page),
      files: realDisk("attack"),
      minisearch: async () => minisearch,
      plotly: async () => plotly,
      panel: async (model) => readFileSync(new URL(`${model}.js`, bundles), "utf8"),
      log: () => {},
      now: () => 0,
    });
    refusal = failures.map(({ message }) => message).join("\n");
  }
  return { place, refusal };
}

export const figureWith = (text: string): Figure => ({
  kind: "figure",
  name: "hold",
  title: `Title ${text}`,
  caption: `Caption ${text}`,
  altText: `Alternative ${text}`,
  x: { title: `Load ${text}` },
  y: { title: `Hand ${text}` },
  top: { title: `Wind ${text}`, marks: [{ at: 50, label: "<svg/onload=attacked=1>" }] },
  panels: ["one", "two"].map((panel) => ({
    title: `${panel} ${text}`,
    series: [
      { name: `pair ${text}`, x: [0, 50, 100], hauling: [0, 60, 120], easing: [0, 40, 80], highlight: true },
      { name: `curve ${text}`, x: [0, 50, 100], line: [0, 50, 100] },
      { name: `points ${text}`, x: [10, 20], points: [10, 20] },
    ],
    limits: [{ name: `limit ${text}`, value: 90, low: 80, high: 100 }],
  })),
});
