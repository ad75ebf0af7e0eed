import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { OutsideModelError, ValueError } from "../../src/quantity/errors.js";
import { boomSheetLoad, fixedLeadSheetLoad, forceAcrossBoom } from "../../src/wind/boom-sheet.js";
import { type BoatVector, clewSheetLoad, leadSheetLoad } from "../../src/wind/clew-sheet.js";
import { halyardLoad, outhaulLoad } from "../../src/wind/corner-load.js";
import { edgePull } from "../../src/wind/edge.js";
import { coefficientOfRule, ruleLoad } from "../../src/wind/load-rule.js";
import { sailForce } from "../../src/wind/sail-force.js";
import { evenly } from "../numerics/evenly.js";

const seed = { seed: 7 };
const between = evenly;

describe("edge of a sail", () => {
  it("pulls nothing without load", () => {
    expect(edgePull({ edgeLoad: 0, chord: 3, sag: 0.1 }).endTension).toBe(0);
  });

  it("is in balance: the two ends carry the load, and half the edge has no moment about its end", () => {
    fc.assert(
      fc.property(between(0.1, 500), between(0.5, 20), between(0.005, 0.25), (edgeLoad, chord, ratio) => {
        const sag = ratio * chord;
        const { chordTension, crossPull, endTension } = edgePull({ edgeLoad, chord, sag });
        expect(2 * crossPull).toBeCloseTo(edgeLoad * chord, 8);
        const momentOfLoad = ((edgeLoad * chord) / 2) * (chord / 4);
        expect(chordTension * sag).toBeCloseTo(momentOfLoad, 6);
        expect(Math.hypot(chordTension, crossPull)).toBeCloseTo(endTension, 6);
      }),
      seed,
    );
  });

  it("tends to the circular arc of an edge under pressure when it is shallow", () => {
    for (const [ratio, difference] of [
      [0.01, 0.001],
      [0.1, 0.036],
      [0.25, 0.135],
    ] as const) {
      const arc = 10 * (1 / (8 * ratio) + ratio / 2);
      const { endTension } = edgePull({ edgeLoad: 10, chord: 1, sag: ratio });
      expect(endTension / arc).toBeGreaterThan(1);
      expect(endTension / arc - 1).toBeLessThan(difference);
    }
  });

  it("refuses a straight or a deep edge, and negative loads", () => {
    expect(() => edgePull({ edgeLoad: 10, chord: 5, sag: 0 })).toThrow(/sag/u);
    expect(() => edgePull({ edgeLoad: 10, chord: 5, sag: 0.005 })).toThrow(/sag of an edge/u);
    expect(() => edgePull({ edgeLoad: 10, chord: 5, sag: 2 })).toThrow(OutsideModelError);
    expect(() => edgePull({ edgeLoad: -1, chord: 5, sag: 0.2 })).toThrow(ValueError);
    expect(() => edgePull({ edgeLoad: Number.NaN, chord: 5, sag: 0.2 })).toThrow(ValueError);
    expect(() => edgePull({ edgeLoad: 10, chord: 0, sag: 0.2 })).toThrow(ValueError);
  });
});

