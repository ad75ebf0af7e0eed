import { describe, expect, it } from "vitest";
import type { Boat } from "../../src/boat/boat.js";
import type { Demand } from "../../src/boat/demand.js";
import { lineOf } from "../../src/boat/ready.js";
import { lineStanding } from "../../src/boat/standing.js";
import { lashing, shackle } from "../../src/rope/lashing.js";
import { small } from "./small-boat.js";

const about = (boat: Boat, line: string, subject: string): Demand | undefined =>
  lineStanding(boat, line).demands.find((one) => one.subject === subject);

describe("a file of the first form", () => {
  it("is told how it becomes one of the second", () => {
    expect(() => small(["version: 2\n", ""])).toThrow(
      /version: found nothing; allowed: version: 2\. Write version: 2/u,
    );
    expect(() => small(["version: 2\n", "version: 1\n"])).toThrow(/found the plain number 1.*ends: \{ sail: splice/u);
    expect(() => small(["ends: { sail: bowline }", "ends: [bowline]"])).toThrow(/ends: found a list or mapping/u);
  });
});

describe("ends of a line", () => {
  const weakest = (boat: Boat, line: string, piece: number) => lineOf(boat, line).pieces[piece]!.job.ends;

  it("belong to the piece at their end, and pieces are spliced to one another", () => {
    const boat = small([
      "    ends: { sail: splice }\n    use: new",
      "    ends: { sail: splice, hand: anyKnot }\n    use: new",
    ]);
    expect(weakest(boat, "halyard", 0)).toEqual(["splice", "splice"]);
    expect(weakest(boat, "halyard", 1)).toEqual(["anyKnot", "splice"]);
    expect(weakest(small(), "mainsheet", 0)).toEqual(["bowline"]);
  });

  it("in between weaken every piece, and joined ends are a splice", () => {
    const tied = small(["ends: { sail: bowline }", "ends: { sail: bowline, between: [sheetBend] }"]);
    expect(weakest(tied, "mainsheet", 0)).toEqual(["bowline", "sheetBend"]);
    const joined = small(["ends: { sail: bowline }", "ends: { sail: bowline }\n    form: endless"]);
    expect(weakest(joined, "mainsheet", 0)).toEqual(["splice"]);
  });
});

describe("what an inspection found", () => {
  it("stands in the place of how long the rope has been in use", () => {
    const worn = small([
      "ends: { sail: bowline }",
      "ends: { sail: bowline }\n    inspected: { on: 2026-05-12, found: worn }",
    ]);
    expect(lineOf(worn, "mainsheet").pieces[0]!.job.use).toBe("worn");
    const margin = (boat: Boat) => about(boat, "mainsheet", "strength of the rope")!.margins.middle;
    expect(margin(worn)).toBeLessThan(margin(small()));
    expect(() =>
      small(["ends: { sail: bowline }", "ends: { sail: bowline }\n    inspected: { on: May, found: worn }"]),
    ).toThrow(/a date such as 2026-05-12/u);
  });
});

describe("places on the boat", () => {
  const outhaul = "      - { kind: block, name: end of the boom, block: block 40, wrap: 180 deg }\n";
  const placed = (wrap: string, sail: string, here: string, after: string) =>
    small(
      [outhaul, `      - { kind: block, name: end of the boom, block: block 40, at: ${here}${wrap} }\n`],
      [
        "{ kind: cleat, name: cleat, cleat: horn, turns: 3",
        `{ kind: cleat, name: cleat, at: ${after}, cleat: horn, turns: 3`,
      ],
      [
        "    ends: { sail: splice }\n    use: season\ncatalogue",
        `    ends: { sail: splice }\n    sailAt: ${sail}\n    use: season\ncatalogue`,
      ],
    );
  const wrapOf = (boat: Boat) => {
    const [station] = boat.lines.outhaul!.path;
    return station!.kind === "block" ? station!.wrap : Number.NaN;
  };

  it.each([
    ["back the way it came", "[1 m, 0 m, 0 m]", "[0 m, 0 m, 0 m]", "[2 m, 0 m, 0 m]", Math.PI],
    ["a quarter turn", "[1 m, 0 m, 0 m]", "[0 m, 0 m, 0 m]", "[0 m, 0 m, 3 m]", Math.PI / 2],
    ["straight on", "[1 m, 0 m, 0 m]", "[0 m, 0 m, 0 m]", "[-2 m, 0 m, 0 m]", 0],
    ["round a corner of the deck", "[0 m, 0 m, 2 m]", "[0 m, 0 m, 0 m]", "[0 m, 1 m, 1 m]", (3 * Math.PI) / 4],
  ] as const)("give the angle of the rope: %s", (_, sail, here, after, angle) => {
    expect(wrapOf(placed("", sail, here, after))).toBeCloseTo(angle, 12);
  });

  it("must agree with an angle that is written, and are asked for where it is left out", () => {
    const back = ["[1 m, 0 m, 0 m]", "[0 m, 0 m, 0 m]", "[2 m, 0 m, 0 m]"] as const;
    expect(wrapOf(placed(", wrap: 175 deg", ...back))).toBeCloseTo((175 / 180) * Math.PI, 12);
    expect(() => placed(", wrap: 90 deg", ...back)).toThrow(/wrap.*about 180 deg, which the places give/u);
    expect(() => small([outhaul, outhaul.replace(", wrap: 180 deg", "")])).toThrow(/an angle, or the places before/u);
  });
});

describe("attachments", () => {
  const at = (attached: string) =>
    small(["block: block 40, wrap: 180 deg", `block: block 40, wrap: 180 deg, attached: ${attached}`]);
  const subject = "attachment of end of the boom";

  it("carry the vector sum: twice the line where it comes back", () => {
    const boat = at("{ kind: rated, ratedLoad: 1000 N }");
    const { loads, feel } = lineStanding(boat, "outhaul");
    const line = loads.gust.value + (feel.hauling.value / loads.design.value) * loads.gust.value;
    expect(1000 / about(boat, "outhaul", subject)!.margins.middle).toBeCloseTo(line, -1);
    expect(about(small(), "outhaul", subject)).toBeUndefined();
  });

  it("are judged by what is stated, by lashing and by shackle, and can hurt somebody", () => {
    const weak = about(at("{ kind: rated, ratedLoad: 300 N }"), "outhaul", subject)!;
    expect(weak).toMatchObject({ consequence: "injury", outcome: "not enough" });
    const pull = 300 / weak.margins.middle;
    const bar = about(at("{ kind: shackle, bar: 5 mm }"), "outhaul", subject)!;
    expect(bar.margins.middle).toBeCloseTo(shackle({ barDiameter: 0.005 }).workingLoad.value / pull, 6);
    const lashed = about(
      at("{ kind: lashing, twine: braid 4, rounds: 2, gap: 30 mm, bar: 5 mm }"),
      "outhaul",
      subject,
    )!;
    const { breakLoad } = lashing({
      twine: { fibre: "hmpe", construction: "bareBraid", diameter: 0.004 },
      rounds: 2,
      gap: 0.03,
      eyeDiameter: 0.005,
    });
    expect(lashed.margins.middle).toBeCloseTo(breakLoad.value / 5 / pull, 6);
    expect(() => at("{ kind: lashing, twine: yarn, rounds: 2, gap: 30 mm, bar: 5 mm }")).toThrow(/"yarn"/u);
  });

  it("of a cleat carry the line", () => {
    const boat = small(["cleat: horn, turns: 3", "cleat: horn, attached: { kind: rated, ratedLoad: 400 N }, turns: 3"]);
    const gust = lineStanding(boat, "outhaul").loads.gust.value;
    const { margins } = about(boat, "outhaul", "attachment of cleat")!;
    expect(400 / margins.middle).toBeLessThan(gust);
    expect(400 / margins.middle).toBeGreaterThan(0.7 * gust);
  });
});

describe("lines of another form", () => {
  const form = (text: string, ...more: readonly (readonly [string, string])[]) =>
    small(["ends: { sail: bowline }", `ends: { sail: bowline }\n    ${text}`], ...more);

  it("weigh and cost twice where there is one on each side", () => {
    const [one, two] = [small(), form("count: 2")].map((boat) => lineStanding(boat, "mainsheet"));
    expect(two!.budget.dry.value).toBeCloseTo(2 * one!.budget.dry.value, 12);
    expect(two!.budget.cost).toBeCloseTo(2 * one!.budget.cost, 9);
    expect(two!.feel).toEqual(one!.feel);
  });

  it("take half the line a hand where both ends are hauled", () => {
    const least = (text: string) =>
      about(form(`${text}limits: { mostLine: 2 m }`), "mainsheet", "line to haul")!.margins.middle;
    expect(least("form: double-ended\n    ")).toBeCloseTo(2 * least(""), 12);
  });

  it("need not run out by themselves where they are endless", () => {
    expect(about(small(), "mainsheet", "run out in light air")).toBeDefined();
    expect(about(form("form: endless"), "mainsheet", "run out in light air")).toBeUndefined();
  });

  it("may be tackles in a row, a coarse one and a fine one, and have a colon in their names", () => {
    const row = small([
      "- { kind: tackle, name: tackle, parts: 3, hauledFrom: fixed, block: block 63 }",
      "- { kind: tackle, name: coarse 4:1, parts: 4, hauledFrom: fixed, block: block 63 }\n      - { kind: tackle, name: fine 6:1, parts: 6, hauledFrom: fixed, block: block 63 }",
    ]);
    const { middle } = lineOf(row, "mainsheet");
    expect(middle.velocityRatio).toBe(24);
    expect(middle.handForces(1000).hauling).toBeGreaterThan(1000 / 24);
    expect(middle.handForces(1000).easing).toBeLessThan(1000 / 24);
  });
});
