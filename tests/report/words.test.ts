import { describe, expect, it } from "vitest";
import { glossary, withPlural } from "../../src/report/glossary.js";
import { Markup } from "../../src/report/html.js";
import { PageIds } from "../../src/report/markdown.js";
import { reportPage } from "../../src/report/reportpage.js";
import { textRuns } from "../../src/report/textruns.js";
import { tradeWords } from "../../src/report/tradewords.js";
import { PageWords } from "../../src/report/words.js";
import { sample } from "./sample.js";

/** One piece of a page with its words linked, and the terms of the list. */
function linked(...pieces: readonly string[]): { readonly text: string; readonly terms: readonly string[] } {
  const words = new PageWords(new PageIds());
  const text = pieces.map((piece) => words.link(new Markup(piece)).text).join("");
  const terms = [...(words.list()?.text ?? "").matchAll(/<dt>([^<]*)<\/dt>/gu)].map(([, term]) => term ?? "");
  return { text, terms };
}

function links(text: string): string[] {
  return [...text.matchAll(/<a class="word" href="#[^"]*">([^<]*)<\/a>/gu)].map(([, word]) => word ?? "");
}

describe("glossary", () => {
  it("explains each word once, in words of its own", () => {
    const forms = glossary.flatMap((term) => [...term.forms, ...term.behindNumber].map((form) => form.toLowerCase()));
    expect(forms.filter((form, index) => forms.indexOf(form) !== index)).toEqual([]);
    for (const { word, meaning } of tradeWords) {
      expect(meaning.length, word).toBeGreaterThan(8);
      expect(meaning, word).not.toMatch(/\.$/u);
      expect(textRuns(meaning).map(({ text }) => text)).toEqual([meaning]);
    }
  });

  it.each([
    ["sheave", ["sheave", "sheaves"]],
    ["belly", ["belly", "bellies"]],
    ["clutch", ["clutch", "clutches"]],
    ["stress", ["stress", "stresses"]],
    ["knots", ["knots"]],
  ])("knows the plural of %s", (term, forms) => expect(withPlural(term)).toEqual(forms));
});

describe("words of a page", () => {
  it("link the first use in the prose only, whole words, also plural and after a capital", () => {
    const { text, terms } = linked("<p>Sheaves turn; a sheave and worksheets do not.</p>", "<p>The sheave.</p>");
    expect(links(text)).toEqual(["Sheaves"]);
    expect(terms).toEqual(["sheave"]);
    expect(text.replace(/<\/?a\b[^>]*>/gu, "")).toBe(
      "<p>Sheaves turn; a sheave and worksheets do not.</p><p>The sheave.</p>",
    );
  });

  it("prefer the longer term", () => {
    expect(linked("<p>The friction&#39;s wrap angle and the friction coefficient; a soft shackle.</p>").terms).toEqual([
      "friction",
      "friction coefficient",
      "soft shackle",
      "wrap angle",
    ]);
  });

  it("read across a break of the line and a fixed space", () => {
    expect(links(linked("<p>run-out\nload, dead\u00a0band</p>").text)).toEqual(["run-out\nload", "dead\u00a0band"]);
  });

  it.each(["h2", "h3", "a", "button", "summary", "figcaption"])(
    "stay as they are inside %s, where they count, and are linked below",
    (name) => {
      const inside = `<${name}>The halyard</${name}>`;
      const page = name === "figcaption" ? `<figure>${inside}</figure>` : inside;
      const { text, terms } = linked(page, "<p>A halyard.</p>");
      expect(text).toMatch(new RegExp(`^${page}<p>A <a class="word" href="#word-halyard">halyard</a>`, "u"));
      expect(terms).toEqual(["halyard"]);
    },
  );

  it.each([
    "<code>halyard</code>",
    "<pre>halyard</pre>",
    "<math><mi>halyard</mi></math>",
    "<svg><text>halyard</text></svg>",
  ])("are not looked for in %s", (piece) =>
    expect(linked(`<p>${piece}</p>`)).toEqual({ text: `<p>${piece}</p>`, terms: [] }),
  );

  it("leave a unit behind its number alone, and list it", () => {
    const { text, terms } = linked(
      "<p>It takes 86\u00a0N in 14 knots; a newton is little.</p>",
      "<p>330 (310 to 350) N</p>",
    );
    expect(links(text)).toEqual(["newton"]);
    expect(terms).toEqual(["knot of wind", "newton"]);
  });

  it("tell the newton from a letter, and a lead from what leads", () => {
    expect(linked("<p>Item n leads to 86 N.</p>").terms).toEqual(["newton"]);
    expect(linked("<p>It takes many leads.</p>").terms).toEqual(["lead"]);
    expect(linked("<p>Bends and knots, N of them.</p>").terms).toEqual([]);
  });

  it("tell a word with several meanings by what stands beside it in its sentence", () => {
    expect(linked("<p>A <b>ring</b> still at the mark.</p><p>A line slides.</p>")).toMatchObject({ terms: [] });
    expect(links(linked("<p>The mark is a ring. Here a line <i>slides</i> in a ring.</p>").text)).toEqual(["ring"]);
    expect(linked("<p>The longest stretch without an open hand.</p>").terms).toEqual([]);
    expect(linked("<p>A rope has its stretch.</p>").terms).toEqual(["stretch"]);
  });

  it("lead to entries that the page has, each once; every entry of the list is used", () => {
    const page = reportPage(sample, {});
    const targets = [...page.matchAll(/<a class="word" href="#([^"]*)">/gu)].map(([, id]) => id);
    const entries = [...page.matchAll(/<div id="(word-[^"]*)"><dt>/gu)].map(([, id]) => id);
    expect(targets.length).toBeGreaterThan(8);
    expect(new Set(targets).size).toBe(targets.length);
    for (const target of targets) expect(entries).toContain(target);
    expect(page.indexOf('<h2 id="working">')).toBeLessThan(page.indexOf('<h2 id="words">'));
    expect(page.indexOf('<h2 id="words">')).toBeLessThan(page.indexOf('<h2 id="sources">'));
    expect(page).not.toMatch(/<(?:h[1-6]|summary|button|code|pre)\b[^>]*>[^<]*<a class="word"/u);
  });
});
