import { beforeAll, describe, expect, it } from "vitest";
import { bearings } from "../../src/materials/bearings.js";
import { demoBlocks } from "../../src/materials/block-sizes.js";
import { stiffnessLaws } from "../../src/materials/stiffness.js";

import type { PlanCatalogue, PlanRope } from "../../src/plan/catalogue.js";
import { choiceFrom } from "../../src/plan/choice.js";

import { optionsOf, type PlanJob } from "../../src/plan/line-options.js";
import { optimum } from "../../src/plan/optimum.js";
import { PlanError } from "../../src/plan/plan-error.js";
import { priorities } from "../../src/plan/priorities.js";
import { loadSolver, type Solver } from "../../src/plan/solver.js";
import { handForcesOfSize } from "../../src/reeving/size-gain.js";
import { tackle } from "../../src/reeving/tackle.js";
import { ropeLinearDensity } from "../../src/rope/make.js";
import { taper } from "../../src/rope/taper.js";

let solver: Solver;
beforeAll(async () => {
  solver = await loadSolver();
});

const drag = { value: 0.05, low: 0.02, high: 0.2 };
const bare = { fibre: "hmpe", construction: "bareBraid", diameter: 0.003 } as const;
const rope = (diameter: number): PlanRope => ({
  id: `covered ${1000 * diameter} mm`,
  words: `${1000 * diameter} mm covered line`,
  make: { fibre: "hmpe", construction: "coveredCore", coverFibre: "polyester", diameter },
  stiffness: stiffnessLaws.braidedCover,
  pricePerMetre: 300,
  tapers: [
    {
      id: "thin 3 mm",
      words: "3 mm running part",
      join: "splice",
      make: bare,
      stiffness: stiffnessLaws.bareCore,
      pricePerMetre: 150,
    },
  ],
});
const catalogue: PlanCatalogue = {
  ropes: [rope(0.005), rope(0.006)],
  blocks: demoBlocks.map(({ name, diameter: sheaveDiameter, grooveWidth, mass, workingLoad }) => ({
    id: name,
    words: name,
    sheaveDiameter,
    grooveWidth,
    mass,
    workingLoad,
    price: Math.round(20_000 * mass) + 800,
    bearing: bearings.ball,
    drag,
  })),
};
const job: PlanJob = {
  name: "mainsheet",
  stations: (turn) => [{ kind: "tackle", name: "3:1", reeving: tackle({ parts: 3, hauledFrom: "fixed", turn }) }],
  blocks: 3,
  blocksAloft: 1,
  load: 600,
  reach: 6,
  travel: 1,
  clearance: 0.5,
  tail: 1,
  aloftShare: 0.25,
  splices: 1,
  demands: { workingLoad: 250, safetyFactor: 5, ends: ["splice"], use: "new", wet: false },
};
const made = optionsOf(job, catalogue);
const option = (id: string) => made.line.options.find((one) => one.id === id)!;