describe("sheet of a boomed sail", () => {
  const base = { forceAcross: 200, forceLever: 0.9, sheetLever: 2, leechPull: 150, clewLever: 2.5, vangShare: 0.4 };

  it("carries nothing without wind and leech", () => {
    expect(boomSheetLoad({ ...base, forceAcross: 0, leechPull: 0 }).sheetLoad).toBe(0);
  });

  it("closes both moment balances about the mast", () => {
    fc.assert(
      fc.property(
        between(0, 2000),
        between(0.3, 3),
        between(0.2, 4),
        between(0.2, Math.PI - 0.2),
        between(0, 2000),
        between(0, 1),
        (forceAcross, forceLever, sheetLever, sheetAngle, leechPull, vangShare) => {
          const load = boomSheetLoad({
            ...base,
            forceAcross,
            forceLever,
            sheetLever,
            sheetAngle,
            leechPull,
            vangShare,
          });
          const across = load.sheetLoad * Math.cos(load.sheetSlope) * Math.sin(sheetAngle);
          expect(across * sheetLever - forceAcross * forceLever).toBeCloseTo(0, 6);
          const down = load.sheetLoad * Math.sin(load.sheetSlope);
          const vangMoment = vangShare * leechPull * base.clewLever;
          expect(down * sheetLever + vangMoment - leechPull * base.clewLever).toBeCloseTo(0, 6);
        },
      ),
      seed,
    );
  });

  it("holds the boom in alone when the vang holds the leech", () => {
    const load = boomSheetLoad({ ...base, vangShare: 1 });
    expect(load.downPull).toBe(0);
    expect(load.sheetLoad).toBeCloseTo(90, 12);
    expect(load.sheetSlope).toBe(0);
  });

  it("is least square to the boom, and the same for mirrored angles", () => {
    const at = (degrees: number) => boomSheetLoad({ ...base, sheetAngle: (degrees * Math.PI) / 180 }).sheetLoad;
    expect(at(90)).toBeCloseTo(boomSheetLoad(base).sheetLoad, 12);
    expect(at(60)).toBeGreaterThan(at(90));
    expect(at(60)).toBeCloseTo(at(120), 9);
  });

  it("agrees for a fixed lead that stands at the slope that was solved", () => {
    fc.assert(
      fc.property(between(10, 2000), between(0, 1500), (forceAcross, leechPull) => {
        const solved = boomSheetLoad({ ...base, forceAcross, leechPull });
        fc.pre(solved.sheetSlope < 1.4);
        const fixed = fixedLeadSheetLoad({ ...base, forceAcross, sheetSlope: solved.sheetSlope });
        expect(fixed.sheetLoad).toBeCloseTo(solved.sheetLoad, 6);
        expect(fixed.downPull).toBeCloseTo(solved.downPull, 6);
      }),
      seed,
    );
  });

  it("takes the force square to the boom: all of it when the boom is square to the force, none along it", () => {
    expect(forceAcrossBoom({ drive: 100, side: 0, boomAngle: Math.PI / 2 })).toBeCloseTo(100, 12);
    expect(forceAcrossBoom({ drive: 0, side: 100, boomAngle: Math.PI / 2 })).toBeCloseTo(0, 12);
    const force = sailForce({
      edition: "orc-2013",
      sail: "main",
      sailArea: 7,
      apparentWindSpeed: 8,
      apparentWindAngle: 0.5,
      airDensity: 1.225,
    });
    expect(forceAcrossBoom({ ...force, boomAngle: 0.1 })).toBeLessThanOrEqual(force.sailForce);
  });

  it("grows with the square of the wind from force to sheet", () => {
    const load = (apparentWindSpeed: number) => {
      const force = sailForce({
        edition: "orc-2013",
        sail: "main",
        sailArea: 7,
        apparentWindSpeed,
        apparentWindAngle: 0.5,
        airDensity: 1.225,
      });
      const forceAcross = forceAcrossBoom({ ...force, boomAngle: 0.1 });
      return fixedLeadSheetLoad({ forceAcross, forceLever: 0.9, sheetLever: 2, sheetSlope: 1 }).sheetLoad;
    };
    expect(load(10)).toBeCloseTo(4 * load(5), 8);
  });

  it("refuses a sheet along the boom or upright, a sheet at the mast and a push to windward", () => {
    expect(() => boomSheetLoad({ ...base, sheetAngle: 0 })).toThrow(/angle between sheet and boom/u);
    expect(() => boomSheetLoad({ ...base, sheetLever: 0 })).toThrow(ValueError);
    expect(() => boomSheetLoad({ ...base, forceAcross: -5 })).toThrow(ValueError);
    expect(() => boomSheetLoad({ ...base, vangShare: 1.2 })).toThrow(/share/u);
    expect(() => boomSheetLoad({ ...base, leechPull: Number.NaN })).toThrow(ValueError);
    expect(() => fixedLeadSheetLoad({ ...base, sheetSlope: Math.PI / 2 })).toThrow(OutsideModelError);
    expect(() => forceAcrossBoom({ drive: Number.NaN, side: 1, boomAngle: 0.1 })).toThrow(ValueError);
    expect(() => forceAcrossBoom({ drive: 1, side: 1, boomAngle: 2 })).toThrow(ValueError);
  });
});

