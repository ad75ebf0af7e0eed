import { describe, expect, it } from "vitest";
import { calibrate } from "../../src/calibration/calibrate.js";
import { pullSigma } from "../../src/calibration/law-fit.js";
import { expectedHandForce, priorOf } from "../../src/calibration/measured-law.js";
import { measuredLosses } from "../../src/calibration/measured-losses.js";
import { nextMeasurements } from "../../src/calibration/next-measurement.js";
import type { Reading } from "../../src/calibration/reading.js";
import { calibrationRecords } from "../../src/calibration/records.js";
import { standingLine } from "../../src/calibration/standing-line.js";
import { type TurnShare, turnShare } from "../../src/calibration/turn-share.js";
import { ninetyFifth } from "../../src/numerics/normal-quantile.js";
import { ReevingError } from "../../src/quantity/errors.js";
import { type Line, type PreparedLine, prepareLine } from "../../src/reeving/line.js";
import type { Station } from "../../src/reeving/reeving.js";
import { scaledLine } from "../../src/reeving/scaled.js";
import { tackle } from "../../src/reeving/tackle.js";
import { bandOf } from "../../src/sources/band.js";
import type { UncertainInput } from "../../src/uncertainty/uncertain-input.js";
import { seeded } from "../faults/random.js";
import { long } from "../long.js";

const rope = { diameter: 0.006, stiffness: { tensionTerm: 0, constantTerm: 0, diameterTerm: 0 } };
const lineOf = (stations: readonly Station[]) => prepareLine({ rope, stations });

interface Made {
  readonly parts: number;
  readonly hauledFrom?: "moving" | "fixed";
  readonly leadBlocks?: number;
  readonly ratio: number;
  readonly drag?: number;
}

/** A tackle whose every turn loses the same, put together apart from the code under test. */
function tackleOf({ parts, hauledFrom = "fixed", leadBlocks = 0, ratio, drag = 0 }: Made): PreparedLine {
  const turn = { kind: "measured", name: "sheave", tensionRatio: ratio, drag } as const;
  return lineOf([{ kind: "tackle", name: "tackle", reeving: tackle({ parts, hauledFrom, turn, leadBlocks }) }]);
}

const exact = (line: PreparedLine, loads: readonly number[], more: Partial<Reading>): Reading[] =>
  loads.map((load, index) => {
    const { hauling, easing } = line.handForces(load);
    return { row: index + 1, line: "sheet", load, haul: hauling, ease: easing, resolution: 1e-6, wet: false, ...more };
  });

