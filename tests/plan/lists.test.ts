import { beforeAll, describe, expect, it } from "vitest";
import { beforeAfter, choiceFrom } from "../../src/plan/choice.js";
import { listCsv } from "../../src/plan/csv.js";
import { cutList } from "../../src/plan/cut-list.js";
import { front } from "../../src/plan/front.js";
import { limitPrices } from "../../src/plan/limit-price.js";
import { changeRows, cutRows, massRows, shoppingRows } from "../../src/plan/list.js";
import { massBudget } from "../../src/plan/mass-budget.js";
import { optimum } from "../../src/plan/optimum.js";
import { planJson } from "../../src/plan/plan-json.js";
import type { PlannedBoat } from "../../src/plan/planned-boat.js";
import { priorities } from "../../src/plan/priorities.js";
import { shoppingList } from "../../src/plan/shopping-list.js";
import { loadSolver, type Solver } from "../../src/plan/solver.js";
import { lineOf } from "./whole-boat.js";

let solver: Solver;
beforeAll(async () => {
  solver = await loadSolver();
});

const boat: PlannedBoat = {
  lines: [
    lineOf("mainsheet", [
      { milligrams: 100_000, cents: 2000, millinewtons: 200_000, reach: 5 },
      { milligrams: 150_000, cents: 4000, millinewtons: 180_000, reach: 4 },
      { milligrams: 250_000, cents: 6000, millinewtons: 90_000, reach: 3 },
    ]),
    lineOf("control line", [
      { milligrams: 40_000, cents: 1500, millinewtons: 20_000, reach: 5 },
      { milligrams: 140_000, cents: 5500, millinewtons: 15_000, reach: 5 },
    ]),
    lineOf("outhaul", [{ milligrams: 30_000, cents: 900, millinewtons: 30_000, reach: 2 }]),
  ],
  limits: [],
};
const before = choiceFrom(boat, { mainsheet: "way 1", "control line": "way 2", outhaul: "way 1" });
const after = choiceFrom(boat, { mainsheet: "way 3", "control line": "way 1", outhaul: "way 1" });

describe("before and after", () => {
  it("shows each line, and differences that add up to those of the boat", () => {
    const change = beforeAfter(before, after);
    expect(change.lines.map(({ line, changed }) => [line, changed])).toEqual([
      ["mainsheet", true],
      ["control line", true],
      ["outhaul", false],
    ]);
    expect(change.difference).toMatchObject({ dry: 0.05, cost: 0, handForce: -105, worstHandForce: -110 });
    expect(change.lines.map(({ difference }) => difference.dry)).toEqual([0.15, -0.1, 0]);
    expect(change.after.dry - change.before.dry).toBeCloseTo(0.05, 12);
    expect(changeRows(change).rows.map((row) => row.slice(0, 4))).toEqual([
      ["mainsheet", "way 1", "way 3", 0.15],
      ["control line", "way 2", "way 1", -0.1],
      ["outhaul", "way 1", "way 1", 0],
      ["all lines", "", "", 0.05],
    ]);
    expect(() => beforeAfter(before, after.slice(1))).toThrow(/lines after/u);
  });
});

describe("the shopping list", () => {
  it("buys everything for a new boat: rope with spare by half metres, blocks by the piece", () => {
    const list = shoppingList({ choice: after });
    expect(list.ropes).toEqual([
      { rope: "rope 0", needed: 14, toBuy: 15, pieces: 3, lines: ["mainsheet", "control line", "outhaul"] },
    ]);
    expect(list.parts).toEqual([{ part: "block", needed: 2, atHand: 0, toBuy: 2 }]);
    expect(shoppingList({ choice: after, spare: 0, rounding: 7 }).ropes[0]!.toBuy).toBe(14);
  });

  it("leaves out lines that stay, and takes blocks over from lines that change", () => {
    const list = shoppingList({ choice: after, before });
    expect(list.ropes).toMatchObject([{ rope: "rope 0", needed: 10, lines: ["mainsheet", "control line"] }]);
    expect(list.parts).toEqual([{ part: "block", needed: 2, atHand: 1, toBuy: 1 }]);
    const back = shoppingList({ choice: before, before: after });
    expect(back.parts).toEqual([{ part: "block", needed: 1, atHand: 1, toBuy: 0 }]);
    expect(back.leftOver).toEqual([{ part: "block", count: 1 }]);
    expect(shoppingList({ choice: after, before: after })).toEqual({ ropes: [], kept: [], parts: [], leftOver: [] });
  });
});

