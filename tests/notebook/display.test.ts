import { describe, expect, test } from "vitest";
import { surfaces } from "../../src/materials/surfaces.js";
import {
  answer,
  checks,
  coefficients,
  figure,
  question,
  result,
  show,
  table,
  verdicts,
} from "../../src/notebook/display.js";
import { liveHtml } from "../../src/notebook/html.js";
import { type Figure, figureMediaType, type Shown, shownMediaType } from "../../src/notebook/output.js";
import { checkShown } from "../../src/notebook/shape.js";
import type { CheckResult } from "../../src/published/row.js";
import { Refusal, ValueError } from "../../src/quantity/errors.js";
import { demoFigure } from "./figures.js";

const row: CheckResult = {
  id: "two-parts",
  quantity: "efficiency <two parts>",
  computed: 0.9623,
  expected: 0.962,
  unit: "1",
  allowed: 0.0005,
  deviation: 0.0003,
  holds: true,
  evidence: "published",
  status: "published",
  source: "euler-1769",
  place: "Table 1",
};

const shownThings: Shown[] = [
  demoFigure,
  table({ caption: "c", columns: ["a", "b"], rows: [["x", 1.23456]] }),
  result({ label: "Hand force", text: "86 N", range: "likely 70 to 105 N" }),
  answer("About 80 N."),
  question({ question: "Twice the wind?", answer: "Four times the load." }),
  checks("Handbook", [row]),
  verdicts("The <halyard>", [
    { subject: "3 mm & wet", outcome: "not enough", reason: "breaks at 2 kN", change: "take 4 mm" },
    { subject: "4 mm", outcome: "enough", reason: "breaks at 4 kN" },
  ]),
  coefficients("Rings", { "sliding <on> steel": surfaces.polishedSteel.friction }),
];

const taken = (shown: Shown, dataMode: boolean) => {
  const all: [string, unknown][] = [];
  show(shown, { sink: (type, content) => all.push([type, content]), dataMode });
  expect(all).toHaveLength(1);
  return all[0] as [string, unknown];
};

describe("show", () => {
  test("as data, everything travels whole and passes the check on the other side", () => {
    for (const shown of shownThings) {
      const [type, content] = taken(shown, true);
      const arrived = JSON.parse(JSON.stringify(content));
      expect(type).toBe(shown.kind === "figure" ? figureMediaType : shownMediaType);
      const thing = shown.kind === "figure" ? arrived.haulbook : arrived;
      expect(checkShown(thing)).toEqual(shown);
      if (shown.kind === "figure") expect(Object.keys(arrived)).toEqual(["data", "layout", "haulbook"]);
    }
  });

  test("live, everything is HTML", () => {
    for (const shown of shownThings) {
      const [type, content] = taken(shown, false);
      expect(type).toBe("text/html");
      expect(typeof content).toBe("string");
    }
  });

  test("without kernel and sink it says what to do", () => {
    expect(() => show(answer("a"))).toThrow(/no notebook kernel runs this program.*\{ sink \}/);
  });

  test("inside a kernel it hands over to the kernel's display", () => {
    const all: unknown[] = [];
    const place = globalThis as { __tslab__?: unknown };
    place.__tslab__ = {
      require: (name: string) =>
        name === "tslab" ? { display: { raw: (...given: unknown[]) => all.push(given) } } : undefined,
    };
    try {
      show(answer("a"), { dataMode: true });
    } finally {
      delete place.__tslab__;
    }
    expect(all).toEqual([[shownMediaType, { kind: "answer", text: "a" }]]);
  });

  test("what is not complete is not shown", () => {
    expect(() => taken({ kind: "answer", text: " " }, true)).toThrow(ValueError);
  });
});

describe("live HTML", () => {
  const html = (shown: Shown) => liveHtml(() => "library")(shown);

  test("texts are escaped", () => {
    const nasty = `<script>alert("1")</script> & 'x'`;
    const all = [
      answer(nasty),
      question({ question: nasty, answer: nasty }),
      result({ label: nasty, text: nasty, range: nasty }),
      table({ caption: nasty, columns: [nasty], rows: [[nasty]] }),
      checks(nasty, [{ ...row, quantity: nasty, place: nasty }]),
    ];
    for (const shown of all) {
      expect(html(shown)).not.toContain("<script");
      expect(html(shown)).toContain("&lt;script&gt;alert(&quot;1&quot;)&lt;/script&gt; &amp; &#39;x&#39;");
    }
    const chart = html({
      ...demoFigure,
      title: nasty,
      caption: nasty,
      altText: nasty,
      x: { title: nasty },
      panels: demoFigure.panels.map((panel) => ({ ...panel, title: nasty })),
    });
    expect(chart.match(/<script/g)).toHaveLength(2);
    expect(chart.match(/<\/script/g)).toHaveLength(2);
    expect(chart).not.toContain('alert("1")');
  });

  test("numbers in tables have three significant figures; texts stay", () => {
    const made = html(table({ caption: "c", columns: ["a", "b"], rows: [["1.23456", 1.23456]] }));
    expect(made).toContain("<td>1.23456</td><td>1.23</td>");
  });

  test("a check that fails says so", () => {
    expect(html(checks("c", [row]))).toContain("<td>yes</td>");
    expect(html(checks("c", [{ ...row, holds: false }]))).toContain("<td>NO</td>");
  });

  test("the chart library comes with the first figure only, and nothing in it can end its script", () => {
    const make = liveHtml(() => `const text = "</script><!--";`);
    const [first, second] = [make(demoFigure), make(demoFigure)];
    expect(first).toContain(String.raw`const text = "\x3C/script>\x3C!--";`);
    expect(second).not.toContain("const text");
    expect(first).toContain('id="haulbook-figure-1"');
    expect(second).toContain('id="haulbook-figure-2"');
  });
});

