import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Cover } from "../../src/materials/covers.js";
import { type Winch, winchRecords } from "../../src/materials/winches.js";
import { ValueError } from "../../src/quantity/errors.js";
import { handleForce, powerRatio, winchForces } from "../../src/reeving/winch.js";
import { num, seed } from "./builders.js";

const winch: Winch = { kind: "winch", drumRadius: 0.036, handleLength: 0.2, gearRatios: [3, 1], selfTailing: false };
const cover: Cover = { strands: 16, fibre: "polyester", wet: false };
const exactly = (value: number) => ({ value, low: value, high: value });

describe("a winch", () => {
  it("does no more work than is put in, and exactly that without loss", () => {
    fc.assert(
      fc.property(
        num(0.02, 0.1),
        num(0.1, 0.4),
        num(0.5, 10),
        num(0, 5000),
        num(0.5, 1),
        (r, L, i, load, efficiency) => {
          const ratio = powerRatio({ drumRadius: r, handleLength: L, gearRatio: i });
          const force = handleForce({ load, tail: 0, powerRatio: ratio, efficiency });
          const [workIn, workOut] = [force * 2 * Math.PI * L * i, load * 2 * Math.PI * r];
          expect(workOut).toBeCloseTo(workIn * efficiency, 6);
        },
      ),
      seed,
    );
  });

  it("turns by itself when the tail carries the load", () =>
    expect(handleForce({ load: 100, tail: 120, powerRatio: 5, efficiency: 0.9 })).toBe(0));

  it("feels the same in the hand that tails and that eases, turn by turn less; a self-tailing one needs no hand to tail", () => {
    const forces = (turns: number, selfTailing = false) =>
      winchForces({ winch: { ...winch, selfTailing }, cover, turns, load: exactly(500) });
    expect(forces(3).tailing).toEqual(forces(3).easing);
    expect(forces(0).easing.value).toBe(500);
    expect(forces(4).easing.value / forces(3).easing.value).toBeCloseTo(
      forces(3).easing.value / forces(2).easing.value,
      9,
    );
    expect(forces(3, true).tailing).toEqual(exactly(0));
    expect(forces(3, true).easing).toEqual(forces(3).easing);
  });

  it("is wound in the quickest gear that asks no more than crews push, then in the slower one", () => {
    const at = (load: number) => winchForces({ winch, cover, turns: 4, load: exactly(load) });
    expect(at(300).gearRatio).toBe(1);
    expect(at(900).gearRatio).toBe(3);
    expect(at(900).handle.value).toBeLessThan(winchRecords.gearChange.value);
    expect(at(5000).gearRatio).toBe(3);
    expect(at(5000).handle.value).toBeGreaterThan(winchRecords.gearChange.value);
  });

  it("refuses to be without a gear, a drum or a handle", () => {
    expect(() => winchForces({ winch: { ...winch, gearRatios: [] }, cover, turns: 3, load: exactly(1) })).toThrow(
      /gear/u,
    );
    expect(() => powerRatio({ drumRadius: 0, handleLength: 0.2, gearRatio: 1 })).toThrow(ValueError);
    expect(() => handleForce({ load: 1, tail: 0, powerRatio: 5, efficiency: 0 })).toThrow(ValueError);
  });
});
