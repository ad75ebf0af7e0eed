import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { ValueError } from "../../src/quantity/errors.js";
import { diffusivity, effusivity } from "../../src/rope/effusivity.js";
import { flashRise } from "../../src/rope/flash-temperature.js";
import { fluxRise } from "../../src/rope/half-space.js";
import { layerResponse } from "../../src/rope/layer-response.js";
import { patchResponse } from "../../src/rope/patch-response.js";
import { exitOverMean, ropeHeatTransfer } from "../../src/rope/rope-stream.js";
import { evenly } from "../numerics/evenly.js";
import { aluminium, leather, seed, skin, wood } from "./solids.js";

const unit = (solid: typeof skin | typeof leather, depth: number, time: number) =>
  fluxRise({ flux: 1, depth, time, solid });

describe("a layer on a thick body", () => {
  it("of the same stuff is no layer at all", () => {
    fc.assert(
      fc.property(evenly(0.0001, 0.003), evenly(0.01, 10), evenly(0, 0.002), (thickness, time, depth) => {
        const same = { layer: skin, thickness, body: skin };
        expect(layerResponse(same, time)).toBeCloseTo(unit(skin, 0, time), 12);
        expect(layerResponse(same, time, depth)).toBeCloseTo(unit(skin, thickness + depth, time), 12);
      }),
      seed,
    );
  });

  it("is at first the layer alone, at last the body alone with the layer's resistance in front", () => {
    const glove = { layer: leather, thickness: 0.001, body: skin };
    expect(layerResponse(glove, 0.01) / unit(leather, 0, 0.01)).toBeCloseTo(1, 6);
    const late = 1e5;
    expect((layerResponse(glove, late) - layerResponse(glove, late, 0)) / (0.001 / leather.conductivity)).toBeCloseTo(
      1,
      2,
    );
    expect(layerResponse(glove, late, 0) / unit(skin, 0, late)).toBeCloseTo(1, 1);
    expect(layerResponse(glove, 0)).toBe(0);
  });

  it("thin enough is not there", () => {
    const film = { layer: leather, thickness: 1e-7, body: skin };
    expect(layerResponse(film, 1, 0.0003) / unit(skin, 0.0003, 1)).toBeCloseTo(1, 3);
  });

  it("agrees with the heat equation solved in small cells", () => {
    const [cell, cells, seconds] = [2.5e-5, 320, 1.5];
    const inLayer = 40;
    const solidOf = (index: number) => (index < inLayer ? leather : skin);
    const step = (0.4 * cell * cell) / Math.max(diffusivity(leather), diffusivity(skin));
    let rise = new Float64Array(cells);
    const steps = Math.round(seconds / step);
    for (let n = 0; n < steps; n += 1) {
      const next = rise.slice();
      for (let i = 0; i < cells; i += 1) {
        const { conductivity, density, specificHeat } = solidOf(i);
        const between = (other: number) => {
          const far = solidOf(other).conductivity;
          return ((2 * conductivity * far) / (conductivity + far)) * ((rise[other]! - rise[i]!) / cell);
        };
        const into = (i === 0 ? 1 : between(i - 1)) + (i === cells - 1 ? 0 : between(i + 1));
        next[i] = rise[i]! + (step * into) / (density * specificHeat * cell);
      }
      rise = next;
    }
    const layered = { layer: leather, thickness: inLayer * cell, body: skin };
    const time = steps * step;
    const outside = rise[0]! + (0.5 * cell) / leather.conductivity;
    expect(outside / layerResponse(layered, time)).toBeCloseTo(1, 2);
    expect(rise[inLayer + 8]! / layerResponse(layered, time, 8.5 * cell)).toBeCloseTo(1, 2);
  });

  it("keeps living skin cooler, the more the thicker it is", () => {
    const at = (thickness: number) => layerResponse({ layer: leather, thickness, body: skin }, 2, 0.0003);
    expect(at(0.0005)).toBeLessThan(unit(skin, 0.0003, 2));
    expect(at(0.002)).toBeLessThan(at(0.0005));
    expect(() => at(0)).toThrow(ValueError);
  });
});