describe("rope that stays", () => {
  const made = (pieces: readonly { rope: string; length: number }[], part: string) => {
    const [option] = lineOf("vang", [{ milligrams: 9000, cents: 100, millinewtons: 1000, reach: 1 }]).options;
    return { ...option!, id: `${JSON.stringify(pieces)} ${part}`, pieces, parts: [{ part, count: 2 }] };
  };
  const change = (from: ReturnType<typeof made>, to: ReturnType<typeof made>) => {
    const line = { name: "vang", options: [from, to] };
    const [old, now] = [[{ line, option: from }], [{ line, option: to }]];
    return { list: shoppingList({ choice: now, before: old }), cut: cutList(now, old) };
  };
  const four = { rope: "thin", length: 4 };

  it("is not bought and not cut where only blocks change", () => {
    const { list, cut } = change(made([four], "small"), made([four], "big"));
    expect(list.ropes).toEqual([]);
    expect(list.kept).toEqual([{ line: "vang", ...four }]);
    expect(list.parts).toEqual([{ part: "big", needed: 2, atHand: 0, toBuy: 2 }]);
    expect(list.leftOver).toEqual([{ part: "small", count: 2 }]);
    expect(cut).toMatchObject({ lines: [], ropes: [], splices: 0, minutes: 0 });
    expect(shoppingRows(list).rows).toEqual([["big", 2, 0, 2, "pieces"]]);
  });

  it("is cut shorter where the line needs less, and bought where it needs more", () => {
    const shorter = change(made([four], "small"), made([{ ...four, length: 3 }], "small"));
    expect(shorter.list.ropes).toEqual([]);
    expect(shorter.cut.lines[0]!.pieces).toEqual([{ rope: "thin", length: 3, use: "the old rope, cut shorter" }]);
    const longer = change(made([four], "small"), made([{ ...four, length: 5 }], "small"));
    expect(longer.list.ropes).toMatchObject([{ rope: "thin", needed: 5 }]);
    expect(longer.list.kept).toEqual([]);
  });

  it("serves once: the second piece of its kind is bought", () => {
    const { list } = change(made([four], "small"), made([four, four], "small"));
    expect(list.ropes).toMatchObject([{ rope: "thin", needed: 4, pieces: 1 }]);
    expect(list.kept).toHaveLength(1);
  });
});

describe("the cut list", () => {
  it("has every piece once by line and once by rope, longest first", () => {
    const list = cutList(after);
    const byLine = list.lines.flatMap(({ pieces }) => pieces.map(({ length }) => length));
    expect(list.ropes.flatMap(({ pieces }) => pieces.map(({ length }) => length))).toEqual([6, 4, 4]);
    expect(list.ropes[0]!.total).toBe(byLine.reduce((sum, length) => sum + length, 0));
    expect([list.splices, list.minutes]).toEqual([2, 30]);
    expect(cutRows(list).rows[0]).toEqual(["mainsheet", "rope 0", "", 6, "", "", "", 2, 30]);
  });
});

describe("the mass budget", () => {
  it("adds up, heaviest line first", () => {
    const { lines, all } = massBudget(after);
    expect(lines.map(({ line }) => line)).toEqual(["mainsheet", "control line", "outhaul"]);
    expect(all).toEqual({ dry: 0.32, wet: 0.4, aloft: 0.16 });
    expect(lines.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 12);
    expect(massRows({ lines, all }).rows.at(-1)).toEqual(["all lines", 320, 400, 160, 100]);
  });
});

