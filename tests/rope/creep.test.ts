import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { creepLaws } from "../../src/materials/creep.js";
import { ValueError } from "../../src/quantity/errors.js";
import { creepStrain, logCreep, steadyCreepRate } from "../../src/rope/creep.js";
import { evenly } from "../numerics/evenly.js";

const seed = { seed: 7 };
const room = 293.15;
const rate = {
  creepRate: 4e-9,
  loadRatio: 1,
  loadPower: 4,
  activation: 14000,
  temperature: room,
  referenceTemperature: room,
};

describe("creep by the logarithm of time", () => {
  it("is nothing after no time, and one share a decade", () => {
    expect(logCreep({ strainPerDecade: 0.001, settling: 60, duration: 0 })).toBe(0);
    expect(logCreep({ strainPerDecade: 0.001, settling: 60, duration: 540 })).toBeCloseTo(0.001, 15);
    expect(logCreep({ strainPerDecade: 0.001, settling: 60, duration: 5940 })).toBeCloseTo(0.002, 15);
  });

  it("goes on where it stopped", () => {
    fc.assert(
      fc.property(evenly(1, 1e4), evenly(0, 1e5), evenly(0, 1e5), (settling, first, second) => {
        const c = { strainPerDecade: 0.002 };
        const both = logCreep({ ...c, settling, duration: first + second });
        const steps =
          logCreep({ ...c, settling, duration: first }) +
          logCreep({ ...c, settling: settling + first, duration: second });
        expect(steps).toBeCloseTo(both, 12);
      }),
      seed,
    );
  });

  it("is less the longer the line has settled", () => {
    fc.assert(
      fc.property(evenly(1, 1e4), evenly(1.1, 100), (settling, factor) => {
        const gained = (start: number) => logCreep({ strainPerDecade: 0.002, settling: start, duration: 3600 });
        expect(gained(settling * factor)).toBeLessThan(gained(settling));
      }),
      seed,
    );
  });
});

describe("the steady rate", () => {
  it("is the one that was found at its own load and temperature", () => expect(steadyCreepRate(rate)).toBe(4e-9));

  it("grows with load by its power, and with warmth", () => {
    expect(steadyCreepRate({ ...rate, loadRatio: 3 })).toBeCloseTo(81 * 4e-9, 18);
    expect(steadyCreepRate({ ...rate, loadRatio: 0 })).toBe(0);
    const warmer = steadyCreepRate({ ...rate, temperature: room + 10 }) / steadyCreepRate(rate);
    expect(warmer).toBeGreaterThan(3);
    expect(warmer).toBeLessThan(6);
  });

  it("undoes itself from one temperature to another and back", () => {
    const warm = steadyCreepRate({ ...rate, temperature: 310 });
    expect(steadyCreepRate({ ...rate, creepRate: warm, temperature: room, referenceTemperature: 310 })).toBeCloseTo(
      4e-9,
      20,
    );
  });
});

describe("creep of a rope", () => {
  const hour = { loadShare: 0.2, settling: 60, duration: 3600, temperature: room };

  it("falls from polyester over HMPE and aramid to LCP in the first hour", () => {
    const strains = [creepLaws.polyester, creepLaws.hmpe, creepLaws.aramid, creepLaws.lcp].map(
      (law) => creepStrain({ law, ...hour }).value,
    );
    expect([...strains].sort((one, other) => other - one)).toEqual(strains);
  });

  it("of HMPE overtakes polyester when the load stays on for long", () => {
    const season = { ...hour, duration: 60 * 86400 };
    expect(creepStrain({ law: creepLaws.hmpe, ...season }).value).toBeGreaterThan(
      creepStrain({ law: creepLaws.polyester, ...season }).value,
    );
  });

  it("keeps its range in order, is nothing without load, and grows with time", () => {
    for (const law of Object.values(creepLaws)) {
      const { low, value, high } = creepStrain({ law, ...hour });
      expect(low < value && value < high).toBe(true);
      expect(creepStrain({ law, ...hour, loadShare: 0 }).value).toBe(0);
      expect(creepStrain({ law, ...hour, duration: 7200 }).value).toBeGreaterThan(value);
    }
  });

  it("refuses a load above break, no settling, and frost beyond the model", () => {
    const law = creepLaws.hmpe;
    for (const bad of [{ loadShare: 1.2 }, { settling: 0 }, { duration: -1 }, { temperature: 20 }])
      expect(() => creepStrain({ law, ...hour, ...bad })).toThrow(ValueError);
  });
});
