import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { calibrate } from "../../src/calibration/calibrate.js";
import { expectedPull } from "../../src/calibration/law-fit.js";
import { expectedHandForce, type LawBands, lawOfPrior, priorOf } from "../../src/calibration/measured-law.js";
import type { Reading } from "../../src/calibration/reading.js";
import { calibrationRecords } from "../../src/calibration/records.js";
import { turnShare } from "../../src/calibration/turn-share.js";
import { unknownLine } from "../../src/calibration/unknown-line.js";
import { ReevingError } from "../../src/quantity/errors.js";
import { prepareLine } from "../../src/reeving/line.js";
import { ratioFromRaiseLower } from "../../src/reeving/rules.js";
import { evenly } from "../numerics/evenly.js";

const sheet = { line: "sheet", resolution: 1, wet: false } as const;
const pair = (row: number, load: number, k: number, c: number, more: Partial<Reading> = {}): Reading => ({
  ...sheet,
  row,
  load,
  haul: k * load + c,
  ease: (load - c) / k,
  ...more,
});
const only = (readings: readonly Reading[], prior?: LawBands) =>
  calibrate(readings, prior ? { prior: () => prior } : {})[0]!;

describe("the fit of readings without error", () => {
  it("gives back ratio and drag, for any line", () => {
    fc.assert(
      fc.property(evenly(1.02, 3), evenly(0, 8), (k, c) => {
        const { fit, leftOut } = only([40, 80, 200].map((load, index) => pair(index + 1, load, k, c)));
        expect(leftOut).toEqual([]);
        expect(fit!.ratio.value).toBeCloseTo(k, 8);
        expect(fit!.drag.value).toBeCloseTo(c, 6);
      }),
      { seed: 7 },
    );
  });

  it("does not care for the order of the rows", () => {
    const readings = [40, 90, 150, 210].map((load, index) =>
      pair(index + 1, load, 1.3, 3, { haul: 1.3 * load + 3 + (index % 2) }),
    );
    const forth = only(readings).fit!;
    const back = only([...readings].reverse()).fit!;
    expect(back.ratio.value).toBeCloseTo(forth.ratio.value, 9);
    expect(back.drag.value).toBeCloseTo(forth.drag.value, 7);
  });

  it("does not care for the unit of force: drag and its error grow with it, the ratio stays", () => {
    const wobble = [2, -1, 1, -2];
    const readings = [40, 90, 150, 210].map((load, index) =>
      pair(index + 1, load, 1.3, 3, { haul: 1.3 * load + 3 + wobble[index]! }),
    );
    const times = readings.map((one) => ({
      ...one,
      load: 7 * one.load,
      haul: 7 * one.haul!,
      ease: 7 * one.ease!,
      resolution: 7,
    }));
    const [small, large] = [only(readings).fit!, only(times).fit!];
    expect(large.ratio.value).toBeCloseTo(small.ratio.value, 9);
    expect(large.drag.value).toBeCloseTo(7 * small.drag.value, 6);
    expect(large.drag.standardError).toBeCloseTo(7 * small.drag.standardError, 6);
    expect(large.correlation).toBeCloseTo(small.correlation, 9);
  });

  it("works with hauling alone, and with easing alone", () => {
    const readings = [40, 80, 200].map((load, index) => pair(index + 1, load, 1.25, 2));
    const hauled = readings.map(({ ease: _, ...rest }) => rest);
    const eased = readings.map(({ haul: _, ...rest }) => rest);
    for (const some of [hauled, eased]) {
      const { fit, pulls } = only(some);
      expect(pulls).toHaveLength(3);
      expect(fit!.ratio.value).toBeCloseTo(1.25, 8);
      expect(fit!.drag.value).toBeCloseTo(2, 6);
    }
  });

  it("takes the load through a purchase", () => {
    // Hauled alone, as a tackle eases by another law.
    const readings = [100, 400].map((load, index) => {
      const { ease: _, ...hauled } = pair(index + 1, load / 4, 1.3, 2);
      return { ...hauled, load, purchase: 4 };
    });
    expect(only(readings).fit!.ratio.value).toBeCloseTo(1.3, 8);
  });
});

describe("one pair", () => {
  it("gives the root of haul over ease, as the closed form does", () => {
    fc.assert(
      fc.property(evenly(50, 90), evenly(0.4, 0.95), (load, share) => {
        const [haul, ease] = [load / share, load * share * 0.93];
        const { fit, dragSettled, notes } = only([{ ...sheet, row: 1, load, haul, ease, resolution: 1e-9 }]);
        expect(fit!.ratio.value).toBeCloseTo(ratioFromRaiseLower({ raisingForce: haul, loweringForce: ease }), 9);
        expect(dragSettled).toBe(false);
        expect(notes.join()).toContain("One load alone");
      }),
      { seed: 7 },
    );
  });

  it("narrows what was known before", () => {
    const { posterior, prior } = only([pair(1, 100, 1.2, 2)]);
    expect(posterior.ratio.standardError).toBeLessThan(0.2 * priorOf(prior).logRatio.sigma);
  });
});

