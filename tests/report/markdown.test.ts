import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { ReportError } from "../../src/report/errors.js";
import { html, jsonForScript, scriptForPage } from "../../src/report/html.js";
import { markdownBlocks, markdownLine, markdownParts, markdownText, PageIds } from "../../src/report/markdown.js";

const at = () => ({ place: "a.ipynb, cell 3", ids: new PageIds() });
const blocks = (source: string) => markdownBlocks(source, at()).text;

describe("markdown", () => {
  it("shows raw HTML as text", () => {
    const page = blocks('<script>alert(1)</script>\n\nand <img src=x onerror=alert(1)> and <b onclick="x">b</b>');
    expect(page).not.toMatch(/<(?:script|img|b)\b/u);
    expect(page).toContain("&lt;script&gt;");
  });

  it.each([
    "javascript:alert(1)",
    "JaVaScRiPt:alert(1)",
    "java&#x09;script:alert(1)",
    "&#106;avascript:alert(1)",
    "vbscript:x",
    "data:text/html,x",
    "file:///etc/hosts",
    "//elsewhere.example/x",
    "/etc/hosts",
    "\\\\elsewhere.example/x",
    "/\\elsewhere.example/x",
  ])("makes no link of %s", (address) => {
    expect(blocks(`[press](${address})`)).not.toContain("<a ");
    expect(blocks(`[press][1]\n\n[1]: ${address}`)).not.toContain("<a ");
  });

  it.each([
    "https://example.org/a?b=c:d",
    "http://example.org",
    "mailto:a@example.org",
    "#why",
    "other.html#x:y",
    "../a/b.html",
  ])("makes a link of %s", (address) => {
    expect(blocks(`[press](${address})`)).toContain(`<a href="${address.replaceAll("&", "&amp;")}">press</a>`);
  });

  it("never lets a link leave the allowed schemes", () => {
    fc.assert(
      fc.property(fc.string({ unit: "grapheme", maxLength: 30 }), (address) => {
        for (const [, href] of blocks(`[x](<${address}>)`).matchAll(/<a href="([^"]*)"/gu)) {
          const scheme = /^([^/?#]*?):/u.exec(decodeURI(href ?? ""))?.[1];
          expect(["http", "https", "mailto", undefined]).toContain(scheme?.toLowerCase());
        }
      }),
      { seed: 7, numRuns: 300 },
    );
  });

  it("refuses pictures, which would need a file or a network", () => {
    expect(() => blocks("![mast](https://example.org/mast.png)")).toThrow(/a\.ipynb, cell 3: the picture "mast"/u);
  });

  it("sets formulas as MathML, in a line and as a block", () => {
    expect(blocks("with $\\mu$ small")).toMatch(/with <math><mi>μ<\/mi>/u);
    const block = blocks("so\n$$\na^2\n+ b\n$$\nand");
    expect(block).toContain('<div class="formula"');
    expect(block).toContain('display="block"');
    expect(block).toContain("<p>and</p>");
    expect(blocks("$$a+b$$")).toContain('display="block"');
    expect(markdownLine("ratio $e^{\\mu}$", at()).text).toContain("<msup>");
  });

  it("leaves prices and code alone", () => {
    expect(blocks("costs $5 or $10, `$x$`")).not.toContain("<math");
    expect(blocks("a \\$x\\$ b")).toContain("$x$");
    expect(blocks("open $ end")).toContain("$ end");
  });

  it.each([
    "$\\frac{1}{$",
    "$$\\undefinedmacro$$",
    "$\\href{javascript:alert(1)}{x}$",
    "$\\includegraphics{x.png}$",
    "$\\htmlClass{a}{b}$",
  ])("stops at the formula %s and names it", (source) => {
    let error: unknown;
    try {
      blocks(source);
    } catch (caught) {
      error = caught;
    }
    expect(error).toBeInstanceOf(ReportError);
    expect((error as ReportError).place).toBe("a.ipynb, cell 3");
    expect((error as ReportError).text).toContain(source.replaceAll("$", ""));
  });

  it("escapes hostile text inside formulas", () => {
    expect(blocks("$\\text{<img src=x onerror=alert(1)>}$")).not.toContain("<img");
  });

  it("gives headings ids that are unique on the page", () => {
    const place = at();
    const page = markdownBlocks("### Über die Leine\n\n### Über die Leine\n\n### ...", place).text;
    expect([...page.matchAll(/id="([^"]*)"/gu)].map(([, id]) => id)).toEqual([
      "uber-die-leine",
      "uber-die-leine-2",
      "part",
    ]);
    expect(place.ids.take("Part")).toBe("part-2");
  });

  it("cuts prose at headings of the first and second level only", () => {
    const parts = markdownParts("before\n\n# One `two` *three*\nx\n\n## Four\n### Five\ny\n\n> ## quoted", at());
    expect(parts.map(({ heading }) => heading && [heading.level, heading.text])).toEqual([
      undefined,
      [1, "One two three"],
      [2, "Four"],
    ]);
    expect(parts[1]?.heading?.markup.text).toBe("One <code>two</code> <em>three</em>");
    expect(parts[2]?.body.text).toContain("Five");
    expect(parts[2]?.body.text).toContain("quoted");
  });

  it("keeps a number and its unit on one line", () => {
    expect(blocks("86 N and 14 knots and 3 Nations")).toBe("<p>86\u00a0N and 14\u00a0knots and 3 Nations</p>\n");
  });

  it("reads markdown as plain text", () => {
    expect(markdownText("hold **86 N** with `x`, see [this](#a)")).toBe("hold 86 N with x, see this");
  });
});

describe("html", () => {
  it("escapes everything but markup", () => {
    const inner = html`<b>${"&"}</b>`;
    expect(html`<p title="${'"x" <'}">${inner}${[1, " ", "<"]}${false}${undefined}</p>`.text).toBe(
      '<p title="&quot;x&quot; &lt;"><b>&amp;</b>1 &lt;</p>',
    );
  });

  it("carries any JSON through a script element", () => {
    fc.assert(
      fc.property(fc.jsonValue(), (value) => {
        const { text } = jsonForScript(value);
        expect(text).not.toMatch(/[<\u2028\u2029]/u);
        expect(JSON.parse(text)).toEqual(JSON.parse(JSON.stringify(value)));
      }),
      { seed: 7 },
    );
    expect(jsonForScript("</script><!--\u2028").text).toBe('"\\u003c/script>\\u003c!--\\u2028"');
  });

  it("writes script so that HTML does not end it, with the same meaning", () => {
    const source =
      'const a = "</script><!--<SCRIPT>"; const b = /<!--x<\\/script/u; return [a, b.test("<!--x</script")]';
    const written = scriptForPage(source);
    expect(written).not.toMatch(/<(?:!--|\/?script)/iu);
    expect(new Function(written)()).toEqual(new Function(source)());
  });
});
