import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { ValueError } from "../../src/quantity/errors.js";
import { hangingTension, runOutLoad } from "../../src/reeving/hanging-line.js";
import { type Line, prepareLine } from "../../src/reeving/line.js";
import { evenly } from "../numerics/evenly.js";

const g = 9.80665;
const bare: Line = {
  rope: { diameter: 0.007, stiffness: { tensionTerm: 0, constantTerm: 0, diameterTerm: 0 } },
  stations: [],
};
const lead = (ratio: number, drag = 0): Line => ({
  ...bare,
  stations: [{ kind: "measured", name: "lead", tensionRatio: ratio, drag }],
});

describe("a line that hangs free", () => {
  it("needs the least end tension that any catenary of its span has", () => {
    fc.assert(
      fc.property(evenly(0.005, 0.5), evenly(0.2, 20), (linearDensity, span) => {
        const endTension = (a: number) => linearDensity * g * a * Math.cosh(span / (2 * a));
        let least = Number.POSITIVE_INFINITY;
        for (let share = 0.2; share < 3; share += 1e-3) least = Math.min(least, endTension(share * span));
        expect(hangingTension({ linearDensity, span }) / least).toBeCloseTo(1, 5);
      }),
      { seed: 7, numRuns: 20 },
    );
    expect(hangingTension({ linearDensity: 0.05, span: 0 })).toBe(0);
  });
});

describe("the load from which a sheet goes out with its own weight", () => {
  it("is never as little as a line without friction says: a wet 7 mm sheet over 3 m asks for more than a newton", () => {
    const hanging = { linearDensity: 0.045, span: 3 };
    expect(prepareLine(bare).runOutLoad()).toBe(0);
    expect(runOutLoad({ line: prepareLine(bare), hanging })).toBeGreaterThan(0.9);
    expect(runOutLoad({ line: prepareLine(bare), hanging: { ...hanging, rise: 1 } })).toBeCloseTo(
      hangingTension(hanging) + 0.045 * g,
      9,
    );
  });

  it("is that of the turns and the tail where they ask for more, and grows with weight, span, rise, drag and tail", () => {
    const hanging = { linearDensity: 0.045, span: 2, rise: 0.5 };
    const at = (line: Line, more: Partial<typeof hanging> = {}, tailTension = 0) =>
      runOutLoad({ line: prepareLine(line), hanging: { ...hanging, ...more }, tailTension });
    expect(at(lead(1.5, 10))).toBeCloseTo(10 + 0.045 * g * 0.5, 9);
    expect(at(lead(1.5, 10), {}, 4)).toBeCloseTo(16 + 0.045 * g * 0.5, 9);
    for (const more of [{ linearDensity: 0.09 }, { span: 4 }, { rise: 1 }])
      expect(at(lead(1.2), more)).toBeGreaterThan(at(lead(1.2)));
    // A stiff rope asks for more at each turn, whatever the load.
    const stiff: Line = {
      rope: { diameter: 0.007, stiffness: { tensionTerm: 0, constantTerm: 4000, diameterTerm: 0 } },
      stations: [
        {
          kind: "sheave",
          name: "lead",
          diameter: 0.02,
          wrapAngle: Math.PI,
          pinRadius: 0.003,
          bearingFriction: 0.1,
          drag: 0.2,
        },
      ],
    };
    const limp = { ...stiff, rope: bare.rope };
    expect(at(stiff)).toBeGreaterThan(at(limp) + 1);
  });

  it("is helped by a sail's end below the lead, and never below nothing", () => {
    const hanging = { linearDensity: 0.045, span: 1, rise: -50 };
    expect(runOutLoad({ line: prepareLine(bare), hanging })).toBe(0);
  });

  it("is refused for what cannot be", () => {
    const line = prepareLine(bare);
    expect(() => runOutLoad({ line, hanging: { linearDensity: 0, span: 1 } })).toThrow(ValueError);
    expect(() => runOutLoad({ line, hanging: { linearDensity: 0.05, span: -1 } })).toThrow(ValueError);
    expect(() => runOutLoad({ line, hanging: { linearDensity: 0.05, span: 1, rise: Number.NaN } })).toThrow(ValueError);
    expect(() => runOutLoad({ line, hanging: { linearDensity: 0.05, span: 1 }, tailTension: -1 })).toThrow(ValueError);
  });
});