describe("prior and readings", () => {
  const prior: LawBands = { ratio: { value: 1.3, low: 1.2, high: 1.42 }, drag: { value: 2, low: 1, high: 3 } };

  it("is the prior where nothing can be used", () => {
    const none = only([{ ...sheet, row: 1, load: 100, haul: 80, ease: 120 }], prior);
    expect(none.pulls).toEqual([]);
    expect(none.fit).toBeUndefined();
    expect(none.posterior).toEqual(lawOfPrior(priorOf(prior)));
    const { posterior } = none;
    expect(posterior.ratio.value).toBeCloseTo(1.3, 12);
    expect(posterior.drag.value).toBeCloseTo(2, 12);
    expect(posterior.drag.standardError).toBeCloseTo(2 / 3.28971, 4);
  });

  it("comes to the readings where they are many", () => {
    const many = Array.from({ length: 4000 }, (_, index) => pair(index + 1, 20 + (index % 200), 1.6, 6));
    const { fit, posterior, notes } = only(many, prior);
    expect(posterior.ratio.value).toBeCloseTo(fit!.ratio.value, 3);
    expect(posterior.drag.value).toBeCloseTo(fit!.drag.value, 1);
    expect(posterior.ratio.standardError).toBeCloseTo(fit!.ratio.standardError, 4);
    expect(notes.join()).toContain("outside of what was expected");
  });

  it("lies between the two, and is surer than either", () => {
    fc.assert(
      fc.property(evenly(1.25, 1.6), evenly(1, 5), (k, c) => {
        const { fit, posterior } = only(
          [50, 100, 150].map((load, index) => pair(index + 1, load, k, c)),
          prior,
        );
        const known = priorOf(prior);
        expect(posterior.ratio.standardError).toBeLessThan(Math.min(fit!.ratio.standardError, known.logRatio.sigma));
        expect(posterior.drag.standardError).toBeLessThan(Math.min(fit!.drag.standardError, known.drag.sigma));
      }),
      { seed: 7, numRuns: 40 },
    );
  });

  it("agrees with a sum over a grid of all ratios and drags", () => {
    const readings = [30, 120].map((load, index) => pair(index + 1, load, 1.35, 3, { haul: 1.35 * load + 5 }));
    const { posterior } = only(readings, prior);
    const known = priorOf(prior);
    const share = calibrationRecords.repeatability.value;
    let [weight, ratio, drag, ratioSquare, dragSquare] = [0, 0, 0, 0, 0];
    for (let i = 0; i <= 300; i++) {
      for (let j = 0; j <= 300; j++) {
        const logRatio = 0.15 + (0.3 * i) / 300;
        const c = -1 + (8 * j) / 300;
        let half =
          ((logRatio - known.logRatio.mean) / known.logRatio.sigma) ** 2 +
          ((c - known.drag.mean) / known.drag.sigma) ** 2;
        for (const { load, haul, ease } of readings) {
          for (const [way, read] of [
            ["hauling", haul!],
            ["easing", ease!],
          ] as const) {
            const centre = expectedPull(
              { logRatio: Math.log(posterior.ratio.value), drag: posterior.drag.value },
              load,
              way,
            ).force;
            const sigma = Math.hypot(1 / Math.sqrt(12), share * centre);
            half += ((read - expectedPull({ logRatio, drag: c }, load, way).force) / sigma) ** 2;
          }
        }
        const w = Math.exp(-half / 2);
        weight += w;
        ratio += w * logRatio;
        drag += w * c;
        ratioSquare += w * logRatio ** 2;
        dragSquare += w * c ** 2;
      }
    }
    [ratio, drag] = [ratio / weight, drag / weight];
    expect(Math.log(posterior.ratio.value)).toBeCloseTo(ratio, 3);
    expect(posterior.drag.value).toBeCloseTo(drag, 1);
    expect(posterior.ratio.standardError / Math.sqrt(ratioSquare / weight - ratio ** 2)).toBeCloseTo(1, 1);
    expect(posterior.drag.standardError / Math.sqrt(dragSquare / weight - drag ** 2)).toBeCloseTo(1, 1);
  });

  it("of a line that nobody knows grows with its turns", () => {
    expect(unknownLine(1).ratio.value).toBe(calibrationRecords.turnRatio.value);
    expect(unknownLine(3).ratio.high).toBeCloseTo(calibrationRecords.turnRatio.high ** 3, 12);
    expect(() => unknownLine(0)).toThrow();
  });
});

