import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { modelEndurance } from "../../src/crew/fatigue.js";
import { prepareLine } from "../../src/reeving/line.js";
import { doubleBurton, thirdSystem } from "../../src/reeving/systems.js";
import { tackle } from "../../src/reeving/tackle.js";
import { balanced } from "../../src/working/balance.js";
import { massBalance } from "../../src/working/plan-balance.js";
import { fatigueBalance, lineBalance, motionBalance, ratioBalance } from "../../src/working/solved-balances.js";
import { tackleBalance } from "../../src/working/tackle-balance.js";
import type { BalanceStep, Working } from "../../src/working/working.js";
import { checkWorking } from "../../src/working/working-check.js";
import { evenly } from "../numerics/evenly.js";
import { known, limp } from "./mechanics-cases.js";

const last = ({ steps }: Working) => steps.at(-1) as BalanceStep;
const worst = (working: Working) => Math.max(...last(working).equations.map(({ residual }) => Math.abs(residual)));

const two = {
  id: "two",
  title: "Two parts",
  symbols: { pull: "tension", load: "loadTension" },
  answer: "pull",
  source: "statics",
  valid: "at rest",
} as const;
const block = { words: "block", left: "2 * pull", right: "load" };

describe("a balance", () => {
  it("keeps its equations with the solution in them", () => {
    const working = balanced({ ...two, equations: [block], values: { pull: 50, load: 100 } });
    expect(working.value).toBe(50);
    expect(last(working).equations).toEqual([{ ...block, substitution: "2 · 50 N = 100 N", residual: 0 }]);
    expect(last(working).symbols.map(({ name, solved }) => [name, solved])).toEqual([
      ["pull", true],
      ["load", undefined],
    ]);
    expect(checkWorking("two", structuredClone(working))).toEqual(working);
  });

  it("refuses numbers that do not solve it, sides of two units, and an answer that is no symbol", () => {
    const values = { pull: 50, load: 100 };
    expect(() => balanced({ ...two, equations: [block], values: { pull: 50.000001, load: 100 } })).toThrow(
      /two", block: got 2.00e-8 left over; allowed: at most 1e-9/u,
    );
    expect(() => balanced({ ...two, equations: [{ ...block, right: "load * pull" }], values })).toThrow(
      /Units do not match/u,
    );
    expect(() => balanced({ ...two, equations: [block], values, answer: "other" as "pull" })).toThrow(
      /answer "other"/u,
    );
    expect(() => balanced({ ...two, equations: [{ ...block, left: "pull.a" }], values })).toThrow(/allowed: numbers/u);
  });

  it("is refused as data once a number in it was changed", () => {
    const copy = structuredClone(balanced({ ...two, equations: [block], values: { pull: 50, load: 100 } }));
    Object.assign(last(copy).symbols[1]!, { value: 101 });
    expect(() => checkWorking("two", copy)).toThrow(/100 = 101/u);
  });
});

describe("balances of what a solver found", () => {
  it("hold for purchases of any kind, both ways, and give the hand force of the line", () => {
    const reevings = [
      ...[1, 2, 3, 5].map((parts) => tackle({ parts, hauledFrom: "fixed" as const, turn: known(1.09, 0.4, "sheave") })),
      tackle({ parts: 3, hauledFrom: "moving", turn: [known(1.1), known(1.05, 0.2)], leadBlocks: 1 }),
      tackle({ parts: 2, hauledFrom: "fixed", turn: known(1.09), spreadAngle: 0.3 }),
      thirdSystem({ ropes: 3, turn: known(1.07) }),
      doubleBurton({ form: "three singles", turn: known(1.07, 0.1) }),
    ];
    fc.assert(
      fc.property(evenly(50, 1000), fc.constantFrom(...reevings), fc.boolean(), (load, reeving, hauls) => {
        const direction = hauls ? "hauling" : "easing";
        const working = tackleBalance({ reeving, rope: limp, load, direction });
        const line = prepareLine({ rope: limp, stations: [{ kind: "tackle", name: "tackle", reeving }] });
        const force = line.handForce(load, direction);
        expect(Math.abs(working.value - force)).toBeLessThan(1e-12 * force);
        expect(worst(working)).toBeLessThan(1e-9);
        checkWorking("tackle", working);
      }),
      { seed: 7, numRuns: 60 },
    );
  });

  it("refuse a purchase with a part that hangs slack", () => {
    const reeving = tackle({ parts: 3, hauledFrom: "fixed", turn: known(1.1, 5) });
    expect(() => tackleBalance({ reeving, rope: limp, load: 1, direction: "easing" })).toThrow(/would carry −/u);
  });

  it("hold for a ratio that was found by halving", () => {
    const working = ratioBalance({ pullOverLoad: 0.45, parts: 3, sheaves: 3 });
    expect(working.value).toBeCloseTo(1.166, 3);
    expect(worst(working)).toBeLessThan(1e-12);
  });

  it("hold for a muscle at the end of its hold", () => {
    fc.assert(
      fc.property(evenly(0.2, 0.7), (share) => {
        const rates = { fatigueRate: 0.0098, recoveryRate: 0.00064 };
        const working = fatigueBalance({ share, ...rates });
        expect(working.value).toBe(modelEndurance({ share, ...rates }));
        expect(worst(working)).toBeLessThan(1e-9);
      }),
      { seed: 7, numRuns: 40 },
    );
    expect(() => fatigueBalance({ share: 0.05, fatigueRate: 0.0098, recoveryRate: 0.00064 })).toThrow(
      /endurance time/u,
    );
  });

  it("hold for the work of a line and of a motion", () => {
    const line = prepareLine({ rope: limp, stations: [known(1.1, 2)] });
    const working = lineBalance({ state: line.state(100, "hauling"), velocityRatio: 1 });
    expect(working.value).toBeCloseTo(12, 12);
    const motion = {
      hand: 10,
      retrieval: 0,
      gravity: -6,
      wind: 0,
      kinetic: 1,
      sail: 1,
      stations: 2,
      joining: 0,
      stopped: 0,
    };
    expect(motionBalance({ ...motion, imbalance: 0 }).value).toBe(10);
    expect(() => motionBalance({ ...motion, stations: 2.1, imbalance: 0 })).toThrow(
      /left over; allowed: at most 0.001/u,
    );
  });

  it("hold for the mass of a plan and the bound of its search", () => {
    const option = (dry: number) => ({
      id: String(dry),
      words: "rope",
      mass: { dry, wet: dry, aloft: 0 },
      cost: 0,
      handForce: 0,
      measures: {},
      splices: 0,
      minutes: 0,
      pieces: [],
      parts: [],
    });
    const choice = [0.1, 0.2, 0.3].map((dry) => ({
      line: { name: `line of ${dry}`, options: [option(dry)] },
      option: option(dry),
    }));
    const totals = { dry: 0.6, wet: 0.6, aloft: 0, cost: 0, handForce: 0, worstHandForce: 0, splices: 0, minutes: 0 };
    const proof = { minimised: "dry", value: 0.6, bound: 0.6, gap: 0, status: "proven optimal", nodes: 1 } as const;
    expect(massBalance({ choice, totals, proofs: [proof] }, "dry").value).toBe(0.6);
    expect(massBalance({ choice, totals, proofs: [] }, "wet").value).toBe(0.6);
    const loose = { ...proof, bound: 0.5 };
    expect(() => massBalance({ choice, totals, proofs: [loose] }, "dry")).toThrow(/bound of the search/u);
  });
});
