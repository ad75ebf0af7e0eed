import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { ValueError } from "../../src/quantity/errors.js";
import { prepareLine } from "../../src/reeving/line.js";
import { loadDependentFriction, powerLawPulledSide, powerLawYieldingSide } from "../../src/reeving/power-law.js";
import type { Ring } from "../../src/reeving/station.js";
import { alone, limp, num, powerRings, ring, rings, ropes, seed } from "./builders.js";

const inputs = fc.record({
  tension: num(0.1, 2000),
  frictionCoefficient: num(0, 0.5),
  referenceTension: num(1, 1000),
  loadExponent: num(0.3, 1),
  wrapAngle: num(0, 2 * Math.PI),
});

describe("friction that follows a power of the load", () => {
  it("is solved back from the pulled side to the yielding side", () => {
    fc.assert(
      fc.property(inputs, (input) => {
        const pulled = powerLawPulledSide(input);
        fc.pre(pulled < 1e6);
        expect(powerLawYieldingSide({ ...input, tension: pulled }) / input.tension).toBeCloseTo(1, 8);
      }),
      seed,
    );
  });

  it("meets the capstan equation for n = 1, from both sides", () => {
    fc.assert(
      fc.property(inputs, (input) => {
        const capstan = input.tension * Math.exp(input.frictionCoefficient * input.wrapAngle);
        for (const loadExponent of [1, 1 - 1e-13, 1 - 1e-9])
          expect(powerLawPulledSide({ ...input, loadExponent }) / capstan).toBeCloseTo(1, 6);
      }),
      seed,
    );
  });

  it("satisfies dT/dθ = μ(T) · T at every angle", () => {
    fc.assert(
      fc.property(inputs, (input) => {
        const step = 1e-5;
        const [before, at, after] = [-step, 0, step].map((d) =>
          powerLawPulledSide({ ...input, wrapAngle: input.wrapAngle + 0.01 + d }),
        ) as [number, number, number];
        const { frictionCoefficient, loadExponent, referenceTension } = input;
        const mu = frictionCoefficient * (at / referenceTension) ** (loadExponent - 1);
        expect((after - before) / (2 * step * at)).toBeCloseTo(mu, 5);
      }),
      seed,
    );
  });

  it("starts at what sliding alone holds, however small the tension", () => {
    const at = (tension: number) =>
      powerLawPulledSide({
        tension,
        frictionCoefficient: 0.2,
        referenceTension: 100,
        loadExponent: 0.75,
        wrapAngle: 2,
      });
    const held = (0.25 * 0.2 * 2 * 100 ** 0.25) ** 4;
    for (const tension of [0, 5e-324, 1e-310, 1e-100]) expect(at(tension)).toBeCloseTo(held, 12);
  });

  it("halves for a load sixteen times as large with n = 0.75, and stays for n = 1", () => {
    const at = (loadRatio: number, loadExponent: number) =>
      loadDependentFriction({ frictionCoefficient: 0.2, loadRatio, loadExponent });
    expect(at(16, 0.75)).toBeCloseTo(0.1, 12);
    expect(at(16, 1)).toBe(0.2);
    expect(at(1, 0.5)).toBe(0.2);
  });

  it("refuses exponents, loads and friction that cannot exist", () => {
    const good = { frictionCoefficient: 0.2, loadRatio: 2, loadExponent: 0.75 };
    for (const bad of [
      { loadExponent: 0 },
      { loadExponent: 1.1 },
      { loadRatio: 0 },
      { loadRatio: -1 },
      { loadRatio: Number.NaN },
      { frictionCoefficient: 5 },
    ])
      expect(() => loadDependentFriction({ ...good, ...bad })).toThrow(ValueError);
  });
});

describe("a ring whose friction falls with load", () => {
  const falling: Ring = { ...ring, loadDependence: { exponent: 0.75, referenceTension: 100 } };

  it("has the friction of a plain ring at the reference load, less above it and more below it", () => {
    const thin = (turn: Ring): Ring => ({ ...turn, frictionCoefficient: 1e-4 });
    const gain = (turn: Ring, load: number) => alone(thin(turn), load).hauling / load - 1;
    expect(gain(falling, 100) / gain(ring, 100)).toBeCloseTo(1, 4);
    expect(gain(falling, 1600) / gain(ring, 1600)).toBeCloseTo(0.5, 4);
    expect(gain(falling, 100 / 16) / gain(ring, 100 / 16)).toBeCloseTo(2, 3);
  });

  it("becomes the plain ring for n = 1: drag, bending, shared lead and all", () => {
    fc.assert(
      fc.property(rings, ropes, num(50, 1000), (plain, rope, load) => {
        const straight = { ...rope, stiffness: { ...rope.stiffness, constantTerm: 0, diameterTerm: 0 } };
        const limit: Ring = { ...plain, loadDependence: { exponent: 1, referenceTension: 100 } };
        const [a, b] = [alone(limit, load, straight), alone(plain, load, straight)];
        expect(a.hauling / b.hauling).toBeCloseTo(1, 9);
        expect(a.easing).toBeCloseTo(b.easing, 8);
      }),
      seed,
    );
  });

  it("holds a small load by itself: it moves just above its run-out load, and not below it", () => {
    fc.assert(
      fc.property(powerRings, fc.oneof(ropes, fc.constant(limp)), (turn, rope) => {
        const line = prepareLine({ rope, stations: [turn] });
        const load = line.runOutLoad();
        fc.pre(load > 1e-6);
        expect(line.state(load * (1 + 1e-6), "easing").moves).toBe(true);
        expect(line.state(load * (1 - 1e-6), "easing")).toMatchObject({ moves: false, handForce: 0 });
      }),
      seed,
    );
  });

  it("is refused at once when its exponent or its reference cannot exist", () => {
    for (const loadDependence of [
      { exponent: 0, referenceTension: 100 },
      { exponent: 1.2, referenceTension: 100 },
      { exponent: Number.NaN, referenceTension: 100 },
      { exponent: 0.75, referenceTension: 0 },
      { exponent: 0.75, referenceTension: Number.NaN },
    ])
      expect(() => prepareLine({ rope: limp, stations: [{ ...ring, loadDependence }] })).toThrow(ValueError);
  });
});
