import { describe, expect, it } from "vitest";
import { OutsideModelError, ValueError } from "../../src/quantity/errors.js";
import { lashing, lashingRounds, shackle, shackleFor } from "../../src/rope/lashing.js";
import { squareRule, squareRuleSize, workingLoad } from "../../src/rope/rules.js";
import { blendRegain, moistureContent, moistureRegain } from "../../src/rope/wet-mass.js";
import { breakingLength, roundDiameter, roundLinearDensity, specificStrength } from "../../src/rope/yarn.js";

const tie = {
  twine: { fibre: "hmpe", construction: "bareBraid", diameter: 0.0015 },
  rounds: 3,
  gap: 0.03,
  eyeDiameter: 0.005,
} as const;

describe("a lashing", () => {
  it("carries in step with its rounds", () => {
    expect(lashing({ ...tie, rounds: 6 }).breakLoad.value / lashing(tie).breakLoad.value).toBeCloseTo(2, 12);
  });

  it("with the rounds that it is given carries the load at its weak end; with one less it does not", () => {
    for (const load of [500, 2000, 9000]) {
      const { rounds: _, ...plan } = tie;
      const rounds = lashingRounds({ ...plan, load });
      expect(lashing({ ...tie, rounds }).breakLoad.low).toBeGreaterThanOrEqual(load);
      if (rounds > 1) expect(lashing({ ...tie, rounds: rounds - 1 }).breakLoad.low).toBeLessThan(load);
    }
  });

  it("of a thousandth of the load's twine is refused, as are no rounds", () => {
    const { rounds: _, ...plan } = tie;
    expect(() => lashingRounds({ ...plan, load: 900_000 })).toThrow(OutsideModelError);
    expect(() => lashing({ ...tie, rounds: 0 })).toThrow(ValueError);
  });
});

describe("a shackle", () => {
  it("carries in step with the square of its bar and weighs in step with the cube", () => {
    const [thin, thick] = [0.005, 0.01].map((barDiameter) => shackle({ barDiameter }));
    expect(thick!.workingLoad.value / thin!.workingLoad.value).toBeCloseTo(4, 12);
    expect(thick!.mass.value / thin!.mass.value).toBeCloseTo(8, 12);
  });

  it("for a load has the bar that carries it", () => {
    expect(shackle({ barDiameter: shackleFor(3000) }).workingLoad.value).toBeCloseTo(3000, 9);
  });
});

describe("rules and yarns", () => {
  it("go back and forth", () => {
    expect(squareRuleSize({ factor: 2e8, load: squareRule({ factor: 2e8, size: 0.006 }) })).toBeCloseTo(0.006, 12);
    const linearDensity = roundLinearDensity({ diameter: 2e-5, density: 1300 });
    expect(roundDiameter({ linearDensity, density: 1300 })).toBeCloseTo(2e-5, 15);
    expect(moistureContent(moistureRegain(0.07))).toBeCloseTo(0.07, 12);
  });

  it("keep the whole break load at a factor of one, and none of the water of a dry fibre", () => {
    expect(workingLoad({ breakLoad: 5000, safetyFactor: 1 })).toBe(5000);
    expect(moistureContent(0)).toBe(0);
    expect(blendRegain([{ share: 1, regain: 0.085 }])).toBe(0.085);
  });

  it("refuse shares that do not add up, and what cannot be", () => {
    expect(() => blendRegain([{ share: 0.5, regain: 0.1 }])).toThrow(ValueError);
    expect(() => moistureRegain(1)).toThrow(ValueError);
    expect(() => specificStrength({ stress: 1e9, density: 0 })).toThrow(/density/u);
    expect(() => breakingLength(-1)).toThrow(/specific strength/u);
    expect(() => workingLoad({ breakLoad: 1000, safetyFactor: 0 })).toThrow(/safety factor/u);
  });
});
