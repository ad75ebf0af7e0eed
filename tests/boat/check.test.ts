import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Boat } from "../../src/boat/boat.js";
import { checkBoat } from "../../src/boat/check.js";
import { compareBoats } from "../../src/boat/compare.js";
import type { Demand } from "../../src/boat/demand.js";
import { checkLine } from "../../src/boat/line-check.js";
import { withLine } from "../../src/boat/ready.js";
import { lineStanding } from "../../src/boat/standing.js";
import { lineTrials } from "../../src/boat/trials.js";
import { ropeLinearDensity } from "../../src/rope/make.js";
import { long } from "../long.js";
import { evenly } from "../numerics/evenly.js";
import { small } from "./small-boat.js";

const about = (boat: Boat, line: string, subject: string): Demand =>
  lineStanding(boat, line).demands.find((one) => one.subject === subject)!;

describe("a line that is checked", () => {
  it("is asked for what its file asks: more of a set halyard with limits of its own, less of other lines", () => {
    const asked = (line: string, boat = small()) => lineStanding(boat, line).demands.map(({ subject }) => subject);
    const limited = small([
      "    touches: [mainsheet]\n",
      "    touches: [mainsheet]\n    limits: { mass: 900 g, cost: 200 EUR }\n",
    ]);
    for (const subject of ["mass of the line", "cost of the line"]) {
      expect(asked("halyard", limited)).toContain(subject);
      expect(asked("halyard")).not.toContain(subject);
    }
    expect(asked("halyard")).toContain("set shape");
    expect(asked("outhaul")).not.toContain("set shape");
    expect(asked("outhaul")).not.toContain("run out in light air");
    expect(new Set(asked("halyard", limited)).size).toBe(asked("halyard", limited).length);
  });

  it.each([
    ["injury", "mainsheet", "strength of the rope", ["safetyFactor: 5", "safetyFactor: 100"]],
    ["injury", "outhaul", "working load at end of the boom", ["workingLoad: 2400 N", "workingLoad: 200 N"]],
    ["race", "mainsheet", "hand that holds", ["hold: 90 N", "hold: 5 N"]],
    ["race", "mainsheet", "pull to haul", ["pull: 250 N", "pull: 20 N"]],
    ["injury", "outhaul", "cleat in a gust", ["turns: 3, eights: 1", "turns: 0.2"]],
    [
      "race",
      "mainsheet",
      "run out in light air",
      ["    use: season\n  halyard", "    use: season\n    tailDrag: 100 N\n  halyard"],
    ],
    ["race", "halyard", "set shape", ["allowed: 30 mm", "allowed: 0.1 mm"]],
    ["comfort", "outhaul", "bend at end of the boom", ["block 40: { diameter: 40 mm", "block 40: { diameter: 20 mm"]],
    ["comfort", "outhaul", "groove at end of the boom", ["groove: 5.5 mm", "groove: 4 mm"]],
    ["race", "mainsheet", "cover on the tread at ratchet", ["strands: 16", "strands: 8"]],
    [
      "race",
      "halyard",
      "chafe on mainsheet",
      ["fibre: hmpe, construction: bareBraid", "fibre: aramid, construction: bareBraid"],
    ],
    [
      "race",
      "halyard",
      "size of rope in the cleat",
      ["cam: { type: cam, thinnest: 3 mm, thickest: 10 mm", "cam: { type: cam, thinnest: 3 mm, thickest: 6 mm"],
    ],
  ] as const)("tells of %s, on the %s, %s, when that gets worse", (consequence, line, subject, change) => {
    const along: readonly (readonly [string, string])[] = [
      ...(subject.startsWith("cover on") ? ([["tread: faceted", "tread: toothed"]] as const) : []),
      ...(subject.startsWith("chafe") ? ([["cover: { fibre: polyester", "cover: { fibre: aramid"]] as const) : []),
    ];
    const before = about(small(), line, subject);
    const after = about(small(change, ...along), line, subject);
    expect(before.consequence).toBe(consequence);
    expect(after.margins.middle).toBeLessThan(before.margins.middle);
    expect(after.outcome).toBe("not enough");
    expect(after.reason).not.toBe(before.reason);
  });

  it("knows what can hurt somebody, and puts it first", () => {
    const weak = small(["safetyFactor: 5", "safetyFactor: 100"]);
    expect(checkBoat(weak).safe).toBe(false);
    expect(checkLine(weak, "mainsheet").demands[0]).toMatchObject({ consequence: "injury", outcome: "not enough" });
    const hard = small(["pull: 250 N", "pull: 20 N"]);
    expect(checkBoat(hard).safe).toBe(true);
    expect(checkBoat(hard).thingsToDo.map(({ because }) => because.subject)).toContain("pull to haul");
  });

  it("takes the least of the crew's hold and the boat's limit", () => {
    const limited = small(["safetyFactor: 5\n", "safetyFactor: 5\n  handForce: 45 N\n"]);
    expect(about(limited, "mainsheet", "hand that holds").margins.middle).toBeCloseTo(
      about(small(), "mainsheet", "hand that holds").margins.middle / 2,
      9,
    );
  });

  it("never gains by more load, and never loses by a stronger hand or a lower safety factor", () => {
    const at = (load: number, hand: number, factor: number) => {
      const boat = small(["stated, design: 150 N", `stated, design: ${load} N`]);
      const { hold, pull } = boat.crew.helm!;
      const crew = { helm: { hold: hand * hold, pull: hand * pull } };
      return lineStanding({ ...boat, crew, limits: { safetyFactor: factor } }, "outhaul").demands;
    };
    const notBelow = (better: readonly Demand[], worse: readonly Demand[]) => {
      for (const one of worse) {
        const other = better.find(({ subject }) => subject === one.subject)!;
        expect(other.margins.middle).toBeGreaterThanOrEqual(one.margins.middle * (1 - 1e-9));
        expect(other.margins.worst).toBeGreaterThanOrEqual(one.margins.worst * (1 - 1e-9));
      }
    };
    fc.assert(
      fc.property(evenly(20, 400), evenly(1, 2), (load, more) => {
        notBelow(at(load, 1, 5), at(more * load, 1, 5));
        notBelow(at(load, more, 5), at(load, 1, 5));
        notBelow(at(load, 1, 5), at(load, 1, 5 * more));
      }),
      { seed: 7, numRuns: long(6, 25) },
    );
  });

  it("needs less hand the more parts its tackle has", () => {
    const boat = small();
    const line = boat.lines.mainsheet!;
    const pulls = [2, 3, 4, 6].map((parts) => {
      const path = line.path.map((station) => (station.kind === "tackle" ? { ...station, parts } : station));
      return lineStanding(withLine(boat, "mainsheet", { ...line, path }), "mainsheet").feel.hauling.value;
    });
    expect(pulls).toEqual([...pulls].sort((a, b) => b - a));
  });
});

