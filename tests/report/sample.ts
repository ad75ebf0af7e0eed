import type { ExecutedNotebook } from "../../src/notebook/executed.js";
import type { Figure, Series } from "../../src/notebook/output.js";
import { compare } from "../../src/published/compare.js";
import type { CheckResult, CheckRow } from "../../src/published/row.js";

const loads = Array.from({ length: 121 }, (_, index) => index * 10);

/** Hauling and easing force of a line that runs round `turns` bends which keep `kept` of the force each. */
function pair(name: string, parts: number, kept: number, highlight = false): Series {
  const sum = (ratio: number) => Array.from({ length: parts }, (_, part) => ratio ** part).reduce((a, b) => a + b, 0);
  return {
    name,
    x: loads,
    hauling: loads.map((load) => load / (sum(kept) * kept)),
    easing: loads.map((load) => load / (sum(1 / kept) / kept)),
    ...(highlight && { highlight }),
  };
}

const picture: Figure = {
  kind: "figure",
  name: "hold-by-cover",
  title: "A coarse cover on a ratchet takes three quarters of the load off the hand; a bare turn takes a quarter",
  caption:
    "Sheet of the demo skiff through two parts. Values are invented for the demo; the tint is the friction between hauling and easing.",
  altText: "With a coarse cover the hand holds 130 N of a 1200 N load when easing; with a smooth cover it holds 410 N.",
  x: { title: "Sheet load [N]", minimum: 0, maximum: 1200 },
  y: { title: "Hand force [N]", minimum: 0 },
  top: {
    title: "True wind [kn]",
    marks: [
      { at: 120, label: "6" },
      { at: 330, label: "10" },
      { at: 650, label: "14" },
      { at: 1070, label: "18" },
    ],
  },
  panels: [
    {
      title: "Smooth cover",
      series: [pair("ratchet", 2, 0.78, true), pair("plain block", 2, 0.95)],
      limits: [{ name: "a hand can hold", value: 180, low: 140, high: 220 }],
    },
    {
      title: "Coarse cover",
      series: [pair("ratchet", 2, 0.6, true), pair("plain block", 2, 0.92)],
      limits: [{ name: "a hand can hold", value: 180, low: 140, high: 220 }],
    },
  ],
};

const wraps = Array.from({ length: 41 }, (_, index) => index * 9);
const turns: Figure = {
  kind: "figure",
  name: "turn-by-angle",
  title: "Every quarter turn multiplies the help",
  caption: "One bend of a line that slides on a fixed ring.",
  altText: "The ratio grows from 1 without contact to 2.6 at a whole turn.",
  x: { title: "Angle of contact [°]", minimum: 0, maximum: 360 },
  y: { title: "Tension ratio" },
  panels: [
    {
      title: "",
      series: [
        {
          name: "polished ring",
          x: wraps,
          line: wraps.map((degrees) => Math.exp((0.15 * degrees * Math.PI) / 180)),
          highlight: true,
        },
        { name: "measured", x: [90, 180, 270], points: [1.24, 1.62, 2.05] },
      ],
    },
  ],
};

const row: Omit<CheckRow, "id" | "quantity" | "printed" | "compute"> = {
  unit: "1",
  evidence: "published",
  status: "published",
  source: "capstan-article",
  place: "table, row mu = 0.1",
};

/** Real comparisons of the capstan equation, and two rows that nobody looked up. */
export const sampleChecks: readonly CheckResult[] = [
  compare({
    ...row,
    id: "capstan-one-turn",
    quantity: "Ratio at one whole turn",
    printed: "1.9",
    compute: () => Math.exp(0.1 * 2 * Math.PI),
  }),
  compare({
    ...row,
    id: "capstan-two-turns",
    quantity: "Ratio at two whole turns",
    printed: "3.5",
    compute: () => Math.exp(0.1 * 4 * Math.PI),
  }),
  compare({
    ...row,
    id: "no-contact",
    quantity: "Ratio without contact",
    printed: "1",
    compute: () => Math.exp(0),
    evidence: "exact",
    source: "statics",
    place: "limit",
  }),
  compare({
    ...row,
    id: "hand-hold",
    quantity: "Force a hand can hold for a minute",
    printed: "180",
    compute: () => 176.4,
    readingError: 40,
    unit: "N",
    status: "common practice",
    source: "statics",
    place: "rule of thumb",
  }),
  compare({
    ...row,
    id: "block-loss",
    quantity: "Loss of a small block",
    printed: "0.05",
    compute: () => 0.0512,
    status: "from memory",
    source: "api-rp-9b",
    place: "table of efficiencies",
  }),
];