describe("priorities", () => {
  it("put first the line where a gram saves most, and say how much less it saves elsewhere", () => {
    const found = priorities(boat, before.with(1, after[1]!));
    expect(found.map(({ line }) => line)).toEqual(["mainsheet", "control line", "outhaul"]);
    expect(found[0]!.byMass).toMatchObject({ savedForce: 110, addedMass: 0.15 });
    expect(found[0]!.byMass!.newtonsPerGram).toBeCloseTo(110 / 150, 12);
    expect(found[0]!.byCost!.newtonsPerEuro).toBeCloseTo(110 / 40, 12);
    expect(found.map(({ words }) => words)).toEqual([
      "mainsheet: way 3 saves 110 N at the hand for 150 g, 1.4 g a newton: here the next gram goes furthest",
      "control line: way 2 saves 5 N at the hand for 100 g, 20 g a newton; a gram on mainsheet saves 15 times as much",
      "outhaul: nothing in the catalogue is easier on the hand within the limits",
    ]);
  });

  it("keep the limits on totals of the whole boat, and let one that is broken already grow no further", () => {
    const now = before.with(1, after[1]!);
    const within = (atMost: number) =>
      priorities({ ...boat, limits: [{ kind: "total", total: "dry", atMost }] }, now).find(
        ({ line }) => line === "mainsheet",
      )!;
    expect(within(0.32).byMass!.option.id).toBe("way 3");
    expect(within(0.319).byMass!.option.id).toBe("way 2");
    expect(within(0.1)).not.toHaveProperty("byMass");
  });

  it("say where a bigger block pays: on a loaded line with one block, not on a light one with many", () => {
    const withBlocks = (name: string, options: readonly [number, number, string][], count: number) => {
      const made = lineOf(
        name,
        options.map(([milligrams, millinewtons]) => ({ milligrams, millinewtons, cents: 100, reach: 1 })),
      );
      const pieces = [{ rope: "rope", length: 5 }];
      return {
        ...made,
        options: made.options.map((one, at) => ({ ...one, pieces, parts: [{ part: options[at]![2], count }] })),
      };
    };
    const lines = [
      withBlocks(
        "light",
        [
          [100_000, 40_000, "small"],
          [300_000, 38_000, "big"],
        ],
        8,
      ),
      withBlocks(
        "loaded",
        [
          [100_000, 200_000, "small"],
          [150_000, 180_000, "big"],
        ],
        1,
      ),
    ];
    const found = priorities(
      { lines, limits: [] },
      choiceFrom({ lines, limits: [] }, { light: "way 1", loaded: "way 1" }),
    );
    expect(
      found.map(({ line, byHardware }) => [line, Number(byHardware!.gramsPerNewton.toFixed(9)), byHardware!.pieces]),
    ).toEqual([
      ["loaded", 2.5, 1],
      ["light", 100, 8],
    ]);
    expect(found[0]!.words).toContain(
      "pays here first: 20 N for 50 g, 2.5 g a newton, at 200 N in the hand and 1 piece",
    );
    expect(found[1]!.words).toContain("does not pay: 2 N for 200 g, 100 g a newton, 40 times that on loaded");
  });

  it("look at options only that keep the limits of the line", () => {
    const limits = [{ kind: "measure", line: "mainsheet", measure: "reach", sense: "at least", bound: 4 }] as const;
    const [, mainsheet] = priorities({ ...boat, limits }, before.with(1, after[1]!));
    expect(mainsheet!.byMass!.option.id).toBe("way 2");
  });
});

describe("export", () => {
  it("writes CSV that a reader gets back, and no formula", () => {
    const text = listCsv({
      columns: ["Line", "Price, total"],
      rows: [
        ['the "thin" one', 12.5],
        ["two\nlines", -3],
        ["=HYPERLINK(1)", Number.NaN],
        [" @x", 1],
        ["+1", "-2"],
        ["\ttab", "plain - text"],
      ],
    });
    expect(text.split("\r\n")).toEqual([
      'Line,"Price, total"',
      '"the ""thin"" one",12.5',
      '"two\nlines",-3',
      "'=HYPERLINK(1),",
      "' @x,1",
      "'+1,'-2",
      "'\ttab,plain - text",
      "",
    ]);
    expect(listCsv(shoppingRows(shoppingList({ choice: after })))).toContain("rope 0,14,0,15,m\r\n");
  });

  it("writes JSON with options by name, totals and proofs", () => {
    const limits = [{ kind: "total", total: "handForce", atMost: 200 }] as const;
    const limited = { ...boat, limits };
    const best = optimum(solver, limited)!;
    const points = front(solver, limited);
    const prices = limitPrices(solver, limited);
    const back = JSON.parse(planJson({ best, front: points, prices }));
    expect(back.best.choice[0]).toEqual({ line: "mainsheet", option: "way 3" });
    expect(back.best.proofs[0]).toMatchObject({ minimised: "dry", value: 0.32, bound: 0.32, gap: 0 });
    expect(back.front.points).toHaveLength(points.points.length);
    expect(back.prices).toMatchObject([{ limit: "hand force of all lines at most 200 N", saved: 0.15 }]);
    expect(back.units.cost).toBe("cent");
  });
});