describe("sheet of a jib or gennaker", () => {
  const jib = {
    head: { ahead: 0.5, lee: 0, up: 5 },
    tack: { ahead: 2, lee: 0, up: 0 },
    clew: { ahead: 0, lee: 0.4, up: 0.3 },
    leechLoad: 20,
    leechSag: 0.3,
    footLoad: 15,
    footSag: 0.2,
  };

  /** Tension of one edge at the clew, taken from the tangent of its parabola. */
  function tangentPull(toCorner: BoatVector, lee: BoatVector, load: number, sag: number): BoatVector {
    const chord = Math.hypot(toCorner.ahead, toCorner.lee, toCorner.up);
    const slope = (4 * sag) / chord;
    const tension = ((load * chord ** 2) / (8 * sag)) * Math.sqrt(1 + slope ** 2);
    const angle = Math.atan(slope);
    const part = (key: keyof BoatVector) =>
      tension * (Math.cos(angle) * (toCorner[key] / chord) + Math.sin(angle) * lee[key]);
    return { ahead: part("ahead"), lee: part("lee"), up: part("up") };
  }

  it("is in balance with leech and foot at the clew", () => {
    fc.assert(
      fc.property(between(0, 100), between(0, 100), between(0.05, 0.5), between(0.05, 0.4), (wl, wf, sl, sf) => {
        const load = clewSheetLoad({ ...jib, leechLoad: wl, footLoad: wf, leechSag: sl, footSag: sf });
        const toHead = { ahead: 0.5, lee: -0.4, up: 4.7 };
        const toTack = { ahead: 2, lee: -0.4, up: -0.3 };
        const raw = {
          ahead: toHead.up * toTack.lee - toHead.lee * toTack.up,
          lee: toHead.ahead * toTack.up - toHead.up * toTack.ahead,
          up: toHead.lee * toTack.ahead - toHead.ahead * toTack.lee,
        };
        const length = Math.sign(raw.lee) * Math.hypot(raw.ahead, raw.lee, raw.up);
        const lee = { ahead: raw.ahead / length, lee: raw.lee / length, up: raw.up / length };
        const leech = tangentPull(toHead, lee, wl, sl);
        const foot = tangentPull(toTack, lee, wf, sf);
        for (const key of ["ahead", "lee", "up"] as const) {
          expect(leech[key] + foot[key] + load.sheetLoad * load.sheetDirection[key]).toBeCloseTo(0, 6);
        }
      }),
      seed,
    );
  });

  it("doubles with the load and has a direction of length one", () => {
    const once = clewSheetLoad(jib);
    const twice = clewSheetLoad({ ...jib, leechLoad: 40, footLoad: 30 });
    expect(twice.sheetLoad).toBeCloseTo(2 * once.sheetLoad, 8);
    const { ahead, lee, up } = once.sheetDirection;
    expect(Math.hypot(ahead, lee, up)).toBeCloseTo(1, 12);
  });

  it("pulls aft and down on a jib, and knows a direction even in a calm", () => {
    const { sheetDirection } = clewSheetLoad(jib);
    expect(sheetDirection.ahead).toBeLessThan(0);
    expect(sheetDirection.up).toBeLessThan(0);
    const calm = clewSheetLoad({ ...jib, leechLoad: 0, footLoad: 0 });
    expect(calm.sheetLoad).toBe(0);
    expect(Math.hypot(calm.sheetDirection.ahead, calm.sheetDirection.lee, calm.sheetDirection.up)).toBeCloseTo(1, 12);
  });

  it("does not care where the origin is", () => {
    const moved = (p: BoatVector) => ({ ahead: p.ahead - 3, lee: p.lee + 1, up: p.up + 2 });
    const there = clewSheetLoad({ ...jib, head: moved(jib.head), tack: moved(jib.tack), clew: moved(jib.clew) });
    expect(there.sheetLoad).toBeCloseTo(clewSheetLoad(jib).sheetLoad, 8);
  });

  it("splits a given lead between leech and foot so that the triangle of forces closes", () => {
    fc.assert(
      fc.property(between(1, 2000), between(0.5, 2.7), between(0.15, 1), (leechTension, clewAngle, part) => {
        const leadAngle = 0.1 + part * (clewAngle - 0.1);
        const { sheetLoad, footTension } = leadSheetLoad({ leechTension, clewAngle, leadAngle });
        const along = footTension + leechTension * Math.cos(clewAngle) - sheetLoad * Math.cos(leadAngle);
        const across = leechTension * Math.sin(clewAngle) - sheetLoad * Math.sin(leadAngle);
        expect(along).toBeCloseTo(0, 6);
        expect(across).toBeCloseTo(0, 6);
      }),
      seed,
    );
    const inLine = leadSheetLoad({ leechTension: 100, clewAngle: 1.4, leadAngle: 1.4 });
    expect(inLine).toEqual({ sheetLoad: 100, footTension: 0 });
  });

  it("refuses corners on one line, far away or NaN, and leads that leave an edge slack", () => {
    const line = { ...jib, head: { ahead: 0, lee: 0, up: 2 }, tack: { ahead: 0, lee: 0, up: -2 } };
    expect(() => clewSheetLoad({ ...line, clew: { ahead: 0, lee: 0, up: 0 } })).toThrow(/triangle/u);
    expect(() => clewSheetLoad({ ...jib, head: { ahead: Number.NaN, lee: 0, up: 5 } })).toThrow(/place of the head/u);
    expect(() => clewSheetLoad({ ...jib, tack: { ahead: 500, lee: 0, up: 5 } })).toThrow(ValueError);
    expect(() => leadSheetLoad({ leechTension: 100, clewAngle: 1, leadAngle: 1.2 })).toThrow(OutsideModelError);
    expect(() => leadSheetLoad({ leechTension: -1, clewAngle: 1, leadAngle: 0.5 })).toThrow(ValueError);
  });
});