/** A notebook after its run, with every kind of output. Its values are invented. */
export const sample: ExecutedNotebook = {
  name: "how-hard-to-hold",
  cells: [
    {
      type: "markdown",
      number: 1,
      source:
        "# How hard do I have to hold?\n\nThe sheet of the demo skiff in a breeze that makes it plane. The boat and its values are invented.",
    },
    {
      type: "code",
      number: 2,
      source: 'import { answer, figure } from "haulbook";\nconst load = 860; // N',
      outputs: [],
    },
    {
      type: "code",
      number: 3,
      source: "answer(`With a ratchet and a coarse cover you hold **86 N**`);",
      outputs: [
        {
          kind: "answer",
          text: "With a ratchet and a coarse cover you hold about 86 N (8.8 kgf), likely 70 to 105 N, in 14 knots of wind; with a plain block, 290 N.",
        },
        picture,
        { kind: "stream", stream: "stdout", text: "load at the clew 860 N\nparts 2\n" },
      ],
    },
    {
      type: "markdown",
      number: 4,
      source:
        "## Why a turn helps\n\nA line that slides round something curved loses force to friction at every small piece of the bend. The pieces multiply:\n\n$$T_\\text{haul} / T_\\text{load} = e^{\\mu\\,\\theta}$$\n\nwith $\\mu$ the friction coefficient and $\\theta$ the angle of contact. Twice the angle squares the ratio; see [the ring](#figure-turn-by-angle).\n\n### What the angle does\n\n- a quarter turn: a fifth more\n- half a turn: half as much again",
    },
    { type: "code", number: 5, source: "figure(turns);", outputs: [turns] },
    {
      type: "markdown",
      number: 6,
      source: "## Which cover\n\nA coarse cover grips the sheave, and wears it. The table holds for a sheave of 63 mm.",
    },
    {
      type: "code",
      number: 7,
      source: "table(covers);\nresult(hold);",
      outputs: [
        {
          kind: "table",
          caption: "Covers on the demo sheave, 8 mm, dry",
          columns: [
            "Cover",
            "Strands",
            "Friction coefficient",
            "Hold easing [N]",
            "Hold hauling [N]",
            "Wears the sheave",
          ],
          rows: [
            ["polyester, smooth", 24, 0.11, 244.61, 512.4, "hardly"],
            ["polyester, coarse", 16, 0.19, 131.2, 871.93, "within a season"],
            ["polypropylene", 16, 0.16, 162.04, 744.1, "slowly"],
          ],
        },
        { kind: "result", label: "Hold with a coarse cover", text: "86 N (8.8 kgf)", range: "likely 70 to 105 N" },
        { kind: "result", label: "Hold with a plain block", text: "290 N (30 kgf)", range: "likely 270 to 305 N" },
      ],
    },
    {
      type: "markdown",
      number: 8,
      source:
        "## Ashore\n\nYou need a hand scale, the boat on its trolley, and a helper.\n\n1. Hang 10 kg on the sheet where the sail pulls.\n2. Ease slowly and read the scale.\n3. Haul slowly and read again.\n\nThe two readings should lie as far apart as the tint in the picture.",
    },
    { type: "markdown", number: 9, source: "## Questions" },
    {
      type: "code",
      number: 10,
      source: "question(first);\nquestion(second);",
      outputs: [
        {
          kind: "question",
          question: "Why is **easing** lighter than hauling?",
          answer:
            "Friction helps the hand when the line runs out and works against it when it comes in. Here the two differ by $512 - 245 = 267$ N.",
        },
        {
          kind: "question",
          question: "What changes with a third part?",
          answer: "The load is shared by three parts, and one more bend takes its share: 61 N instead of 86 N.",
        },
      ],
    },
    {
      type: "markdown",
      number: 11,
      source:
        "## How sure\n\nThe band comes from the friction of the cover, known to a fifth. A reading on your own boat would narrow it to a tenth.",
    },
    {
      type: "code",
      number: 12,
      source: "checks(rows);",
      outputs: [{ kind: "checks", title: "Capstan", results: sampleChecks }],
    },
  ],
};
