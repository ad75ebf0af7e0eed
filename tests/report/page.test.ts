import { createHash } from "node:crypto";
import { describe, expect, it } from "vitest";
import type { CellOutput, ExecutedNotebook } from "../../src/notebook/executed.js";
import type { Figure } from "../../src/notebook/output.js";
import { sharedChecks } from "../../src/report/checklist.js";
import { checksPage } from "../../src/report/checkspage.js";
import { indexPage } from "../../src/report/indexpage.js";
import { recordOf } from "../../src/report/record.js";
import { reportPage } from "../../src/report/reportpage.js";
import { sample, sampleChecks } from "./sample.js";

const page = reportPage(sample, {});
/** Places of the marks in the page, in the order given; each must be there. */
function places(text: string, marks: readonly string[]): number[] {
  return marks.map((mark) => {
    expect(text).toContain(mark);
    return text.indexOf(mark);
  });
}

function withOutputs(outputs: readonly CellOutput[], name = "a"): ExecutedNotebook {
  return {
    name,
    cells: [
      { type: "markdown", number: 1, source: "# Question?" },
      { type: "code", number: 3, source: "answer()", outputs: [{ kind: "answer", text: "Yes." }, ...outputs] },
    ],
  };
}

describe("report page", () => {
  it("runs from the question to the sources", () => {
    const order = places(page, [
      "<h1>How hard do I have to hold?</h1>",
      '<div class="answer">',
      '<figure id="figure-hold-by-cover" class="picture">',
      '<details class="contents" open>',
      "of the demo skiff in a breeze",
      '<h2 id="why-a-turn-helps">',
      '<figure id="figure-turn-by-angle">',
      '<h2 id="which-cover">',
      "Covers on the demo sheave",
      '<dl class="results">',
      '<h2 id="ashore">',
      '<details class="question">',
      '<h2 id="how-sure">',
      '<h2 id="checked-against">',
      '<h2 id="take-care">',
      '<h2 id="working">',
      '<h2 id="words">',
      '<h2 id="sources">',
      '<section class="answers">',
      '<footer class="foot">',
    ]);
    expect(order).toEqual([...order].sort((a, b) => a - b));
  });

  it("lists every section in the contents", () => {
    const listed = [...page.matchAll(/<li><a href="#([^"]+)">/gu)].map(([, id]) => id);
    const sections = [...page.matchAll(/<h2 id="([^"]+)">/gu)].map(([, id]) => id);
    expect(listed).toEqual(sections);
    expect(sections.length).toBe(10);
  });

  it("has no id twice and no link to an id that is not there", () => {
    const ids = [...page.matchAll(/ id="([^"]+)"/gu)].map(([, id]) => id);
    expect(new Set(ids).size).toBe(ids.length);
    for (const [, target] of page.matchAll(/href="#([^"]+)"/gu)) expect(ids).toContain(target);
  });

  it("keeps what was not looked up apart and counts the evidence", () => {
    const [first = "", second = ""] = [...page.matchAll(/<table class="checks [^"]*">.*?<\/table>/gsu)].map(
      ([table]) => table,
    );
    expect(first).toContain("Ratio at one whole turn");
    expect(first).not.toContain("common practice");
    expect(second).toContain("(common practice)");
    expect(second).toContain("(from memory)");
    expect(second).not.toContain("Ratio at");
    expect(page).toContain("3 comparisons (2 published, 1 exact), all within the allowed deviation");
    expect(page).toContain("2 more values");
  });

  it("prints a comparison with the digits that matter", () => {
    const [, row = ""] = /<th scope="row">Ratio at one whole turn<td>(.*)/u.exec(page) ?? [];
    expect(row.split("<td>")).toEqual(["1.87", "1.9", "0.05", "−0.026", "–"]);
  });

  it("puts comparisons below what they are compared with, and what that is worth, said once", () => {
    const groups = page.split('scope="rowgroup">').slice(1);
    const [first = "", second = ""] = groups;
    expect(first).toMatch(/^<a href="#source-[^"]+">[^<]+<\/a>, [^(]+ \(published\)/u);
    expect(first.match(/<th scope="row">/gu)).toHaveLength(2);
    expect(second).toMatch(/^<a href="#source-statics">[^<]+<\/a>, limit \(exact\)/u);
    expect(second.match(/<th scope="row">/gu)).toHaveLength(1);
  });

  it("lists the sources that the checks name", () => {
    const ids = [...page.matchAll(/<li id="source-([^"]+)">/gu)].map(([, id]) => id);
    expect(ids).toEqual([...new Set(sampleChecks.map(({ source }) => source))].sort());
  });

  it("folds code and printed text, labelled with its section", () => {
    expect(page).toContain("<summary>Why a turn helps: cell 5</summary>");
    expect(page).toContain("load at the clew 860 N");
    expect(page).toContain('import { answer, figure } from "haulbook";');
  });

  it("puts no colon behind a heading that asks", () => {
    expect(reportPage(withOutputs([]), {})).toContain("<summary>Question? Cell 3</summary>");
  });

  it("lines up ranges as numbers, but for those that name a row, and gives sentences room", () => {
    const sentence = "a line of five millimetres instead of one of four";
    const table = { kind: "table" as const, caption: "By age", columns: ["Age", "Hold [N]", "Likely [N]", "Change"] };
    const rows = [
      ["20 to 24", 86, "70 to 105", sentence],
      ["25 to 29", 90, "–", "none"],
    ];
    const shown = reportPage(withOutputs([{ ...table, rows }]), {});
    expect(shown).toContain('<table class="n2 n3">');
    expect(shown).toContain('<th scope="row">20\u00a0to\u00a024');
    expect(shown.match(/<th scope="col" class="wordy">[^<\n]*/gu)).toEqual(['<th scope="col" class="wordy">Change']);
  });

  it("shows one column of words as a list, with numbers where another counts the rows", () => {
    const table = { kind: "table" as const, caption: "You need" };
    const words = { ...table, columns: ["What"], rows: [["a scale"], [20]] };
    const columns = ["Step", "Do"];
    const counted = (...places: string[]) => ({ ...table, columns, rows: places.map((place) => [place, "tie"]) });
    const [steps, pairs] = [counted("1", "2"), counted("1", "3")];
    const shown = reportPage(withOutputs([words, steps, pairs]), {});
    expect(shown).toContain("<p><strong>You need</strong></p>\n<ul>\n<li>a scale\n<li>20\n</ul>");
    expect(shown).toContain("<ol>\n<li>tie\n<li>tie\n</ol>");
    expect(shown.match(/<caption>You need/gu)).toHaveLength(1);
  });

  it("keeps a rule without a stop as it is, and puts the range of a sentence before its stop", () => {
    const rules = ["Two knots more, 86 N", "Two knots more pull 86 N."].map((text) => ({
      kind: "rule" as const,
      text,
      range: "likely 70 to 105 N",
    }));
    const shown = reportPage(withOutputs(rules), {}).replaceAll("\u00a0", " ");
    expect(shown).toContain("<li>Two knots more, 86 N (likely 70 to 105 N)</li>");
    expect(shown).toContain("<li>Two knots more pull 86 N (likely 70 to 105 N).</li>");
  });

  it("carries the cautions and gives way to those who decide", () => {
    for (const word of [
      "whips back",
      "fingers",
      "burns skin",
      "aloft",
      "rated strength",
      "Class rules",
      "qualified rigger",
    ]) {
      expect(page).toContain(word);
    }
  });

  it("keeps a section of the notebook that bears one of the page's own headings", () => {
    const notebook = {
      ...sample,
      cells: [...sample.cells, { type: "markdown" as const, number: 13, source: "## Take care\n\nThe trolley rolls." }],
    };
    const made = reportPage(notebook, {});
    expect(made.match(/<h2 id="take-care/gu)).toHaveLength(1);
    expect(made.indexOf("The trolley rolls.")).toBeLessThan(made.indexOf("A loaded line can part"));
  });

  it("refuses a notebook without question or answer, or with two answers", () => {
    expect(() => reportPage({ name: "a", cells: [] }, {})).toThrow(/a\.ipynb: no question/u);
    expect(() => reportPage({ name: "a", cells: [{ type: "markdown", number: 13, source: "# Q?" }] }, {})).toThrow(
      /no answer/u,
    );
    expect(() => reportPage(withOutputs([{ kind: "answer", text: "No." }]), {})).toThrow(/cell 3: a second answer/u);
    expect(() =>
      reportPage(
        {
          ...withOutputs([]),
          cells: [{ type: "markdown", number: 13, source: "#" }, ...withOutputs([]).cells.slice(1)],
        },
        {},
      ),
    ).toThrow(/question is empty/u);
  });

  it("refuses a check whose source is not in the bibliography", () => {
    const lost = { ...sampleChecks[0]!, source: "toString" as "statics" };
    expect(() => reportPage(withOutputs([{ kind: "checks", title: "", results: [lost] }]), {})).toThrow(
      /cell 3: check capstan-one-turn names the source "toString"/u,
    );
  });

  it("folds many comparisons below their summary, and leaves few open", () => {
    const many = Array.from({ length: 9 }, (_, index) => ({ ...sampleChecks[0]!, id: `check-${index}` }));
    const made = (results: typeof many) =>
      reportPage(withOutputs([{ kind: "checks", title: "", results }]), {}).includes('<details class="rows">');
    expect(made(many)).toBe(true);
    expect(made(many.slice(1))).toBe(false);
  });

  it("counts rows of our own output as alarms, not as evidence", () => {
    const recorded = sampleChecks.map((check) => ({ ...check, evidence: "recorded" as const }));
    const made = reportPage(withOutputs([{ kind: "checks", title: "", results: recorded }]), {});
    expect(made).toContain("No value here could be compared");
    expect(made).toContain("3 rows only watch for changes");
  });

  it("stops at a broken formula in any cell and names the cell", () => {
    const cells = [...sample.cells, { type: "markdown" as const, number: 13, source: "so $\\frac{$ it is" }];
    expect(() => reportPage({ ...sample, cells }, {})).toThrow(
      `how-hard-to-hold.ipynb, cell ${cells.length}: the formula "\\frac{"`,
    );
    expect(() => reportPage(withOutputs([{ kind: "question", question: "$\\frac{$", answer: "x" }]), {})).toThrow(
      /the formula/u,
    );
  });

  it("is the same for the same notebook", () => {
    expect(reportPage(structuredClone(sample), {})).toBe(page);
  });
});

describe("hostile text", () => {
  const evil = `"'><script>alert(1)</script><img src=x onerror=alert(1)></script>\u2028<!--`;
  const figure: Figure = {
    kind: "figure",
    name: evil,
    title: evil,
    caption: evil,
    altText: evil,
    x: { title: evil },
    y: { title: evil },
    top: { title: evil, marks: [{ at: 1, label: evil }] },
    panels: [{ title: evil, series: [{ name: evil, x: [1, 2], line: [1, 2] }], limits: [{ name: evil, value: 1 }] }],
  };
  const check = { ...sampleChecks[0]!, id: evil, quantity: evil, unit: evil, place: evil };
  const notebook: ExecutedNotebook = {
    name: evil,
    cells: [
      { type: "markdown", number: 1, source: `# Q ${evil}\n\n${evil}\n\n## S ${evil}\n\n${evil}` },
      {
        type: "code",
        number: 2,
        source: evil,
        outputs: [
          { kind: "answer", text: evil },
          figure,
          { ...figure, name: "b" },
          { kind: "table", caption: evil, columns: [evil, evil], rows: [[evil, 1]] },
          { kind: "result", label: evil, text: evil, range: evil },
          { kind: "question", question: evil, answer: evil },
          { kind: "checks", title: evil, results: [check] },
          { kind: "stream", stream: "stderr", text: evil },
        ],
      },
    ],
  };
  const records = [recordOf(notebook, reportPage(notebook, {}))];
  const checks = sharedChecks([{ report: evil, results: records[0]!.checks }]);

  it.each([
    ["report", reportPage(notebook, {})],
    ["single report", reportPage(notebook, { inlinePlotly: 'var Plotly = "</script>";' })],
    ["index", indexPage({ records, checks, inline: false })],
    ["checks", checksPage({ records, checks, inline: false })],
  ])("cannot leave its place on the %s page", (_, made) => {
    expect(made).not.toMatch(/<img/iu);
    expect(made).not.toContain("<script>alert");
    expect(made).not.toContain('\u2028<!--"');
    const opened = made.match(/<script\b/giu)?.length ?? 0;
    expect(made.match(/<\/script>/giu)?.length ?? 0).toBe(opened);
    for (const [tag] of made.matchAll(/<[a-z](?:[^>"]|"[^"]*")*>/giu)) {
      expect(tag.replace(/"[^"]*"/gu, '""')).not.toMatch(/\son[a-z]+=/iu);
    }
  });
});

describe("one file", () => {
  const source = 'window.Plotly = { react() {} }; var a = "</script>";';
  const single = reportPage(sample, { inlinePlotly: source });

  it("refers to nothing outside itself", () => {
    expect(single).not.toMatch(/<(?:link|iframe|img|object|embed)\b/u);
    expect(single).not.toMatch(/\ssrc=/u);
    const addresses = [...single.matchAll(/href="([^"]*)"/gu)].map(([, address]) => address ?? "");
    for (const address of addresses) expect(address).toMatch(/^(?:#|https?:)/u);
    expect(single).not.toMatch(/url\((?!#)|@import/u);
  });

  it("allows exactly its own scripts", () => {
    const policy = /Content-Security-Policy" content="([^"]*)"/u.exec(single)?.[1] ?? "";
    expect(policy).toContain("default-src &#39;none&#39;");
    expect(policy.match(/sha256-/gu)).toHaveLength(2);
    expect(policy).not.toMatch(/script-src[^;]*unsafe/u);
    for (const [, script = ""] of single.matchAll(
      /<script(?: type="text\/plain" id="plotly-source")?>(.*?)<\/script>/gsu,
    ))
      expect(policy).toContain(createHash("sha256").update(script, "utf8").digest("base64"));
  });

  it("carries the drawing library as text, which no browser runs by itself", () => {
    expect(single).toContain(`<script type="text/plain" id="plotly-source">${source.replace("</", "\\x3c/")}</script>`);
  });
});
