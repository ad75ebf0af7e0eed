import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { practice } from "../../src/materials/practice.js";
import { inSeries, type Law, noLoss } from "../../src/reeving/law.js";
import type { Turn } from "../../src/reeving/station.js";
import { type Cause, turnLoss } from "../../src/reeving/turn.js";
import { limp, ratchet, ratchets, ring, rings, ropes, seed, sheave, sheaves, stiff } from "./builders.js";

const causes: readonly Cause[] = ["bearing", "bending", "sliding", "cheek", "shared", "drag", "measured"];
const only = (kept: Cause): Cause[] => causes.filter((cause) => cause !== kept);
const rounds = fc.oneof(sheaves, rings, ratchets);

describe("causes of loss at a turn", () => {
  it("each stands alone when all others are left out, and together they are the whole", () => {
    fc.assert(
      fc.property(rounds, ropes, (turn, rope) => {
        const whole = turnLoss({ turn, rope });
        const product = whole.haulCauses.reduce((ratio, { cause, ratio: share, drag }) => {
          const single = turnLoss({ turn, rope, leaveOut: only(cause) });
          expect(single.haulCauses).toHaveLength(1);
          if (cause !== "shared") {
            expect(single.law.haul.ratio).toBeCloseTo(share, 12);
            expect(single.law.haul.drag).toBeCloseTo(drag, 12);
          }
          return ratio * share;
        }, 1);
        expect(product / whole.law.haul.ratio).toBeCloseTo(1, 12);
        const series = whole.haulCauses.reduce<Law>(inSeries, noLoss);
        expect(whole.law.haul.drag).toBeCloseTo(series.drag, 12);
      }),
      seed,
    );
  });

  it("leave nothing behind when all are left out", () => {
    fc.assert(
      fc.property(rounds, ropes, (turn, rope) => {
        const { law } = turnLoss({ turn, rope, leaveOut: causes });
        expect([law.haul, law.ease]).toEqual([noLoss, noLoss]);
      }),
      seed,
    );
  });

  it("all vanish without wrap, but for the constant drag, and do so continuously", () => {
    fc.assert(
      fc.property(rounds, ropes, (turn, rope) => {
        const at = (wrapAngle: number) => turnLoss({ turn: { ...turn, wrapAngle }, rope }).law;
        for (const { ratio, drag } of [at(0).haul, at(0).ease]) {
          expect(ratio).toBe(1);
          expect(drag).toBe(turn.drag ?? 0);
        }
        for (const side of ["haul", "ease"] as const) {
          const near = at(1e-9)[side];
          expect(near.ratio).toBeCloseTo(1, 7);
          expect(near.drag).toBeCloseTo(turn.drag ?? 0, 6);
        }
      }),
      seed,
    );
  });

  it("never help: every ratio is at least 1 and every drag at least 0", () => {
    fc.assert(
      fc.property(rounds, ropes, (turn, rope) => {
        const { haulCauses, easeCauses } = turnLoss({ turn, rope });
        for (const { ratio, drag } of [...haulCauses, ...easeCauses]) {
          expect(ratio).toBeGreaterThanOrEqual(1);
          expect(drag).toBeGreaterThanOrEqual(0);
        }
      }),
      seed,
    );
  });

  it("refuse a friction, a size or an angle that cannot exist", () => {
    const bad: readonly Turn[] = [
      { ...ring, frictionCoefficient: 5 },
      { ...ring, frictionCoefficient: -0.1 },
      { ...ring, wrapAngle: -1 },
      { ...ring, diameter: -0.02 },
      { ...ring, lines: 0 },
      { ...ring, drag: -1 },
      { ...sheave, pinRadius: -0.004 },
      { ...sheave, bearingFriction: 1.2 },
      { ...sheave, diameter: 0 },
      { ...ratchet, treadFriction: 5 },
      { ...ratchet, engageLoad: -1 },
      { kind: "measured", name: "turn", tensionRatio: 0.9 },
    ];
    for (const turn of bad) expect(() => turnLoss({ turn, rope: stiff })).toThrow(/: got .*; allowed: .*\. /u);
  });

  it("allow no friction at all: the limit costs nothing", () => {
    const { ratio } = turnLoss({ turn: { ...ring, frictionCoefficient: 0 }, rope: limp }).law.haul;
    expect(ratio).toBe(1);
  });
});

describe("lines that share a station", () => {
  const factor = practice.sharedLeadFactor.value;

  it("raise the logarithm of the ratio by the shared-lead factor", () => {
    fc.assert(
      fc.property(rounds, ropes, (turn, rope) => {
        const single = turnLoss({ turn: { ...turn, lines: 1 }, rope }).law;
        const shared = turnLoss({ turn: { ...turn, lines: 2 }, rope }).law;
        for (const side of ["haul", "ease"] as const)
          expect(Math.log(shared[side].ratio)).toBeCloseTo(factor * Math.log(single[side].ratio), 12);
        expect(shared.haul.drag).toBeGreaterThanOrEqual(single.haul.drag);
      }),
      seed,
    );
  });

  it("are flagged for chafe, a line of its own is not", () => {
    const flags = (lines: number) => turnLoss({ turn: { ...ring, lines }, rope: stiff }).flags;
    expect(flags(1)).toEqual([]);
    expect(flags(3)).toEqual(["ring: 3 lines share this station: watch for chafe"]);
  });
});

describe("a ratchet", () => {
  it("is a sheave while hauling and a drum of its tread while easing", () => {
    fc.assert(
      fc.property(ratchets, ropes, (turn, rope) => {
        const { law } = turnLoss({ turn, rope });
        const { treadFriction, ...wheel } = turn;
        expect(law.haul).toEqual(turnLoss({ turn: { ...wheel, kind: "sheave" }, rope }).law.haul);
        const { pinRadius: _pin, bearingFriction: _friction, grooveWidth: _groove, ...drum } = wheel;
        const open = turnLoss({ turn, rope, leaveOut: ["cheek", "shared"] }).law.ease;
        const bar = turnLoss({
          turn: { ...drum, lines: 1, kind: "ring", frictionCoefficient: treadFriction },
          rope,
        }).law.ease;
        expect(open.ratio).toBeCloseTo(bar.ratio, 12);
        expect(open.drag).toBeCloseTo(bar.drag, 12);
      }),
      seed,
    );
  });

  it("holds exp(μ θ) times the hand force when it is bent without loss", () => {
    const { ratio } = turnLoss({ turn: ratchet, rope: limp }).law.ease;
    expect(ratio).toBeCloseTo(Math.exp(0.35 * Math.PI), 12);
  });
});