describe("what cannot be, or does not agree", () => {
  const good = [40, 80, 120, 160, 200].map((load, index) => pair(index + 2, load, 1.25, 2));
  const without = only(good).fit!;

  it.each([
    ["ease above haul", { ...sheet, row: 9, load: 100, haul: 90, ease: 120 }, "both", "wrong side"],
    ["a load of nothing", { ...sheet, row: 9, load: 0, haul: 90, ease: 80 }, "both", "nothing hangs"],
    ["a load below nothing", { ...sheet, row: 9, load: -5, haul: 90, ease: 80 }, "both", "nothing hangs"],
    ["a haul below the load", { ...sheet, row: 9, load: 100, haul: 70, ease: 65 }, "hauling", "below 1"],
    ["an ease above the load", { ...sheet, row: 9, load: 100, ease: 120 }, "easing", "below 1"],
    ["a pull below nothing", { ...sheet, row: 9, load: 100, ease: -3 }, "easing", "does not push"],
    ["no pull left", { ...sheet, row: 9, load: 100, ease: 0 }, "easing", "hardly goes out"],
    ["hardly a pull left", { ...sheet, row: 9, load: 100, ease: 0.4 }, "easing", "step of the scale"],
    ["a wrong unit", { ...sheet, row: 9, load: 100, haul: 12_000 }, "hauling", "Look at the units"],
    ["hardly a load", { ...sheet, row: 9, load: 0.4, haul: 1 }, "hauling", "tells nothing"],
    ["a slip of the pen", { ...sheet, row: 9, load: 100, haul: 172 }, "hauling", "expected scatter away"],
  ] as const)("%s is named with row and reason, and changes nothing", (_, wrong, pull, reason) => {
    const { fit, leftOut } = only([...good, wrong]);
    const named = leftOut.find((one) => one.pull === pull)!;
    expect(named.row).toBe(9);
    expect(named.reason).toContain(reason);
    if (!("haul" in wrong && "ease" in wrong) || pull === "both") {
      expect(fit!.ratio.value).toBeCloseTo(without.ratio.value, 8);
      expect(fit!.ratio.standardError).toBeCloseTo(without.ratio.standardError, 8);
    }
  });

  it("is found among three readings, one of them wrong", () => {
    const { leftOut, fit } = only([pair(2, 50, 1.3, 2), pair(3, 100, 1.3, 2), pair(4, 200, 1.3, 2, { haul: 362 })]);
    expect(leftOut.map(({ row, pull }) => [row, pull])).toEqual([[4, "hauling"]]);
    expect(fit!.ratio.value).toBeCloseTo(1.3, 6);
  });

  it("is not sought where two pulls contradict each other and nobody can say which is wrong", () => {
    const { leftOut, noiseFactor, notes } = only([
      { ...sheet, row: 2, load: 100, haul: 130 },
      { ...sheet, row: 3, load: 100, haul: 190 },
    ]);
    expect(leftOut).toEqual([]);
    expect(noiseFactor).toBeGreaterThan(3);
    expect(notes.join()).toContain("scatter");
  });

  it("widens every interval where the readings scatter more than scale and hand explain", () => {
    const wobble = [9, -9, 9, -9, 9];
    const noisy = good.map((one, index) => ({ ...one, haul: one.haul! * (1 + wobble[index]! / 100) }));
    const { fit, noiseFactor, leftOut } = only(noisy);
    expect(leftOut).toEqual([]);
    expect(noiseFactor).toBeGreaterThan(1.5);
    expect(fit!.ratio.standardError / without.ratio.standardError).toBeGreaterThan(1.4);
  });

  it("keeps dry and wet apart, and lines apart", () => {
    const found = calibrate([
      pair(1, 100, 1.2, 0),
      pair(2, 100, 1.3, 0, { wet: true }),
      pair(3, 100, 1.1, 0, { line: "halyard" }),
    ]);
    expect(found.map(({ line, wet }) => [line, wet])).toEqual([
      ["sheet", false],
      ["sheet", true],
      ["halyard", false],
    ]);
    expect(calibrate([])).toEqual([]);
  });
});