describe("readings of a tackle without error", () => {
  it("of an 8:1 with a loss of 1.15 a turn give 1.15 back", () => {
    const [found] = calibrate(exact(tackleOf({ parts: 8, ratio: 1.15 }), [400], { purchase: 8, turns: 8 }));
    expect(found!.fit!.ratio.value).toBeCloseTo((8 * 0.15 * 1.15 ** 8) / (1.15 ** 8 - 1), 9);
    expect(turnShare(found!.fit!, { turns: 8, purchase: 8 }).ratio.value).toBeCloseTo(1.15, 9);
    expect(found!.notes.join(" ")).toContain("a tackle of 8 parts hauled from the fixed block");
  });

  it.each([2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12])("of %i parts give back ratio and drag of a turn", (parts) => {
    for (const { hauledFrom, leadBlocks, turns } of [
      { hauledFrom: "fixed", leadBlocks: 0, turns: parts },
      { hauledFrom: "moving", leadBlocks: 0, turns: parts - 1 },
      { hauledFrom: "fixed", leadBlocks: 2, turns: parts + 2 },
    ] as const) {
      const line = tackleOf({ parts, hauledFrom, leadBlocks, ratio: 1.11, drag: 0.4 });
      const [found] = calibrate(exact(line, [300, 900, 2000], { purchase: parts, turns }));
      expect(found!.leftOut).toEqual([]);
      const turn = turnShare(found!.fit!, { turns, purchase: parts });
      expect(turn.ratio.value).toBeCloseTo(1.11, 7);
      expect(turn.drag.value).toBeCloseTo(0.4, 5);
      for (const way of ["hauling", "easing"] as const) {
        const pull = { load: 1500, purchase: parts, way, ease: found!.ease };
        expect(expectedHandForce(found!.fit!, pull).value).toBeCloseTo(line.handForce(1500, way), 5);
      }
    }
  });

  it("of whips one upon the other give back the loss of a whip", () => {
    const whip = (name: string): Station => ({
      kind: "tackle",
      name,
      reeving: tackle({
        parts: 2,
        hauledFrom: "moving",
        turn: { kind: "measured", name: "sheave", tensionRatio: 1.2 },
      }),
    });
    const line = lineOf([whip("one"), whip("two"), whip("three")]);
    const [found] = calibrate(exact(line, [400, 800], { purchase: 8, turns: 3 }));
    expect(turnShare(found!.fit!, { turns: 3, purchase: 8 }).ratio.value).toBeCloseTo(1.2, 8);
  });

  it("of which nobody counted the turns are taken as hauled from the fixed block, and it is said", () => {
    const [found] = calibrate(exact(tackleOf({ parts: 4, ratio: 1.1 }), [200, 600], { purchase: 4 }));
    expect(found!.turns).toBe(4);
    expect(turnShare(found!.fit!, { turns: 4, purchase: 4 }).ratio.value).toBeCloseTo(1.1, 8);
  });

  it("of a purchase that turns do not explain say so, and no turn is claimed", () => {
    const [found] = calibrate(exact(tackleOf({ parts: 6, ratio: 1.1 }), [200, 600], { purchase: 6, turns: 3 }));
    expect(found!.notes.join(" ")).toContain("How a purchase of 6:1 is rove with 3 turns is not known");
    expect(() => turnShare(found!.posterior, { turns: 3, purchase: 6 })).toThrow(ReevingError);
  });

  it("name the reading that does not agree, as on a line without a tackle", () => {
    const good = exact(tackleOf({ parts: 8, ratio: 1.12, drag: 0.3 }), [200, 400, 800, 1200], {
      purchase: 8,
      turns: 8,
    });
    const wrong = good.map((one) => (one.row === 3 ? { ...one, ease: 1.4 * one.ease! } : one));
    const [found] = calibrate(wrong);
    expect(found!.leftOut.map(({ row, pull }) => [row, pull])).toEqual([[3, "easing"]]);
    expect(turnShare(found!.fit!, { turns: 8, purchase: 8 }).ratio.value).toBeCloseTo(1.12, 6);
    expect(nextMeasurements([found!])[0]!.widthAfter).toBeLessThan(nextMeasurements([found!])[0]!.widthNow);
  });
});