describe("halyard, outhaul and the one-coefficient rule", () => {
  it("hangs the sail on its halyard in a calm", () => {
    const load = halyardLoad({ luffLoad: 0, luffLength: 6, luffSag: 0.1, sailMass: 4 });
    expect(load).toBeCloseTo(4 * 9.80665, 9);
  });

  it("needs more halyard for a straighter luff", () => {
    const load = (luffSag: number) => halyardLoad({ luffLoad: 12, luffLength: 6, luffSag, sailMass: 2 });
    expect(load(0.1)).toBeGreaterThan(load(0.2));
  });

  it("has the foot alone on the outhaul when the leech stands upright", () => {
    const foot = { footLoad: 10, footLength: 2, footSag: 0.2, leechTension: 100 };
    expect(outhaulLoad({ ...foot, leechAngle: Math.PI / 2 })).toBeCloseTo(25, 9);
    expect(outhaulLoad({ ...foot, leechAngle: 1 })).toBeGreaterThan(25);
    expect(() => outhaulLoad({ ...foot, leechAngle: 0.1 })).toThrow(OutsideModelError);
    expect(() => outhaulLoad({ ...foot, leechTension: Number.NaN, leechAngle: 1 })).toThrow(ValueError);
  });

  it("reads an imperial constant back as the load it means", () => {
    const loadCoefficient = coefficientOfRule({ imperialConstant: 0.004 });
    const newtons = ruleLoad({
      loadCoefficient,
      sailArea: 100 * 0.3048 ** 2,
      apparentWindSpeed: (20 * 1852) / 3600,
      airDensity: 1.225,
    });
    expect(newtons / 4.4482216152605).toBeCloseTo(0.004 * 100 * 20 ** 2, 9);
  });

  it("is nothing without wind, and refuses constants beyond reason", () => {
    expect(ruleLoad({ loadCoefficient: 1, sailArea: 5, apparentWindSpeed: 0, airDensity: 1.2 })).toBe(0);
    expect(() => coefficientOfRule({ imperialConstant: 1 })).toThrow(/load coefficient/u);
    expect(() => coefficientOfRule({ imperialConstant: Number.NaN })).toThrow(ValueError);
    const rule = { loadCoefficient: -1, sailArea: 5, apparentWindSpeed: 5, airDensity: 1.2 };
    expect(() => ruleLoad(rule)).toThrow(ValueError);
    expect(() => halyardLoad({ luffLoad: 10, luffLength: 6, luffSag: 0.1, sailMass: -1 })).toThrow(ValueError);
  });
});
