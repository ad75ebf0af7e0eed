import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { worksheet } from "../../src/calibration/worksheet.js";
import { livePanel } from "../../src/live/panel.js";
import { handoutHtml } from "../../src/report/handout-page.js";
import { worksheetHtml } from "../../src/report/worksheetpage.js";
import { long } from "../long.js";
import { limp, ring } from "../reeving/builders.js";
import { buildIn, figureWith, marker, type Page, payloadOf } from "./attack-pages.js";
import { type Outside, outside, visit } from "./attacks.js";
import { blank, chromiumPath, launch, missing } from "./chromium.js";

let out: Outside;
let browser: Browser;
let folder: string;
const payload = () => payloadOf(out.address);
const build = (page: Page, name?: string, inputs?: readonly string[]) => buildIn(folder, page, name, inputs);

const safeLink = /^(?:https?:\/\/|mailto:|#|(?![a-z][a-z0-9+.-]*:|\/|\\))/iu;

/** Nothing ran, nothing was asked for, and the text of the attack stands on the page as text. */
async function harmless(place: string, name = "page", stands = true): Promise<void> {
  for (const form of ["folder", "single"]) {
    // Pages that lead to reports are the same in both forms but for what is inside.
    for (const file of form === "folder" ? [name, "index", "checks"] : [name]) {
      const path = join(place, form, `${file}.html`);
      if (file === "checks" && !readFileSync(path, "utf8").includes(marker)) continue;
      const address = pathToFileURL(path);
      const { trouble, text, links } = await visit(browser, address);
      expect(trouble, `${form}/${file}`).toEqual([]);
      if (file === name && stands) expect(text).toContain(marker);
      for (const link of links) expect(link).toMatch(safeLink);
    }
  }
  expect(await out.taken(browser)).toEqual([]);
}

/** Everything on a page that can carry a text, with that text. */
const rows: readonly (readonly [where: string, page: (text: string) => Page])[] = [
  [
    "prose and raw HTML in markdown",
    (text) => ({ prose: `${text}\n\n> ${text}\n\n- ${text}\n\n\`${text}\`\n\n    ${text}` }),
  ],
  ["a heading and the question", (text) => ({ heading: text, prose: `### ${text}` })],
  ["the title that a cell computes", (text) => ({ shown: [{ kind: "title", text }] })],
  ["the answer", (text) => ({ shown: [{ kind: "answer", text }] })],
  ["a question to the reader", (text) => ({ shown: [{ kind: "question", question: text, answer: text }] })],
  [
    "a verdict, with the name of a boat or a line as its subject",
    (text) => ({
      shown: [
        {
          kind: "verdicts",
          caption: text,
          verdicts: [{ subject: text, outcome: "not enough", reason: text, change: text }],
        },
      ],
    }),
  ],
  [
    "a table: caption, heads, cells, a formula of a spreadsheet",
    (text) => ({
      shown: [
        {
          kind: "table",
          caption: text,
          columns: [text, "b"],
          rows: [
            [text, 1],
            [`=HYPERLINK("${out.address}/cell";"x")`, text],
          ],
        },
      ],
    }),
  ],
  ["a result", (text) => ({ shown: [{ kind: "result", label: text, text, range: text }] })],
  [
    "a coefficient: its name, its place",
    (text) => ({
      shown: [
        {
          kind: "coefficients",
          caption: text,
          entries: [
            { name: text, record: { value: 1, unit: "1", low: 1, high: 1, status: "from memory", place: text } },
          ],
        },
      ],
    }),
  ],
  [
    "a comparison: its quantity, its place",
    (text) => ({
      shown: [
        {
          kind: "checks",
          title: text,
          results: [
            {
              id: text,
              quantity: text,
              printed: "1",
              unit: text,
              evidence: "exact",
              status: "published",
              source: "statics",
              place: text,
              computed: 1,
              expected: 1,
              allowed: 0.5,
              deviation: 0,
              holds: true,
            },
          ],
        },
      ],
    }),
  ],
  ["code, and what a cell prints", (text) => ({ code: `"${text}";`, printed: text })],
  [
    "a line as it is rove: title, words, names of its parts",
    (text) => ({
      shown: [
        {
          kind: "reeving",
          name: "line",
          title: text,
          caption: text,
          altText: text,
          words: { load: text, hand: text },
          line: { rope: limp, stations: [{ ...ring, name: text }] },
          load: 490,
        },
      ],
    }),
  ],
  ["a rule to keep", (text) => ({ shown: [{ kind: "rule", text, range: text }] })],
  // Short texts: a chart has no room for long ones.
  [
    "figures: title, alternative text, axes, series, panels, limits, their data",
    () => ({
      shown: [
        `</script><script>window.attacked="data"</script>`,
        `<img src=x onerror=window.attacked="img">`,
        `"><svg onload=window.attacked="svg">`,
        `<a href="javascript:attacked=1">a</a>`,
        "%{customdata} <ink> <!--<script>",
      ].map((text, index) => ({ ...figureWith(`${marker} ${text}`), name: `figure-${index}` })),
    }),
  ],
];

describe.skipIf(chromiumPath === undefined)(`an attack on a page${chromiumPath ? "" : ` (${missing})`}`, () => {
  beforeAll(async () => {
    out = await outside();
    browser = await launch();
    folder = mkdtempSync(join(tmpdir(), "haulbook-attacks-"));
  });
  afterAll(async () => {
    await browser?.close();
    out?.close();
    rmSync(folder, { recursive: true, force: true });
  });

  it("would be seen here", async () => {
    const bare = join(folder, "bare.html");
    writeFileSync(bare, `<main><p>${payload()}</p></main>`);
    const { trouble, links } = await visit(browser, pathToFileURL(bare));
    expect(trouble.join("\n")).toMatch(/ran: /u);
    expect(trouble.join("\n")).toMatch(/request: http:.*\/img/u);
    expect(trouble.join("\n")).toMatch(/handler: img onerror/u);
    expect(links.some((link) => !safeLink.test(link))).toBe(true);
    expect(await out.taken(browser)).toContain("/img");
  });

  it.each(rows)("does nothing in %s", async (_, page) => {
    const { place, refusal } = await build(page(payload()));
    expect(refusal).toBe("");
    await harmless(place);
  });

  it("does nothing in links, which lead to the web, to mail, or to places beside the page", async () => {
    const bad = [
      "javascript:window.attacked=1",
      "JaVaScRiPt:window.attacked=1",
      "java\tscript:window.attacked=1",
      "&#106;avascript:window.attacked=1",
      "java&NewLine;script:window.attacked=1",
      "%6aavascript:window.attacked=1",
      "\u0001javascript:window.attacked=1",
      "vbscript:x",
      "data:text/html,<script>window.attacked=1</script>",
      "data:image/svg+xml,<svg onload=window.attacked=1>",
      "blob:x",
      "file:///etc/passwd",
      "view-source:x",
      `//${new URL(out.address).host}/x`,
      `\\\\${new URL(out.address).host}/x`,
      "/\\evil.example",
      "/etc/passwd",
    ];
    const good = ["https://example.org/a?b#c", "http://example.org", "mailto:a@example.org", "index.html", "#why"];
    const forms = (address: string, index: number) =>
      `[${marker}](<${address}>) [${marker}](${address}) <${address}> [${marker}][r${index}]\n\n[r${index}]: <${address}>`;
    const { place, refusal } = await build({
      prose: [...bad.map(forms), ...good.map((one, at) => forms(one, at + 100))].join("\n\n"),
    });
    expect(refusal).toBe("");
    await harmless(place);
    const { links } = await visit(browser, pathToFileURL(join(place, "folder", "page.html")));
    for (const address of good) expect(links).toContain(address);
  });

  it.each([
    ["a picture from elsewhere", () => `![x](${out.address}/picture)`, "cannot be carried by a page"],
    ["a link in a formula", () => "$\\href{javascript:window.attacked=1}{x}$", "is not allowed on a page"],
    ["a picture in a formula", () => `$\\includegraphics{${out.address}/x}$`, "is not allowed on a page"],
    ["HTML in a formula", () => "$\\htmlData{x=1}{y}$", "is not allowed on a page"],
    ["a style in a formula", () => `$\\htmlStyle{background:url(${out.address}/x)}{y}$`, "is not allowed on a page"],
  ])("is refused as %s, with the place", async (_, prose, words) => {
    const { refusal } = await build({ prose: prose() });
    expect(refusal).toContain("page.ipynb");
    expect(refusal).toContain(words);
    expect(await out.taken(browser)).toEqual([]);
  });

  it.each([
    'x" onmouseover="window.attacked=1" <img src=q onerror=window.attacked=1>',
    "javascript:window.attacked=1,x",
    "data:text,<script>window.attacked=1<\\script>",
    "#%2e%2e?a&b=c;'`",
  ])("does nothing in the name of a file: %s", async (name) => {
    const { place, refusal } = await build({}, name, [`${marker} ${name}.yaml`]);
    expect(refusal).toBe("");
    await harmless(place, name);
    // The index leads to the page and nowhere else.
    const page = await blank(browser);
    await page.goto(pathToFileURL(join(place, "folder", "index.html")).href);
    await page.locator("ul.reports a").first().click();
    await page.locator(".answer").waitFor();
    expect(fileURLToPath(page.url())).toBe(join(place, "folder", `${name}.html`));
    await page.context().close();
  });

  it("does nothing in the address of a live panel", async () => {
    const { place, refusal } = await build({ shown: [livePanel("what-the-hand-feels")] });
    expect(refusal).toBe("");
    const controls = Object.keys(livePanel("what-the-hand-feels").controls);
    for (const text of [payload(), "__proto__", ...long([], ["javascript:window.attacked=1", "constructor"])]) {
      const spelled = encodeURIComponent(text);
      const all = controls.map((name) => `${name}=${spelled}`).join("&");
      for (const behind of [`#try:${all}`, `#try:${spelled}=1`, `?${all}#${spelled}`]) {
        const page = pathToFileURL(join(place, "folder", "page.html"));
        const { trouble } = await visit(browser, new URL(page.href + behind));
        expect(trouble, behind).toEqual([]);
      }
    }
    expect(await out.taken(browser)).toEqual([]);
  });

  it("does nothing on a handout", async () => {
    const text = payload();
    const rules = [{ text, range: text }];
    const sheetTable = { kind: "sheetTable", caption: text, columns: [text, text], rows: [[text], []] } as const;
    const topic = {
      name: text,
      question: text,
      handout: { demo: true, picture: figureWith(marker), rules, sheetTable },
    };
    const file = join(folder, "handout.html");
    writeFileSync(file, handoutHtml({ topics: [topic] }));
    const { trouble, text: shown } = await visit(browser, pathToFileURL(file));
    expect(trouble).toEqual([]);
    expect(shown).toContain(marker);
    expect(await out.taken(browser)).toEqual([]);
  });

  it("does nothing in the name of a line on a sheet to print", async () => {
    mkdirSync(join(folder, "sheet"));
    const file = join(folder, "sheet", "sheet.html");
    const name = `${marker}<img src=x onerror=window.attacked=1>" onfocus="x`;
    writeFileSync(file, worksheetHtml(worksheet([{ name }])));
    const { trouble, text } = await visit(browser, pathToFileURL(file));
    expect(trouble).toEqual([]);
    expect(text).toContain(name);
  });
});
