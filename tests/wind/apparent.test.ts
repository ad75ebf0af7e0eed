import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { ValueError } from "../../src/quantity/errors.js";
import { apparentWind, heeledApparentWind, trueWind } from "../../src/wind/apparent.js";
import { evenly } from "../numerics/evenly.js";

const seed = { seed: 7 };
const windSpeed = evenly(0.1, 30);
const angle = evenly(0, Math.PI);
const boatSpeed = evenly(-5, 20);
const heelAngle = evenly(0, Math.PI / 2);

describe("apparent wind", () => {
  it("is the true wind on a boat that lies still", () => {
    fc.assert(
      fc.property(windSpeed, angle, (v, beta) => {
        const wind = apparentWind({ windSpeed: v, trueWindAngle: beta, boatSpeed: 0 });
        expect(wind.apparentWindSpeed).toBeCloseTo(v, 10);
        expect(wind.apparentWindAngle).toBeCloseTo(beta, 10);
      }),
      seed,
    );
  });

  it("is the boat's own speed from ahead in a calm", () => {
    expect(apparentWind({ windSpeed: 0, trueWindAngle: 1, boatSpeed: 4 })).toEqual({
      apparentWindSpeed: 4,
      apparentWindAngle: 0,
    });
    expect(apparentWind({ windSpeed: 0, trueWindAngle: 1, boatSpeed: 0 })).toEqual({
      apparentWindSpeed: 0,
      apparentWindAngle: 0,
    });
  });

  it("turns back into the true wind it came from", () => {
    fc.assert(
      fc.property(windSpeed, angle, boatSpeed, (v, beta, boat) => {
        const felt = apparentWind({ windSpeed: v, trueWindAngle: beta, boatSpeed: boat });
        const back = trueWind({ ...felt, boatSpeed: boat });
        expect(back.windSpeed).toBeCloseTo(v, 9);
        expect(back.trueWindAngle * v).toBeCloseTo(beta * v, 7);
      }),
      seed,
    );
  });

  it("comes from further ahead than the true wind on a boat that moves ahead, and keeps the part across", () => {
    fc.assert(
      fc.property(windSpeed, angle, evenly(0, 20), (v, beta, boat) => {
        const felt = apparentWind({ windSpeed: v, trueWindAngle: beta, boatSpeed: boat });
        expect(felt.apparentWindAngle).toBeLessThanOrEqual(beta + 1e-12);
        expect(felt.apparentWindSpeed * Math.sin(felt.apparentWindAngle)).toBeCloseTo(v * Math.sin(beta), 9);
      }),
      seed,
    );
  });

  it("scales: twice the wind and twice the speed is twice the apparent wind from the same side", () => {
    fc.assert(
      fc.property(windSpeed, angle, boatSpeed, (v, beta, boat) => {
        const once = apparentWind({ windSpeed: v, trueWindAngle: beta, boatSpeed: boat });
        const twice = apparentWind({ windSpeed: 2 * v, trueWindAngle: beta, boatSpeed: 2 * boat });
        expect(twice.apparentWindSpeed).toBeCloseTo(2 * once.apparentWindSpeed, 9);
        expect(twice.apparentWindAngle).toBeCloseTo(once.apparentWindAngle, 9);
      }),
      seed,
    );
  });

  it("refuses angles beyond astern, negative winds and NaN", () => {
    const input = { windSpeed: 10, trueWindAngle: 1, boatSpeed: 3 };
    expect(() => apparentWind({ ...input, trueWindAngle: 4 })).toThrow(/true wind angle.*4 rad/u);
    expect(() => apparentWind({ ...input, windSpeed: -1 })).toThrow(ValueError);
    expect(() => apparentWind({ ...input, boatSpeed: Number.NaN })).toThrow(ValueError);
    expect(() => trueWind({ apparentWindSpeed: 10, apparentWindAngle: -1, boatSpeed: 3 })).toThrow(ValueError);
  });
});

describe("apparent wind on a heeled boat", () => {
  it("is unchanged upright", () => {
    const wind = heeledApparentWind({ apparentWindSpeed: 8, apparentWindAngle: 1.2, heelAngle: 0 });
    expect(wind.apparentWindSpeed).toBeCloseTo(8, 12);
    expect(wind.apparentWindAngle).toBeCloseTo(1.2, 12);
  });

  it("obeys tan β_H = tan β_A · cos φ and never grows", () => {
    fc.assert(
      fc.property(evenly(0, 1.5), heelAngle, (beta, phi) => {
        const wind = heeledApparentWind({ apparentWindSpeed: 8, apparentWindAngle: beta, heelAngle: phi });
        expect(Math.tan(wind.apparentWindAngle)).toBeCloseTo(Math.tan(beta) * Math.cos(phi), 8);
        expect(wind.apparentWindAngle).toBeLessThanOrEqual(beta + 1e-12);
        expect(wind.apparentWindSpeed).toBeLessThanOrEqual(8 + 1e-12);
      }),
      seed,
    );
  });

  it("keeps the part along the boat at any heel", () => {
    fc.assert(
      fc.property(angle, heelAngle, (beta, phi) => {
        const wind = heeledApparentWind({ apparentWindSpeed: 8, apparentWindAngle: beta, heelAngle: phi });
        expect(wind.apparentWindSpeed * Math.cos(wind.apparentWindAngle)).toBeCloseTo(8 * Math.cos(beta), 9);
      }),
      seed,
    );
  });

  it("comes from dead ahead, or dead astern, on a boat on its side", () => {
    const flat = (beta: number) =>
      heeledApparentWind({ apparentWindSpeed: 8, apparentWindAngle: beta, heelAngle: Math.PI / 2 });
    expect(flat(1).apparentWindAngle).toBeCloseTo(0, 12);
    expect(flat(2).apparentWindAngle).toBeCloseTo(Math.PI, 12);
  });

  it("refuses a boat upside down", () => {
    expect(() => heeledApparentWind({ apparentWindSpeed: 8, apparentWindAngle: 1, heelAngle: 2 })).toThrow(ValueError);
  });
});
