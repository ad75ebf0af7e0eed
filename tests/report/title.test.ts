import { describe, expect, it } from "vitest";
import type { ExecutedNotebook } from "../../src/notebook/executed.js";
import { recordOf } from "../../src/report/record.js";
import { reportPage } from "../../src/report/reportpage.js";
import { sample } from "./sample.js";

const titled = (...texts: string[]): ExecutedNotebook => ({
  ...sample,
  cells: [
    ...sample.cells,
    { type: "code", number: 90, source: "", outputs: texts.map((text) => ({ kind: "title", text })) },
  ],
});

describe("a computed title", () => {
  it("stands in the place of the first heading, as plain text", () => {
    const page = reportPage(titled("What does *<our> boat* carry?"), {});
    expect(page).toContain("<title>What does *&lt;our&gt; boat* carry?</title>");
    expect(page).toContain("<h1>What does *&lt;our&gt; boat* carry?</h1>");
    expect(page).not.toContain("<h1>How hard");
    expect(recordOf(titled("What does it carry?"), "").question).toBe("What does it carry?");
  });

  it("names the cells above the first section", () => {
    const [heading, ...rest] = sample.cells;
    const early = titled("What does it carry?").cells.at(-1)!;
    expect(reportPage({ ...sample, cells: [heading!, early, ...rest] }, {})).toContain(
      "<summary>What does it carry? Cell 90</summary>",
    );
  });

  it("is given once", () => {
    expect(() => reportPage(titled("One?", "Two?"), {})).toThrow("a second title");
  });

  it("does not stand for the heading that a plain session shows", () => {
    const cells = titled("One?").cells.filter(({ type }) => type === "code");
    expect(() => reportPage({ ...sample, cells }, {})).toThrow("no question");
  });
});
