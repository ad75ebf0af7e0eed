import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cleats } from "../../src/materials/cleats.js";
import type { Cover } from "../../src/materials/covers.js";
import { ValueError } from "../../src/quantity/errors.js";
import { tailNeeded } from "../../src/reeving/horn.js";
import { jammerRelease } from "../../src/reeving/jammer.js";
import { type Held, letGo } from "../../src/reeving/let-go.js";
import { num, seed } from "./builders.js";

const cover: Cover = { strands: 16, fibre: "polyester", wet: false };
const exactly = (value: number) => ({ value, low: value, high: value });
const crew = { pull: 300 };
const winch = { kind: "winch", drumRadius: 0.036, handleLength: 0.2, gearRatios: [1, 3], selfTailing: true } as const;

const kinds: Readonly<Record<string, Pick<Held, "cleat" | "turns" | "eights">>> = {
  cam: { cleat: cleats.cam },
  vee: { cleat: cleats.vee },
  jammer: { cleat: cleats.jammer },
  horn: { cleat: cleats.horn, turns: 2, eights: 2 },
  winch: { cleat: winch, turns: 3 },
  hand: { cleat: { kind: "hand" } },
};
const under = (name: string, tension: number) =>
  letGo({ ...kinds[name]!, cover, tension: { value: tension, low: 0.8 * tension, high: 1.3 * tension }, hand: crew });

describe("letting a loaded line go", () => {
  it.each(Object.keys(kinds))(
    "of a %s has a range in order, finite from no load up, never less with more load",
    (name) => {
      fc.assert(
        fc.property(num(0, 3000), num(1, 2000), (load, more) => {
          const { effort, share } = under(name, load);
          expect(0 <= effort.low && effort.low <= effort.value && effort.value <= effort.high).toBe(true);
          expect(Number.isFinite(effort.high)).toBe(true);
          expect(share.value * crew.pull).toBeCloseTo(effort.value, 9);
          expect(under(name, load + more).effort.value).toBeGreaterThanOrEqual(effort.value);
        }),
        { ...seed, numRuns: 20 },
      );
    },
  );

  it("asks nothing of an open hand, less of a jammer than of a cam, and about the load itself of cam and V", () => {
    const effort = (name: string) => under(name, 1000).effort;
    expect(effort("hand")).toEqual(exactly(0));
    expect(effort("jammer").value).toBeLessThan(0.4 * effort("cam").value);
    for (const name of ["cam", "vee"]) {
      expect(effort(name).value).toBeGreaterThan(800);
      expect(effort(name).value).toBeLessThan(1100);
      expect(effort(name).high).toBeGreaterThan(1000);
    }
  });

  it("says what a hand can do: 200 N come out of a cam, 600 N do not", () => {
    expect(under("cam", 200).share.high).toBeLessThan(1);
    expect(under("cam", 600).share.low).toBeGreaterThan(1);
  });

  it("runs by itself out of a jammer, through the hand out of everything else", () => {
    for (const name of Object.keys(kinds))
      expect(under(name, 500).runs).toBe(name === "jammer" ? "by itself" : "through the hand");
  });

  it("tells how, with a pull for a cam and a V, a handle for a jammer, turns for what is wound round", () => {
    expect(under("cam", 300).how).toMatch(/tighter.*above the line.*straight up/u);
    expect(under("jammer", 300).how).toContain("handle");
    expect(under("horn", 300).how).toMatch(/hitch.*turn by turn/u);
    expect(under("winch", 300).how).toContain("jaws");
    expect(under("hand", 300).how).toBe("open the hand");
  });

  it("refuses a hand that pulls nothing, and turns that cannot be", () => {
    expect(() => letGo({ ...kinds.cam!, cover, tension: exactly(100), hand: { pull: 0 } })).toThrow(ValueError);
    expect(() => letGo({ ...kinds.horn!, turns: -1, cover, tension: exactly(100), hand: crew })).toThrow(ValueError);
  });
});

describe("a line that comes off a horn turn by turn", () => {
  it("pulls harder with every turn that is off, and is judged with the last full one", () => {
    const { turnByTurn, effort } = under("horn", 400);
    expect(turnByTurn!.map(({ turns }) => turns)).toEqual([4, 3, 2, 1]);
    turnByTurn!.slice(1).forEach(({ hand }, index) => {
      expect(hand.value).toBeGreaterThan(turnByTurn![index]!.hand.value);
    });
    const mu = cleats.horn.surface.friction.value * 1.15;
    expect(effort.value).toBeCloseTo(tailNeeded({ turns: 1, frictionCoefficient: mu, load: 400 }), 9);
    expect(turnByTurn!.at(-1)!.hand).toEqual(effort);
  });

  it("keeps a part turn with the first, and is judged with what there is when there is less than one", () => {
    const left = (turns: number, eights = 0) =>
      letGo({ cleat: cleats.horn, cover, turns, eights, tension: exactly(100), hand: crew }).turnByTurn!.map(
        (one) => one.turns,
      );
    expect(left(2.5)).toEqual([2.5, 1.5]);
    expect(left(0.5, 2)).toEqual([2.5, 1.5]);
    expect(left(0.5)).toEqual([]);
    expect(letGo({ cleat: cleats.horn, cover, tension: exactly(100), hand: crew }).effort).toEqual(exactly(100));
  });
});

describe("the handle of a jammer", () => {
  const jammer = { camAngle: 0.15, frictionCoefficient: 0.45, plateFriction: 0.15, handle: 50, leverRatio: 10 };

  it("first snaps over, then grows in step with the load", () => {
    expect(jammerRelease({ ...jammer, load: 0 })).toBe(50);
    const back = jammerRelease({ ...jammer, load: 2000 });
    expect(back).toBeGreaterThan(50);
    expect(jammerRelease({ ...jammer, load: 4000 })).toBeCloseTo(2 * back, 9);
  });

  it("balances the moments about the pin, the jaw's friction reversed", () => {
    fc.assert(
      fc.property(num(500, 5000), num(0.05, 0.3), num(0.4, 1), num(0, 0.4), (load, camAngle, mu, plateFriction) => {
        const push = jammerRelease({ ...jammer, handle: 0, load, camAngle, frictionCoefficient: mu, plateFriction });
        const press = (load * mu) / (mu + plateFriction) / Math.tan(camAngle);
        expect(push * 10 + press * Math.sin(camAngle)).toBeCloseTo(press * mu * Math.cos(camAngle), 6);
      }),
      seed,
    );
  });

  it("asks only the snap of a jaw that does not lock", () =>
    expect(jammerRelease({ ...jammer, frictionCoefficient: 0.1, load: 2000 })).toBe(50));
});
