import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { ValueError } from "../../src/quantity/errors.js";
import { airDensity, dryAirGasConstant, dynamicPressure } from "../../src/wind/air.js";
import { beaufortSpeed } from "../../src/wind/beaufort.js";
import { gustFactors, gustLoadFactor } from "../../src/wind/gust.js";
import { evenly } from "../numerics/evenly.js";

const seed = { seed: 7 };
const temperature = evenly(233, 323);
const pressure = evenly(5e4, 1.1e5);

describe("air", () => {
  it("weighs nothing in a vacuum", () => {
    expect(airDensity({ temperature: 288.15, pressure: 0 })).toBe(0);
  });

  it("obeys the gas law: pressure over density over temperature is the gas constant", () => {
    fc.assert(
      fc.property(temperature, pressure, (t, p) => {
        expect(p / (airDensity({ temperature: t, pressure: p }) * t)).toBeCloseTo(dryAirGasConstant.value, 9);
      }),
      seed,
    );
  });

  it("presses with the square of speed, and not at all in a calm", () => {
    expect(dynamicPressure({ airDensity: 1.2, apparentWindSpeed: 0 })).toBe(0);
    fc.assert(
      fc.property(evenly(0, 50), (v) => {
        const once = dynamicPressure({ airDensity: 1.2, apparentWindSpeed: v });
        expect(dynamicPressure({ airDensity: 1.2, apparentWindSpeed: 2 * v })).toBeCloseTo(4 * once, 9);
      }),
      seed,
    );
  });

  it("refuses what cannot be", () => {
    expect(() => airDensity({ temperature: 15, pressure: 101_325 })).toThrow(/air temperature.*15 K/u);
    expect(() => airDensity({ temperature: Number.NaN, pressure: 101_325 })).toThrow(ValueError);
    expect(() => airDensity({ temperature: 288, pressure: -1 })).toThrow(ValueError);
    expect(() => dynamicPressure({ airDensity: -1, apparentWindSpeed: 5 })).toThrow(ValueError);
    expect(() => dynamicPressure({ airDensity: 1.2, apparentWindSpeed: -5 })).toThrow(ValueError);
  });
});

describe("gusts and the Beaufort scale", () => {
  it("leaves the load alone without a gust, and squares the factor", () => {
    expect(gustLoadFactor({ gustFactor: 1 })).toBe(1);
    expect(gustLoadFactor({ gustFactor: gustFactors.forecast.value })).toBeCloseTo(16 / 9, 12);
  });

  it("matches the square of the pressures", () => {
    const mean = dynamicPressure({ airDensity: 1.2, apparentWindSpeed: 7 });
    const gust = dynamicPressure({ airDensity: 1.2, apparentWindSpeed: 7 * gustFactors.atSea.value });
    expect(gustLoadFactor({ gustFactor: gustFactors.atSea.value })).toBeCloseTo(gust / mean, 12);
  });

  it("is calm at force 0 and rises with force", () => {
    expect(beaufortSpeed({ beaufort: 0 })).toBe(0);
    for (let force = 1; force <= 12; force++) {
      expect(beaufortSpeed({ beaufort: force })).toBeGreaterThan(beaufortSpeed({ beaufort: force - 1 }));
    }
  });

  it("refuses lulls, gales beyond the scale and NaN", () => {
    expect(() => gustLoadFactor({ gustFactor: 0.9 })).toThrow(/gust factor/u);
    expect(() => gustLoadFactor({ gustFactor: Number.NaN })).toThrow(ValueError);
    expect(() => beaufortSpeed({ beaufort: 13 })).toThrow(/Beaufort number.*13/u);
  });
});