describe("one of several equal turns", () => {
  it("has the loss that, in series, is the loss of the line", () => {
    fc.assert(
      fc.property(evenly(1.02, 1.3), evenly(0, 3), fc.integer({ min: 1, max: 8 }), (ratio, drag, n) => {
        const stations = Array.from({ length: n }, (_, index) => ({
          kind: "measured" as const,
          name: `turn ${index}`,
          tensionRatio: ratio,
          drag,
        }));
        const line = prepareLine({
          rope: { diameter: 0.006, stiffness: { tensionTerm: 0, constantTerm: 0, diameterTerm: 0 } },
          stations,
        });
        const readings = [100, 300, 900].map((load, index) => {
          const { hauling, easing } = line.handForces(load);
          return { ...sheet, row: index + 1, load, haul: hauling, ...(easing > 0 && { ease: easing }), turns: n };
        });
        const turn = turnShare(only(readings).fit!, { turns: n });
        expect(turn.ratio.value).toBeCloseTo(ratio, 6);
        expect(turn.drag.value).toBeCloseTo(drag, 4);
      }),
      { seed: 7, numRuns: 60 },
    );
  });

  it("is the line itself where there is one turn", () => {
    const fit = only([40, 80, 200].map((load, index) => pair(index + 1, load, 1.25, 2, { haul: 1.25 * load + 3 })))
      .fit!;
    const turn = turnShare(fit, { turns: 1 });
    expect(turn.ratio.high).toBeCloseTo(fit.ratio.high, 10);
    expect(turn.drag.standardError).toBeCloseTo(fit.drag.standardError, 7);
  });

  it("is refused for half a turn", () => {
    expect(() => turnShare(only([pair(1, 100, 1.2, 0)]).posterior, { turns: 1.5 })).toThrow(ReevingError);
  });
});

describe("hand force of a measured line", () => {
  it("has a band that is narrower where there are readings", () => {
    const { posterior } = only([40, 80, 200].map((load, index) => pair(index + 1, load, 1.25, 2)));
    const width = (load: number) => {
      const { low, high } = expectedHandForce(posterior, { load, way: "hauling" });
      return (high - low) / load;
    };
    expect(width(100)).toBeLessThan(width(5));
    expect(expectedHandForce(posterior, { load: 400, purchase: 4, way: "hauling" }).value).toBeCloseTo(
      expectedHandForce(posterior, { load: 100, way: "hauling" }).value,
      12,
    );
  });

  it("is never below nothing", () => {
    const { low, value } = expectedHandForce(only([pair(1, 100, 1.2, 5)]).posterior, { load: 1, way: "easing" });
    expect(low).toBe(0);
    expect(value).toBeGreaterThanOrEqual(0);
  });
});

describe("any readings at all", () => {
  it("give finite numbers, keep or name every pull, and never throw", () => {
    const force = fc.oneof(evenly(-20, 400), fc.constantFrom(0, 1e-9, 1e6, 100));
    const one = fc.record({
      load: force,
      haul: fc.option(force, { nil: undefined }),
      ease: fc.option(force, { nil: undefined }),
      resolution: evenly(0.01, 20),
    });
    fc.assert(
      fc.property(fc.array(one, { minLength: 1, maxLength: 9 }), (several) => {
        const readings = several.map(({ haul, ease, ...rest }, index) => ({
          ...sheet,
          ...rest,
          row: index + 1,
          ...(haul !== undefined && { haul }),
          ...(ease !== undefined && { ease }),
        }));
        const { posterior, fit, pulls, leftOut } = only(readings);
        for (const law of [posterior, ...(fit ? [fit] : [])])
          for (const number of [law.ratio.low, law.ratio.high, law.drag.low, law.drag.high, law.correlation])
            expect(Number.isFinite(number)).toBe(true);
        expect(Math.abs(posterior.correlation)).toBeLessThanOrEqual(1 + 1e-9);
        for (const { row, haul, ease } of readings) {
          for (const [way, read] of [
            ["hauling", haul],
            ["easing", ease],
          ] as const) {
            if (read === undefined) continue;
            const kept = pulls.some((pull) => pull.row === row && pull.way === way);
            const named = leftOut.some((left) => left.row === row && (left.pull === way || left.pull === "both"));
            expect(kept).not.toBe(named);
          }
        }
      }),
      { seed: 7, numRuns: 400 },
    );
  });
});

describe("a very long log", () => {
  it("of 300 000 readings is fitted in some seconds", () => {
    const many = Array.from({ length: 300_000 }, (_, index) =>
      pair(index + 1, 40 + (index % 160), 1.25, 2, { haul: Math.round(1.25 * (40 + (index % 160)) + 2) }),
    );
    many[77_777] = { ...many[77_777]!, haul: 600 };
    const { fit, leftOut } = only(many);
    expect(leftOut.map(({ row }) => row)).toEqual([77_778]);
    expect(fit!.ratio.value).toBeCloseTo(1.25, 3);
  });
});