describe("the options of a line", () => {
  it("are every rope, plain and tapered, with every block, and nothing is lost", () => {
    expect(made.line.options.length + made.leftOut.length).toBe(2 * 2 * demoBlocks.length);
    expect(new Set(made.line.options.map(({ id }) => id)).size).toBe(made.line.options.length);
  });

  it("have the hand forces of the model of the line, with the groove of the block", () => {
    const { sheaveDiameter, grooveWidth } = catalogue.blocks[3]!;
    const line = {
      ropeDiameter: 0.006,
      stiffness: stiffnessLaws.braidedCover,
      bearing: bearings.ball,
      drag,
      stations: (sheave: Parameters<PlanJob["stations"]>[0]) => job.stations({ ...sheave, grooveWidth }),
    };
    const forces = handForcesOfSize(line, sheaveDiameter, 600);
    const { handForce, handForceRobust, measures, measuresRobust } = option("covered 6 mm + 40 mm block");
    expect([handForce, handForceRobust]).toEqual([forces.hauling.value, forces.hauling.high]);
    expect(measures["dead band"]).toBe(forces.hauling.value - forces.easing.value);
    expect(measuresRobust!["run-out load"]).toBe(forces.runOutLoad.high);
  });

  it("weigh and cost what length and blocks say: three parts take three metres of rope for a metre of travel", () => {
    const length = 6 + 3 * 1 + 1;
    const { mass, cost, pieces, parts, splices, minutes } = option("covered 6 mm + 40 mm block");
    const metre = ropeLinearDensity(catalogue.ropes[1]!.make).value;
    expect(pieces).toEqual([{ rope: "covered 6 mm", length }]);
    expect(mass.dry).toBeCloseTo(length * metre + 3 * 0.035, 12);
    expect(mass.aloft).toBeCloseTo(0.25 * length * metre + 0.035, 12);
    expect(mass.wet).toBeGreaterThan(mass.dry);
    expect(cost).toBe(length * 300 + 3 * 1500);
    expect(parts).toEqual([{ part: "40 mm block", count: 3 }]);
    expect([splices, minutes]).toEqual([1, 15]);
  });

  it("are lighter with a thin running part, by what the taper saves", () => {
    const plain = option("covered 6 mm + 40 mm block");
    const tapered = option("covered 6 mm + thin 3 mm + 40 mm block");
    const plan = taper({
      covered: catalogue.ropes[1]!.make,
      bare,
      join: "splice",
      reach: 6,
      travel: 1,
      velocityRatio: 3,
      clearance: 0.5,
      tail: 1,
    });
    expect(plain.mass.dry - tapered.mass.dry).toBeCloseTo(plan.saved.dry.value, 12);
    expect(tapered.pieces.map(({ length }) => length)).toEqual([plan.cut.covered, plan.cut.bare]);
    expect([tapered.splices, tapered.minutes]).toEqual([3, 45]);
    expect(tapered.handForce).toBeLessThan(plain.handForce);
  });

  it("pull easier over a bigger block, and never better at the bad end of the range", () => {
    const forces = demoBlocks.map(({ name }) => option(`covered 5 mm + ${name}`)?.handForce).filter((one) => one);
    expect(forces).toEqual([...forces].sort((a, b) => b! - a!));
    expect(forces.length).toBeGreaterThan(4);
    for (const { measures, measuresRobust = {}, handForce, handForceRobust = 0 } of made.line.options) {
      expect(handForceRobust).toBeGreaterThan(handForce);
      expect(measuresRobust["block margin"]).toBeLessThanOrEqual(measures["block margin"]!);
      expect(measuresRobust["groove margin"]).toBeLessThanOrEqual(measures["groove margin"]!);
      expect(measuresRobust["run-out load"]).toBeGreaterThanOrEqual(measures["run-out load"]!);
    }
  });

  it("go into a plan: the lightest way that keeps margins and hand force", () => {
    const at = (measure: string, sense: "at most" | "at least", bound: number) =>
      ({ kind: "measure", line: "mainsheet", measure, sense, bound }) as const;
    const limits = [
      at("block margin", "at least", 1),
      at("strength margin", "at least", 1),
      at("hauling", "at most", 235),
    ];
    const best = optimum(solver, { lines: [made.line], limits })!.choice[0]!.option;
    const keeping = made.line.options.filter(
      ({ measures: one }) => one["block margin"]! >= 1 && one["strength margin"]! >= 1 && one.hauling! <= 235,
    );
    expect(keeping.length).toBeGreaterThan(0);
    expect(keeping.length).toBeLessThan(made.line.options.length);
    expect(best.mass.dry).toBe(Math.min(...keeping.map(({ mass }) => mass.dry)));
  });

  it("show that a bigger block pays on the loaded line, and not on the light one with many blocks", () => {
    const light: PlanJob = {
      ...job,
      name: "control line",
      stations: (turn) => [{ kind: "tackle", name: "6:1", reeving: tackle({ parts: 6, hauledFrom: "fixed", turn }) }],
      blocks: 6,
      load: 100,
    };
    const { tapers: _, ...plain } = catalogue.ropes[0]!;
    const lines = [light, job].map((one) => optionsOf(one, { ...catalogue, ropes: [plain] }).line);
    const ids = { mainsheet: "covered 5 mm + 32 mm block", "control line": "covered 5 mm + 32 mm block" };
    const boat = { lines, limits: [] };
    const [first, second] = priorities(boat, choiceFrom(boat, ids));
    expect([first!.line, second!.line]).toEqual(["mainsheet", "control line"]);
    const bigger = (name: string) => {
      const { options } = lines.find((line) => line.name === name)!;
      const [small, big] = ["32", "40"].map(
        (size) => options.find(({ id }) => id === `covered 5 mm + ${size} mm block`)!,
      );
      return (small!.handForce - big!.handForce) / (big!.mass.dry - small!.mass.dry);
    };
    expect(bigger("mainsheet")).toBeGreaterThan(3 * bigger("control line"));
  });

  it("are those of the ropes alone for a line without blocks", () => {
    const { line } = optionsOf({ ...job, stations: () => [], blocks: 0, blocksAloft: 0 }, catalogue);
    expect(line.options.map(({ id }) => id)).toContain("covered 5 mm");
    expect(line.options.every(({ handForce, parts }) => handForce === 600 && parts.length === 0)).toBe(true);
  });

  it("say why a combination cannot be made, and refuse a line that nothing fits", () => {
    const short = optionsOf({ ...job, reach: 0.6 }, catalogue);
    expect(short.leftOut).toHaveLength(2 * demoBlocks.length);
    expect(short.leftOut[0]!.reason).toMatch(/length for a taper/u);
    expect(() => optionsOf(job, { ropes: [], blocks: catalogue.blocks })).toThrow(PlanError);
    expect(() => optionsOf({ ...job, load: Number.NaN }, catalogue)).toThrow(/nothing that can be made; first: .*NaN/u);
  });
});
