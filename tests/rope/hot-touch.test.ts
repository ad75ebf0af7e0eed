import { describe, expect, it } from "vitest";
import { hand, skinLimits } from "../../src/materials/skin.js";
import { ValueError } from "../../src/quantity/errors.js";
import { safeTouchTemperature } from "../../src/rope/hot-touch.js";
import { damageRate } from "../../src/rope/skin-burn.js";

const at = (solid: "aluminium" | "plastic" | "stainlessSteel", duration: number) =>
  safeTouchTemperature({ solid, duration });

describe("touching something hot", () => {
  it("is worse the longer it lasts, and worse on metal than on plastic", () => {
    expect(at("aluminium", 5).value).toBeLessThan(at("aluminium", 1).value);
    expect(at("aluminium", 1).value).toBeLessThan(at("plastic", 1).value);
    expect(at("aluminium", 1).value).toBeLessThan(at("stainlessSteel", 1).value);
  });

  it("is no burn below 65 °C within half a second, on any of them, as the standard has it", () => {
    for (const solid of ["aluminium", "stainlessSteel", "plastic"] as const)
      expect(at(solid, 0.5).low).toBeGreaterThan(65 + 273.15);
  });

  it("for long on a metal that imposes its temperature is burnt near the steady time to a burn", () => {
    const { value } = at("aluminium", 3000);
    const law = { damageFactor: skinLimits.damageFactor.value, activation: skinLimits.activation.value };
    expect(3000 * damageRate(value, law)).toBeGreaterThan(1);
    expect(3000 * damageRate(value - 2, law)).toBeLessThan(1);
    expect(value).toBeGreaterThan(hand.temperature.value);
  });

  it("refuses a touch of no duration", () => {
    expect(() => at("aluminium", 0)).toThrow(ValueError);
  });
});
