import { describe, expect, it } from "vitest";
import { reeving, show } from "../../src/notebook/display.js";
import { liveHtml } from "../../src/notebook/html.js";
import { shownMediaType } from "../../src/notebook/output.js";
import { checkShown } from "../../src/notebook/shape.js";
import { ReevingError, ValueError } from "../../src/quantity/errors.js";
import { tackle } from "../../src/reeving/tackle.js";
import { PageIds } from "../../src/report/markdown.js";
import { reevingBlock } from "../../src/report/reeving.js";
import { reportPage } from "../../src/report/reportpage.js";
import { limp, ring, sheave } from "../reeving/builders.js";
import { sample } from "./sample.js";

const fields = {
  name: "mainsheet",
  title: "A third is lost <on the way>",
  caption: "Invented for the demo.",
  altText: "The hand holds a third.",
  line: {
    rope: limp,
    stations: [
      {
        kind: "tackle" as const,
        name: "boom tackle",
        reeving: tackle({ parts: 3, hauledFrom: "fixed", turn: sheave }),
      },
      { ...ring, name: "ring & rail" },
    ],
  },
  load: 490,
};

describe("a drawn line in a notebook", () => {
  it("travels as the line itself, and passes the check on the other side", () => {
    const all: [string, unknown][] = [];
    show(reeving(fields), { sink: (type, content) => all.push([type, content]), dataMode: true });
    const [[type, content] = []] = all;
    expect(type).toBe(shownMediaType);
    const arrived: unknown = JSON.parse(JSON.stringify(content));
    expect(checkShown(arrived)).toEqual({ ...fields, kind: "reeving" });
  });

  it("draws itself where nobody builds a page", () => {
    const live = liveHtml(() => "")(reeving(fields));
    expect(live).toContain('viewBox="0 0 900 ');
    expect(live).toContain("<caption>From the load to the hand</caption>");
    expect(live).not.toContain("<on the way>");
  });

  it.each([
    ["a name with spaces", { name: "main sheet" }, ValueError],
    ["an empty title", { title: " " }, ValueError],
    ["a load that is no number", { load: Number.NaN }, ValueError],
    ["a load below zero", { load: -1 }, ValueError],
    ["no line", { line: null as never }, ValueError],
    ["words for something else", { words: { boat: "x" } as never }, ValueError],
    ["a line that is none", { line: {} as never }, ReevingError],
    ["a repeated station", { line: { rope: limp, stations: [ring, ring] } }, ReevingError],
  ])("is refused with %s", (_, change, error) => {
    expect(() => reeving({ ...fields, ...change })).toThrow(error);
  });
});

describe("a drawn line on a page", () => {
  const block = reevingBlock(reeving(fields), new PageIds()).text;

  it("stands for wide and for narrow pages, read out once each, with its numbers one click away", () => {
    expect(block).toMatch(
      /^<figure id="figure-mainsheet" class="reeving">\n<figcaption>A third is lost &lt;on the way&gt;/u,
    );
    expect(block.match(/<svg /gu)).toHaveLength(2);
    expect(block).toMatch(/<desc>The hand holds a third\. A line from the load of 490 N/u);
    expect(block).toMatch(/<details class="numbers">[\s\S]*<th scope="row">ring &amp; rail<td>/u);
  });

  it("stands where its cell showed it", () => {
    const notebook = sample;
    const code = notebook.cells.findIndex(({ type }) => type === "code");
    const cells = notebook.cells.map((cell, index) =>
      index === code && cell.type === "code" ? { ...cell, outputs: [...cell.outputs, reeving(fields)] } : cell,
    );
    expect(reportPage({ ...notebook, cells }, {})).toContain(block);
  });
});