describe("mass and cost", () => {
  it("of a line are those of rope and hardware, one block for each sheave", () => {
    const { budget } = lineStanding(small(), "mainsheet");
    expect(budget.hardware).toBeCloseTo(3 * 0.087 + 0.109, 12);
    expect(budget.rope.dry.value).toBeCloseTo(9 * 0.034, 12);
    expect(budget.dry.value).toBeCloseTo(9 * 0.034 + 3 * 0.087 + 0.109, 12);
    expect(budget.cost).toBeCloseTo(9 * 3.4 + 3 * 44 + 76, 9);
    expect(budget.wet.value).toBeGreaterThan(budget.dry.value);
  });

  it("of a rope that nobody weighed are worked out, with their range", () => {
    const { budget } = lineStanding(small(), "outhaul");
    const model = ropeLinearDensity({ fibre: "hmpe", construction: "bareBraid", diameter: 0.004 });
    expect(budget.rope.dry.value).toBeCloseTo(4 * model.value, 12);
    expect(budget.rope.dry.high).toBeCloseTo(4 * model.high, 12);
  });

  it("of a boat are the sums of its lines, and are held against its limits", () => {
    const limits = "safetyFactor: 5\n  mass: 200 g\n  cost: 5000 EUR\n";
    const { lines, dry, wet, cost, totals, currency } = checkBoat(small(["safetyFactor: 5\n", limits]));
    expect(dry.value).toBeCloseTo(
      lines.reduce((sum, { budget }) => sum + budget.dry.value, 0),
      12,
    );
    expect(wet.high).toBeCloseTo(
      lines.reduce((sum, { budget }) => sum + budget.wet.high, 0),
      12,
    );
    expect(cost).toBeCloseTo(
      lines.reduce((sum, { budget }) => sum + budget.cost, 0),
      9,
    );
    expect(currency).toBe("EUR");
    expect(totals.map(({ outcome }) => outcome)).toEqual(["not enough", "enough"]);
    expect(checkBoat(small()).totals).toEqual([]);
  });
});

describe("changes that are tried", () => {
  it("are single ones, nearest first, and none is the line as it is", () => {
    const boat = small();
    const line = boat.lines.mainsheet!;
    const trials = lineTrials(boat, line);
    expect(trials.length).toBeGreaterThan(5);
    expect(trials.map(({ away }) => away)).toEqual(trials.map(({ away }) => away).sort((a, b) => a - b));
    for (const trial of trials) {
      if (trial.crew !== undefined) continue;
      const changed =
        trial.line.rope.filter(({ rope }, at) => rope !== line.rope[at]!.rope).length +
        trial.line.path.filter((station, at) => station !== line.path[at]).length;
      expect(changed).toBe(1);
    }
  });
});

describe("two boats side by side", () => {
  it("of one kind differ in nothing", () => {
    const { lines, before, after } = compareBoats(small(), small());
    expect(lines.map(({ name }) => name)).toEqual(["mainsheet", "halyard", "outhaul"]);
    expect(lines.flatMap(({ changed }) => changed)).toEqual([]);
    expect(before).toEqual(after);
  });

  it("show what a change does, and lines that only one has", () => {
    const before = small();
    const { outhaul: _, ...kept } = small(
      ["turns: 3, eights: 1", "turns: 0.2"],
      ["safetyFactor: 5", "safetyFactor: 100"],
    ).lines;
    const after: Boat = { ...before, limits: { safetyFactor: 100 }, lines: { ...kept, vang: before.lines.outhaul! } };
    const { lines } = compareBoats(before, after);
    expect(lines.map(({ name }) => name)).toEqual(["mainsheet", "halyard", "outhaul", "vang"]);
    expect(
      lines[0]!.changed.map(({ demand: { subject }, before: was, after: is }) => [subject, was, is]),
    ).toContainEqual(["strength of the rope", "enough", "not enough"]);
    expect(lines[2]).not.toHaveProperty("after");
    expect(lines[3]).not.toHaveProperty("before");
  });
});