describe("builders refuse what is not complete, in words", () => {
  const withFigure = (change: Partial<Record<keyof Figure, unknown>>) => () =>
    figure({ ...demoFigure, ...change } as Figure);
  const withSeries = (series: object) => withFigure({ panels: [{ title: "", series: [series] }] });

  test.each<[string, () => unknown, RegExp]>([
    ["name", withFigure({ name: "Hand Force" }), /figure name: got "Hand Force"; allowed: lower case/],
    ["title", withFigure({ title: "" }), /title: got ""/],
    ["caption", withFigure({ caption: " " }), /caption/],
    ["alt text", withFigure({ altText: "" }), /altText/],
    ["axis", withFigure({ x: { title: "" } }), /x, title/],
    ["axis ends", withFigure({ y: { title: "y", minimum: 2, maximum: 1 } }), /minimum below maximum/],
    [
      "top scale",
      withFigure({ top: { title: "t", marks: [{ at: Number.NaN, label: "a" }] } }),
      /top mark, at: got NaN/,
    ],
    ["no panels", withFigure({ panels: [] }), /panels: got \[\]/],
    [
      "panel title",
      withFigure({ panels: demoFigure.panels.map((panel) => ({ ...panel, title: "" })) }),
      /panel 1, title/,
    ],
    [
      "lengths",
      withSeries({ name: "s", x: [1, 2], hauling: [1] }),
      /hauling, number of values: got 1; allowed: 2, as many as x has/,
    ],
    [
      "not finite",
      withSeries({ name: "s", x: [1], line: [Number.POSITIVE_INFINITY] }),
      /line\[0\], a number or null: got Infinity/,
    ],
    ["undefined value", withSeries({ name: "s", x: [1], points: [undefined] }), /points\[0\]/],
    ["gap in x", withSeries({ name: "s", x: [null], line: [1] }), /x\[0\]/],
    ["no values", withSeries({ name: "s", x: [1] }), /at least one of hauling, easing, line, points/],
    [
      "limit",
      withFigure({ panels: [{ ...demoFigure.panels[0], limits: [{ name: "l", value: 5, low: 6 }] }] }),
      /low ≤ value ≤ high/,
    ],
    [
      "too many series",
      withFigure({
        panels: [
          { title: "", series: Array.from({ length: 6 }, (_, index) => ({ name: `s${index}`, x: [1], line: [1] })) },
        ],
      }),
      /number of series: got 6; allowed: at most 5/,
    ],
    [
      "two highlights",
      withFigure({
        panels: [{ title: "", series: ["a", "b"].map((name) => ({ name, x: [1], line: [1], highlight: true })) }],
      }),
      /highlighted series: got 2/,
    ],
    [
      "same names",
      withFigure({ panels: [{ title: "", series: ["a", "a"].map((name) => ({ name, x: [1], line: [1] })) }] }),
      /each once/,
    ],
    ["row", () => table({ caption: "c", columns: ["a", "b"], rows: [["x"]] }), /cells of row 1: got 1; allowed: 2/],
    ["cell", () => table({ caption: "c", columns: ["a"], rows: [[Number.NaN]] }), /got NaN/],
    ["table caption", () => table({ caption: "", columns: ["a"], rows: [] }), /table caption/],
    ["result", () => result({ label: "l", text: "" }), /result "l", text/],
    ["answer", () => answer(""), /answer: got ""/],
    ["question", () => question({ question: "q", answer: "" }), /answer to the question/],
    ["checks", () => checks("c", []), /results: got \[\]/],
    ["check row", () => checks("c", [{ ...row, computed: Number.NaN }]), /row 1, computed: got NaN/],
    ["kind", () => checkShown({ kind: "other" }), /kind of the shown thing: got "other"/],
    ["nothing", () => checkShown(null), /shown thing: got null/],
  ])("%s", (_, build, message) => {
    expect(build).toThrow(message);
    expect(build).toThrow(Refusal);
  });

  test("and give back what they were given", () => {
    const { kind, ...fields } = demoFigure;
    expect(figure(fields)).toEqual({ ...fields, kind });
  });
});