describe("a tackle of the catalogue with readings", () => {
  const wheel = { kind: "sheave", name: "sheave", wrapAngle: Math.PI, diameter: 0.03, pinRadius: 0.006 } as const;
  const catalogueOf = (bearingFriction: number): Line => ({
    rope: { diameter: 0.006, stiffness: { tensionTerm: 25, constantTerm: 0, diameterTerm: 0 } },
    stations: [
      {
        kind: "tackle",
        name: "purchase",
        reeving: tackle({ parts: 6, hauledFrom: "fixed", turn: { ...wheel, bearingFriction, drag: 0.2 } }),
      },
      { ...wheel, name: "lead", wrapAngle: 1, bearingFriction, drag: 0.2 },
    ],
  });
  const catalogue = catalogueOf(0.1);
  const truth = scaledLine(catalogue, { bearing: 1.7, bending: 1.7, drag: 2 });
  const readings = exact(prepareLine(truth), [300, 600, 900], { purchase: 6 });
  const uncertainInputs: UncertainInput[] = [
    { name: "bearings", turns: "bearing", record: { value: 1, low: 0.3, high: 3 } },
    { name: "drag", turns: "drag", record: { value: 1, low: 0.2, high: 4 } },
  ];
  const request = { name: "sheet", line: catalogue, uncertainInputs, load: 600 };
  const many = Array.from({ length: 400 }, (_, index) => ({ ...readings[index % 3]!, row: index + 1 }));

  it("is brought to the loss of its turns, and predicts hauling and easing", () => {
    const standing = standingLine(request, many);
    expect(standing.factors.loss.value).toBeCloseTo(1.7, 2);
    expect(standing.factors.drag.value).toBeCloseTo(2, 1);
    const [own, wanted] = [prepareLine(standing.line(catalogue)), prepareLine(truth)];
    for (const way of ["hauling", "easing"] as const)
      expect(own.handForce(700, way) / wanted.handForce(700, way)).toBeCloseTo(1, 2);
  });

  it("gives ranges by name that hold the truth, in place of those of the catalogue", () => {
    const [found] = calibrate(readings, { rove: () => catalogue });
    const { ranges, lineWith } = measuredLosses(catalogue, found!);
    for (const way of ["hauling", "easing"] as const) {
      const { low, high } = bandOf(ranges, (values) => prepareLine(lineWith(values)).handForce(700, way));
      const force = prepareLine(truth).handForce(700, way);
      expect(low).toBeLessThan(force);
      expect(high).toBeGreaterThan(force);
      const expected = expectedHandForce(found!.posterior, { load: 700, purchase: 6, way, ease: found!.ease });
      expect((high - low) / (expected.high - expected.low)).toBeCloseTo(1, 1);
    }
  });
});

/** Made-up tackles that are counted. */
const count = long(77, 200);

describe("the 90 % interval of the loss of a turn", () => {
  const next = seeded(31);
  const normal = () => Math.sqrt(-2 * Math.log(1 - next())) * Math.cos(2 * Math.PI * next());
  const scatter = calibrationRecords.repeatability.value;
  const read = (pull: number) => Math.max(0, Math.round(pull + pullSigma(pull, 0, scatter) * normal()));
  const { logRatio } = priorOf({ ratio: calibrationRecords.turnRatio, drag: calibrationRecords.lineDrag });
  const held = new Map<number, { alone: number; joined: number; tried: number }>();
  const holds = ({ ratio }: TurnShare, truth: number) =>
    Math.abs(Math.log(ratio.value / truth)) <= ninetyFifth * ratio.standardError;
  for (let trial = 0; trial < count; trial++) {
    const parts = 2 + (trial % 11);
    const hauledFrom = trial % 2 === 0 ? "fixed" : "moving";
    const turns = hauledFrom === "fixed" ? parts : parts - 1;
    const ratio = Math.max(1.005, Math.exp(logRatio.mean + logRatio.sigma * normal()));
    const line = tackleOf({ parts, hauledFrom, ratio, drag: (0.5 + 4 * next()) / turns / 1.5 });
    const readings = exact(
      line,
      [30, 60, 100, 150, 200].map((hand) => hand * parts),
      { purchase: parts, turns },
    ).map((one) => ({ ...one, haul: read(one.haul!), ease: read(one.ease!), resolution: 1 }));
    const [{ fit, posterior }] = calibrate(readings) as [ReturnType<typeof calibrate>[number]];
    const so = held.get(parts) ?? { alone: 0, joined: 0, tried: 0 };
    held.set(parts, {
      alone: so.alone + Number(fit !== undefined && holds(turnShare(fit, { turns, purchase: parts }), ratio)),
      joined: so.joined + Number(holds(turnShare(posterior, { turns, purchase: parts }), ratio)),
      tried: so.tried + 1,
    });
  }
  const share = (of: "alone" | "joined") => {
    const all = [...held.values()];
    return all.reduce((sum, one) => sum + one[of], 0) / all.reduce((sum, { tried }) => sum + tried, 0);
  };

  it.each(["alone", "joined"] as const)(
    "holds the truth in 85 to 95 of 100 tackles of 2 to 12 parts: readings %s",
    (of) => {
      expect(held.size).toBe(11);
      expect(share(of)).toBeGreaterThanOrEqual(0.85);
      expect(share(of)).toBeLessThanOrEqual(0.95);
    },
  );
});