describe("a patch on a body", () => {
  it("is at first a thick body under the same flux", () => {
    expect(
      patchResponse({ solid: wood, area: 1e-4 }, 0.1) / fluxRise({ flux: 1, depth: 0, time: 0.1, solid: wood }),
    ).toBeCloseTo(1, 9);
  });

  it("grows with time and shrinks with spreading room, and a small body goes on warming", () => {
    fc.assert(
      fc.property(evenly(0.1, 20), evenly(1e-5, 1e-3), (time, area) => {
        const now = patchResponse({ solid: aluminium, area }, time);
        expect(patchResponse({ solid: aluminium, area }, 1.5 * time)).toBeGreaterThan(now);
        expect(patchResponse({ solid: aluminium, area: 2 * area }, time)).toBeGreaterThan(now);
        const small = patchResponse({ solid: aluminium, area, mass: 0.02 }, time) - now;
        expect(small / ((area * time) / (0.02 * aluminium.specificHeat))).toBeCloseTo(1, 6);
      }),
      seed,
    );
  });

  it("ends at the slow limit of the flash temperature", () => {
    const halfLength = 0.005;
    const flash = flashRise({ flux: 1, halfLength, speed: 0, solid: aluminium });
    const patch = patchResponse({ solid: aluminium, area: Math.PI * halfLength ** 2 }, 1e8);
    expect(patch / flash.maximum).toBeCloseTo(1, 4);
  });
});

describe("flash temperature", () => {
  const flash = (speed: number, flux = 1e5) => flashRise({ flux, halfLength: 0.01, speed, solid: wood });

  it("is nothing without heat", () => {
    expect(flash(3, 0)).toMatchObject({ maximum: 0, mean: 0 });
  });

  it("falls with speed for one flux, the mean always below the hottest place", () => {
    fc.assert(
      fc.property(evenly(0, 10), evenly(0.001, 10), (speed, more) => {
        const [slow, fast] = [flash(speed), flash(speed + more)];
        expect(fast.maximum).toBeLessThan(slow.maximum);
        expect(fast.mean).toBeLessThan(slow.mean);
        expect(slow.mean).toBeLessThan(slow.maximum);
      }),
      seed,
    );
  });

  it("stays below both of its limits, and says in which range it is", () => {
    for (const peclet of [1e-3, 0.05, 0.5, 5, 50, 1e4]) {
      const speed = (2 * diffusivity(wood) * peclet) / 0.01;
      const { maximum, regime, peclet: found } = flash(speed);
      const slow = (1e5 * 0.01) / wood.conductivity;
      const fast = (1.5957691216 * slow * Math.sqrt(1 / (2 * peclet))) as number;
      expect(found).toBeCloseTo(peclet, 9);
      expect(maximum).toBeLessThan(Math.min(slow, fast));
      expect(maximum).toBeGreaterThan(0.7 * Math.min(slow, fast));
      expect(regime).toBe(peclet < 0.1 ? "slow" : peclet > 10 ? "fast" : "between");
    }
  });
});

describe("a rope as a stream", () => {
  const rope = { effusivity: effusivity(wood), contactLength: 0.02, touchingShare: 1 };

  it("carries away what the fast flash temperature says", () => {
    const speed = 2;
    const flash = flashRise({ flux: 1e4, halfLength: 0.01, speed, solid: wood });
    const mean = 1e4 / ropeHeatTransfer({ ...rope, speed });
    expect(mean / flash.mean).toBeCloseTo(1, 4);
    expect((exitOverMean * mean) / flash.maximum).toBeCloseTo(1, 3);
  });

  it("carries nothing at rest, and more with the root of speed", () => {
    expect(ropeHeatTransfer({ ...rope, speed: 0 })).toBe(0);
    expect(ropeHeatTransfer({ ...rope, speed: 4 }) / ropeHeatTransfer({ ...rope, speed: 1 })).toBeCloseTo(2, 12);
    expect(() => ropeHeatTransfer({ ...rope, speed: 1, touchingShare: 0 })).toThrow(ValueError);
  });
});
