import { describe, expect, it } from "vitest";
import { rule, sheetTable, show } from "../../src/notebook/display.js";
import { shownMediaType } from "../../src/notebook/output.js";
import { ValueError } from "../../src/quantity/errors.js";

const kept = { text: "Half as much wind again: 2.25 times the pull.", range: "2.2 to 2.3 times" };
const sheet = { caption: "Read twice.", columns: ["Cover", "Ease [N]"], rows: [["smooth"], ["coarse"], []] };

describe("a rule", () => {
  it("travels as data, and shows with its range in a live notebook", () => {
    const sent: [string, unknown][] = [];
    show(rule(kept), { dataMode: true, sink: (type, content) => sent.push([type, content]) });
    expect(sent).toEqual([[shownMediaType, { ...kept, kind: "rule" }]]);
    show(rule({ ...kept, text: "a < b" }), { dataMode: false, sink: (type, content) => sent.push([type, content]) });
    expect(sent[1]).toEqual(["text/html", "<p>a &lt; b <span>(2.2 to 2.3 times)</span></p>"]);
  });

  it.each([
    [{ ...kept, text: " " }],
    [{ ...kept, range: "" }],
    [{ ...kept, text: "x".repeat(181) }],
    [{ ...kept, range: "x".repeat(121) }],
  ])("refuses %j", (fields) => {
    expect(() => rule(fields)).toThrow(ValueError);
  });
});

describe("a table to fill in", () => {
  it("keeps what stands in its rows and leaves the rest blank in a live notebook", () => {
    const sent: unknown[] = [];
    show(sheetTable(sheet), { dataMode: false, sink: (_type, content) => sent.push(content) });
    expect(sent[0]).toContain(
      "<tr><td>smooth</td><td></td></tr><tr><td>coarse</td><td></td></tr><tr><td></td><td></td></tr>",
    );
  });

  it.each([
    ["no caption", { ...sheet, caption: "" }],
    ["one column", { ...sheet, columns: ["Pull"], rows: [[]] }],
    ["nine columns", { ...sheet, columns: Array.from({ length: 9 }, (_, index) => `c${index}`) }],
    ["a column without words", { ...sheet, columns: ["Cover", ""] }],
    ["no rows", { ...sheet, rows: [] }],
    ["nine rows", { ...sheet, rows: Array.from({ length: 9 }, () => []) }],
    ["a row with more texts than columns", { ...sheet, rows: [["a", "b", "c"]] }],
    ["a long text in a row", { ...sheet, rows: [["x".repeat(25)]] }],
  ])("refuses %s", (_what, fields) => {
    expect(() => sheetTable(fields)).toThrow(ValueError);
  });
});
