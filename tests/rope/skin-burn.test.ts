import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { burnTimes } from "../../src/published/burn-times.js";
import { ValueError } from "../../src/quantity/errors.js";
import { burnDose, damageRate, timeToBurn } from "../../src/rope/skin-burn.js";
import { evenly } from "../numerics/evenly.js";
import { seed } from "./solids.js";

const law = { damageFactor: 3.1e98, activation: 75_000 };

describe("damage of skin", () => {
  it("takes the times that the constants give by hand", () => {
    expect(1 / damageRate(47 + 273.15, law)).toBeCloseTo(1773, 0);
    expect(1 / damageRate(49 + 273.15, law)).toBeCloseTo(414, 0);
    expect(1 / damageRate(51 + 273.15, law)).toBeCloseTo(98, 0);
  });

  it("gets faster with every degree", () => {
    fc.assert(
      fc.property(evenly(300, 350), evenly(0.01, 20), (temperature, more) => {
        expect(damageRate(temperature + more, law)).toBeGreaterThan(damageRate(temperature, law));
        expect(timeToBurn(temperature + more).value).toBeLessThan(timeToBurn(temperature).value);
      }),
      seed,
    );
  });

  it("has a range that meets the table of hot water from 45 to 51 °C", () => {
    const slow = burnTimes.filter(({ temperature }) => temperature < 325);
    expect(slow.length).toBe(5);
    for (const { temperature, secondDegree, thirdDegree } of slow) {
      const { low, high } = timeToBurn(temperature);
      expect(low).toBeLessThan(thirdDegree);
      expect(high).toBeGreaterThan(secondDegree);
    }
  });

  it("is quicker than the table at 60 °C, where skin must warm up first", () => {
    const hot = burnTimes.at(-1)!;
    expect(timeToBurn(hot.temperature).high).toBeLessThan(hot.secondDegree);
  });

  it("adds up over a steady course, and over its halves", () => {
    const steady = Array.from({ length: 11 }, () => 325);
    const times = steady.map((_, index) => 3 * index);
    expect(burnDose(steady, times, law) / (30 * damageRate(325, law))).toBeCloseTo(1, 12);
    const rising = Array.from({ length: 21 }, (_, index) => 310 + index);
    const clock = rising.map((_, index) => index);
    const part = (from: number, to: number) => burnDose(rising.slice(from, to), clock.slice(from, to), law);
    expect(burnDose(rising, clock, law)).toBeCloseTo(part(0, 11) + part(10, 21), 12);
    expect(burnDose([330], [0], law)).toBe(0);
  });

  it("is not worked out where skin has long boiled or frozen", () => {
    expect(() => damageRate(500, law)).toThrow(ValueError);
    expect(() => timeToBurn(200)).toThrow(ValueError);
    expect(() => burnDose([310, 310], [0], law)).toThrow(/one time for each/u);
    expect(() => burnDose([200, 310], [0, 1], law)).toThrow(ValueError);
  });
});
