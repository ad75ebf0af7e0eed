import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { OutsideModelError, ValueError } from "../../src/quantity/errors.js";
import {
  logLawFactor,
  offshoreGust,
  offshoreMeanSpeed,
  offshoreTurbulence,
  powerLawFactor,
} from "../../src/wind/profile.js";
import { roughnessLengths, shearExponents } from "../../src/wind/shear.js";
import { evenly } from "../numerics/evenly.js";

const seed = { seed: 7 };
const height = evenly(1, 140);
const exponent = evenly(0, 0.4);
const roughnessLength = evenly(1e-5, 0.1);
const speed = evenly(5, 40);

describe("wind with height", () => {
  it("is one at the reference height, and the same everywhere without shear", () => {
    fc.assert(
      fc.property(height, height, exponent, roughnessLength, (z, zr, a, z0) => {
        expect(powerLawFactor({ height: z, referenceHeight: z, exponent: a })).toBe(1);
        expect(logLawFactor({ height: z, referenceHeight: z, roughnessLength: z0 })).toBe(1);
        expect(powerLawFactor({ height: z, referenceHeight: zr, exponent: 0 })).toBe(1);
      }),
      seed,
    );
  });

  it("goes up and comes back: the factors of two moves multiply", () => {
    fc.assert(
      fc.property(height, height, height, exponent, roughnessLength, (x, y, z, a, z0) => {
        const power = (to: number, from: number) => powerLawFactor({ height: to, referenceHeight: from, exponent: a });
        const log = (to: number, from: number) =>
          logLawFactor({ height: to, referenceHeight: from, roughnessLength: z0 });
        expect(power(x, y) * power(y, z)).toBeCloseTo(power(x, z), 10);
        expect(log(x, y) * log(y, z)).toBeCloseTo(log(x, z), 10);
      }),
      seed,
    );
  });

  it("never falls with height", () => {
    fc.assert(
      fc.property(height, height, exponent, roughnessLength, speed, (x, y, a, z0, u) => {
        const [low, high] = [Math.min(x, y), Math.max(x, y)];
        expect(powerLawFactor({ height: high, referenceHeight: low, exponent: a })).toBeGreaterThanOrEqual(1);
        expect(logLawFactor({ height: high, referenceHeight: low, roughnessLength: z0 })).toBeGreaterThanOrEqual(1);
        const mean = (z: number) => offshoreMeanSpeed({ hourlyMeanSpeed: u, height: z });
        expect(mean(high)).toBeGreaterThanOrEqual(mean(low));
      }),
      seed,
    );
  });

  it("has the log law as the power law with the local exponent 1 / ln(z / z0)", () => {
    const roughness = roughnessLengths.openWater.value;
    const local = 1 / Math.log(10 / roughness);
    const log = logLawFactor({ height: 10.01, referenceHeight: 10, roughnessLength: roughness });
    expect(powerLawFactor({ height: 10.01, referenceHeight: 10, exponent: local })).toBeCloseTo(log, 7);
  });

  it("gives back the mean at 10 m, and a gust of one hour is that mean", () => {
    fc.assert(
      fc.property(speed, height, (u, z) => {
        expect(offshoreMeanSpeed({ hourlyMeanSpeed: u, height: 10 })).toBeCloseTo(u, 10);
        expect(offshoreGust({ hourlyMeanSpeed: u, height: z, duration: 3600 })).toBeCloseTo(
          offshoreMeanSpeed({ hourlyMeanSpeed: u, height: z }),
          10,
        );
      }),
      seed,
    );
  });

  it("has shorter gusts stronger, and rougher air lower down", () => {
    fc.assert(
      fc.property(speed, evenly(1, 1800), (u, t) => {
        const gust = (duration: number) => offshoreGust({ hourlyMeanSpeed: u, height: 5, duration });
        expect(gust(t)).toBeGreaterThan(gust(2 * t));
        const intensity = (z: number) => offshoreTurbulence({ hourlyMeanSpeed: u, height: z });
        expect(intensity(3)).toBeGreaterThan(intensity(30));
      }),
      seed,
    );
  });

  it("holds every published exponent and roughness inside its own validity", () => {
    for (const { value, low, high } of Object.values(shearExponents)) {
      for (const a of [low, value, high]) {
        expect(powerLawFactor({ height: 2, referenceHeight: 10, exponent: a })).toBeLessThan(1);
      }
    }
    for (const { value } of Object.values(roughnessLengths)) {
      expect(logLawFactor({ height: 2, referenceHeight: 10, roughnessLength: value })).toBeLessThan(1);
    }
  });

  it("refuses heights and winds where it was never shown to hold", () => {
    const power = { height: 2, referenceHeight: 10, exponent: 0.1 };
    expect(() => powerLawFactor({ ...power, height: 0.5 })).toThrow(OutsideModelError);
    expect(() => powerLawFactor({ ...power, referenceHeight: 300 })).toThrow(OutsideModelError);
    expect(() => powerLawFactor({ ...power, exponent: 0.6 })).toThrow(/shear exponent/u);
    expect(() => powerLawFactor({ ...power, exponent: Number.NaN })).toThrow(ValueError);
    expect(() => powerLawFactor({ ...power, height: -2 })).toThrow(ValueError);
    expect(() => logLawFactor({ height: 2, referenceHeight: 10, roughnessLength: 0.5 })).toThrow(OutsideModelError);
    expect(() => logLawFactor({ height: 2, referenceHeight: 10, roughnessLength: 0 })).toThrow(ValueError);
    expect(() => offshoreMeanSpeed({ hourlyMeanSpeed: 3, height: 5 })).toThrow(/ISO 19901-1/u);
    expect(() => offshoreGust({ hourlyMeanSpeed: 10, height: 10, duration: 0.1 })).toThrow(/gust duration.*0.1 s/u);
    expect(() => offshoreGust({ hourlyMeanSpeed: 10, height: 150, duration: 3 })).toThrow(OutsideModelError);
  });
});
