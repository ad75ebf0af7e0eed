import { describe, expect, it } from "vitest";
import type { CellOutput, ExecutedNotebook } from "../../src/notebook/executed.js";
import { indexPage } from "../../src/report/indexpage.js";
import { markdownBlocks, markdownLine, markdownText, PageIds } from "../../src/report/markdown.js";
import { recordOf } from "../../src/report/record.js";
import { reportPage } from "../../src/report/reportpage.js";
import { signTex, stepTex } from "../../src/report/working-tex.js";
import type { WorkingStep } from "../../src/working/working.js";
import { hold, purchase, workedSample } from "./worked-sample.js";

const page = reportPage(workedSample, {});
const evil = `"'><script>alert(1)</script><img src=x onerror=alert(1)>\\def\\x{}$}{`;

function shown(outputs: readonly CellOutput[], prose = "Text."): ExecutedNotebook {
  return {
    name: "a",
    cells: [
      { type: "markdown", number: 1, source: `# Question?\n\n${prose}` },
      { type: "code", number: 2, source: "", outputs: [{ kind: "answer", text: "Yes." }, ...outputs] },
    ],
  };
}

const known: CellOutput = { kind: "workings", entries: [{ name: "hold", working: hold }] };
const number = `${Math.round(hold.value)} N`;

describe("a page with numbers that unfold", () => {
  const buttons = [...page.matchAll(/<button(?: class="worked")? popovertarget="([^"]+)">([^<]*)<\/button>/gu)];

  it("marks them in answer, prose, tables, results and answers to questions", () => {
    // Six numbers of the page, and five in panels that lead to earlier steps.
    expect(buttons.filter(([, , text = ""]) => /^[\d.]/u.test(text))).toHaveLength(6);
    expect(buttons).toHaveLength(11);
    expect(buttons.map(([, id]) => id)).toEqual(expect.arrayContaining(["working-hold", "working-purchase"]));
    expect(page).toMatch(/<div class="answer">\s*<p>You hold <button/u);
    expect(page).toMatch(/<td><button [^>]*>\d+<\/button>/u);
    expect(page).toMatch(/<dd><b><button /u);
  });

  it("opens each by a control that needs no script, with its panel once on the page, after the number", () => {
    for (const id of new Set(buttons.map(([, target]) => target))) {
      const panel = `<div class="how" id="${id}" popover role="group" aria-label="`;
      expect(page.split(panel)).toHaveLength(2);
      expect(page).toContain(`<button class="shut" popovertarget="${id}">Close</button>`);
    }
    const ids = [...page.matchAll(/ id="([^"]+)"/gu)].map(([, id]) => id);
    expect(new Set(ids).size).toBe(ids.length);
  });

  it("leads from a number back to what it came from, step by step, formulas as MathML", () => {
    /** Panel with an id. */
    const panel = (id: string) => {
      const from = page.indexOf(`id="${id}"`);
      return page.slice(from, page.indexOf("\n</div>\n", from));
    };
    const onward = (text: string, title: string) =>
      new RegExp(`popovertarget="([^"]+)">${title}</button>`, "u").exec(text)?.[1] ?? "";
    const last = panel("working-hold");
    expect(last).toContain("In code: <code>prepareLine</code>");
    const load = panel(onward(last, "Sheet load by the rule with one coefficient"));
    const air = panel(onward(load, "[^<]*[Aa]ir[^<]*"));
    expect(air).toContain("In code: <code>airDensity");
    expect(page).toContain("<mfrac>");
    expect(page).not.toContain("<annotation");
    expect(page).toContain('href="#source-euler-1769"');
  });

  it("states the equations of what was solved, and what is left over", () => {
    expect(page).toContain("Solved together. With the solution put in,");
    expect(page).toContain("solved from the equations");
  });

  it("says what makes the range of a number, once for each that stands on the page", () => {
    const said = [...page.matchAll(/<p class="note">Its range with nothing measured, each alone: ([^<]+)\./gu)].map(
      ([, text]) => text,
    );
    expect(said.length).toBeGreaterThan(0);
    expect(said.length).toBeLessThan(buttons.length);
    for (const text of said) expect(text).toMatch(/\d to \d/u);
  });

  it("lists the sources of its workings", () => {
    for (const [, target] of page.matchAll(/href="#(source-[^"]+)"/gu)) expect(page).toContain(`<li id="${target}">`);
    expect(page).toContain('<li id="source-standard-atmosphere-1976">');
  });

  it("leaves marks in code and behind a backslash as they are", () => {
    expect(page).toContain("<code>[[hold: x]]</code>");
    expect(page).toContain("so does [[1, 2]]");
  });

  it("shows plain numbers where nothing can unfold", () => {
    const answer = `You hold ${number}`;
    expect(page).toContain(`<meta name="description" content="${answer}`);
    const index = indexPage({ records: [recordOf(workedSample, "")], checks: [], inline: false });
    expect(index).toContain(answer.replace(" N", "\u00a0N"));
    expect(index).not.toContain("[[");
    expect(page.slice(page.indexOf('<section class="answers">'))).not.toContain("popovertarget");
  });

  it("prints no panel, and marks no number on paper", () => {
    const single = reportPage(workedSample, { inlinePlotly: "" });
    expect(single).toMatch(/@media print\{\s*\.worked\{text-decoration:none;[^}]*\}\s*\.how\{display:none\}/u);
  });

  it("is the same for the same notebook", () => {
    expect(reportPage(structuredClone(workedSample), {})).toBe(page);
  });
});

