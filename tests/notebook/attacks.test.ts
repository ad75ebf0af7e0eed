import { parse } from "csv-parse/sync";
import { describe, expect, it } from "vitest";
import { boatOf } from "../../src/boat/read.js";
import { BoatFileError } from "../../src/boat/trouble.js";
import { cellCollector } from "../../src/notebook/collect.js";
import { listCsv } from "../../src/plan/csv.js";
import { here, smallBoat, smallBoatWith } from "../boat/small-boat.js";
import { runHarness } from "./harness.js";

const script = "<script>globalThis.attacked = 1</script>";
const { failure, scratch } = runHarness();

/** What a cell's output of a type meets on its way to a report. */
function refusalOf(type: "display_data" | "execute_result" | "update_display_data", data: unknown): string | undefined {
  const collector = cellCollector();
  const header = { msg_id: "", msg_type: type, session: "", username: "", date: "", version: "5.3" };
  collector.take({ identities: [], header, parent: undefined, metadata: {}, content: { data }, buffers: [] });
  expect(collector.outputs()).toEqual([]);
  return collector.refusal();
}

describe("an output that could run", () => {
  it.each([
    "text/html",
    "image/svg+xml",
    "application/javascript",
    "text/javascript",
    "text/markdown",
    "text/latex",
    "application/xhtml+xml",
    "application/vnd.jupyter.widget-view+json",
    "image/png",
    "text/plain",
  ])("is refused as %s, with what to do instead", (type) => {
    const words = `an output of type ${type}: only what the display helper show(…) puts out appears in a report`;
    expect(refusalOf("display_data", { [type]: script })).toBe(words);
    expect(refusalOf("execute_result", { [type]: script })).toBe(words);
    expect(refusalOf("update_display_data", { [type]: script })).toContain("a display was changed");
  });

  it("is refused as a chart of its own, and as a thing of no known kind", () => {
    const chart = "application/vnd.plotly.v1+json";
    expect(refusalOf("display_data", { [chart]: { data: [], layout: { title: script } } })).toContain(
      "a chart without the figure it was made from",
    );
    const shown = "application/vnd.haulbook.shown+json";
    for (const thing of [{ kind: "html", text: script }, { kind: "prose", body: script }, script, [script], null])
      expect(refusalOf("display_data", { [shown]: thing })).toMatch(/allowed:/u);
    for (const name of [script, '"><svg onload=x>', "a b", "../a"])
      expect(refusalOf("display_data", { [shown]: { kind: "figure", name } })).toMatch(/allowed:/u);
  });

  it("stops the build of a real notebook, which says where", async () => {
    const cell = `import * as tslab from "tslab";\ntslab.display.html(${JSON.stringify(script)});`;
    const error = await failure(scratch.notebook("script", [cell]));
    expect(error).toMatchObject({ name: "CellOutputError", cell: 1 });
    expect(error.text).toContain("an output of type text/html: only what the display helper show(…) puts out");
  });
});

describe("a name in a boat file", () => {
  const attacks = [
    "<script>alert(1)</script>",
    "<img src=x onerror=alert(1)>",
    "[x](javascript:alert(1))",
    "a`b",
    'a"b',
    "=HYPERLINK(1)",
    "@sum",
    "-1+1",
    "a\u202eb",
    "a\u0000b",
    "javascript:alert",
  ];

  it.each(attacks)("is a short plain name, and not %s", (attack) => {
    const quoted = JSON.stringify(attack);
    for (const [from, to] of [
      ["name: small boat", `name: ${quoted}`],
      ["  outhaul:", `  ${quoted}:`],
      ["name: ratchet", `name: ${quoted}`],
    ] as const) {
      expect(smallBoat).toContain(from);
      expect(() => boatOf(smallBoatWith([from, to]), here)).toThrow(BoatFileError);
    }
  });
});

describe("a cell of a list for a spreadsheet", () => {
  it.each([
    "=1+1",
    '=HYPERLINK("http://evil.example";"x")',
    "=cmd|' /C calc'!A0",
    "+1",
    "-1+1",
    "@SUM(A1)",
    " =1",
    "\t=1",
    "\r=1",
    "\n=1",
    "＝1",
    '",=1',
    'a\n=1,"=2',
  ])("is read back as the text that it is: %j", (attack) => {
    const text = listCsv({ columns: [attack, "b"], rows: [[attack, 1]] });
    const rows = parse(text, { record_delimiter: "\r\n" }) as string[][];
    expect(rows).toHaveLength(2);
    for (const [cell = "", ...others] of rows) {
      expect(others).toHaveLength(1);
      expect([attack, `'${attack}`]).toContain(cell);
      expect(cell).not.toMatch(/^\s*[=+\-@＝]/u);
    }
  });
});