describe("a marked number that cannot be", () => {
  it("is refused when its name is not known, with the names that are", () => {
    expect(() => reportPage(shown([known], `[[hold: ${number}]] and [[grip: 3 N]]`), {})).toThrow(
      'a.ipynb, cell 1: the number "3 N" asks for the working "grip", which no cell shows; there are: hold.',
    );
    expect(() => reportPage(shown([], "[[grip: 3 N]]"), {})).toThrow(/there are: none/u);
    const table: CellOutput = { kind: "table", caption: "T", columns: ["a"], rows: [["[[grip: 3 N]]"]] };
    expect(() => reportPage(shown([table]), {})).toThrow(/"grip"/u);
  });

  it("is refused when it is not the number of its working", () => {
    expect(() => reportPage(shown([known], "[[hold: 12 N]]"), {})).toThrow(
      /a\.ipynb, cell 1: working "hold": got "12 N"; allowed: the number of its working/u,
    );
  });

  it("is refused when it is written wrong", () => {
    for (const mark of ["[[86 N|hold]]", "[[Hold: 86 N]]", "[[hold:86 N]]", "[[hold: ]]", "[[hold]]", "[[]]"]) {
      expect(() => reportPage(shown([known], `x ${mark} y`), {}), mark).toThrow(/cell 1: marked number: got /u);
    }
  });

  it("leaves links and other brackets alone", () => {
    const at = { place: "a.ipynb, cell 1" };
    expect(markdownLine("[[1]](https://example.org/)", at).text).toBe('<a href="https://example.org/">[1]</a>');
    expect(markdownLine("[[hold: 86 N]](8.8 kgf)", at).text).toBe("86\u00a0N(8.8\u00a0kgf)");
    expect(markdownLine("[a] [[b] c]", at).text).toBe("[a] [[b] c]");
    expect(markdownText("hold [[hold: **86 N**]]")).toBe("hold **86 N**");
    const table = markdownBlocks("| a |\n|---|\n| [[hold: 86 N]] |\n", { ...at, ids: new PageIds() }).text;
    expect(table).toContain("<td>86\u00a0N</td>");
  });

  it("is refused when a working is shown twice with other numbers, or never used", () => {
    const other: CellOutput = { kind: "workings", entries: [{ name: "hold", working: purchase }] };
    expect(() => reportPage(shown([known, other], `[[hold: ${number}]]`), {})).toThrow(
      /cell 2: a second working "hold"/u,
    );
    expect(() => reportPage(shown([known]), {})).toThrow(
      /no text marks the working "hold"; write its number as \[\[hold: …\]\]/u,
    );
    expect(() => reportPage(shown([known, known], `[[hold: ${number}]]`), {})).not.toThrow();
  });
});

describe("a formula in print", () => {
  it("sets signs with what stands below them", () => {
    expect(["T_hand", "μ", "z0", "VR", "D/d", "m'_wet", "T_2W"].map(signTex)).toEqual([
      "{T_{\\text{hand}}}",
      "{μ}",
      "{z_{\\text{0}}}",
      "{\\mathit{VR}}",
      "(D/d)",
      "{m'_{\\text{wet}}}",
      "{T_{\\text{2W}}}",
    ]);
  });

  it("keeps fractions whole and puts powers in brackets", () => {
    const [tex = ""] = stepTex(hold.steps.find(({ id }) => id === "apparent-speed")!);
    expect(tex).toContain("\\sqrt{{\\left({V_{\\text{T}}} \\cdot \\sin\\left({β_{\\text{T}}}\\right)\\right)}^{2}");
    expect(stepTex(hold.steps.at(-1)!)[0]).toContain("\\frac{{T_{\\text{load}}} - {c}}{{k}}");
  });

  it("escapes hostile words, and lets no sign or unit be a command", () => {
    const last = hold.steps.at(-1)!;
    const hostile: WorkingStep = {
      ...last,
      title: evil,
      valid: evil,
      result: { ...last.result, sign: evil, words: evil },
      symbols: last.symbols.map((symbol) => ({
        ...symbol,
        sign: evil,
        words: evil,
        origin: { low: 1, high: 2, status: "from memory", place: evil },
      })),
    };
    const working = { ...hold, steps: [...hold.steps.slice(0, -1), hostile] };
    const made = reportPage(shown([{ kind: "result", label: evil, text: evil, working }], "Text."), {});
    expect(made).not.toMatch(/<img/iu);
    expect(made).not.toContain("<script>alert");
    for (const piece of stepTex(hostile)) expect(piece).not.toMatch(/\\(?:def|x\b|href|html)/u);
  });
});
