import { describe, expect, it } from "vitest";
import { rubbedHardware } from "../../src/materials/rubbed-hardware.js";
import { handHeat, safeLostForce } from "../../src/rope/hand-burn.js";
import { safeHardwareForce } from "../../src/rope/hardware-heat.js";
import { along, falls, named, rises, value } from "./asked.js";

const model = "when-rope-gets-hot";
const hot = named(model);

describe("a line that is braked", () => {
  it("makes heat by load and speed", () => {
    expect(value(hot, "Heat made", { load: 100, speed: 4 })).toBeCloseTo(400, 9);
  });

  it("is what the hand's own model says", () => {
    const ease = { fibre: "polyester", ropeDiameter: 0.01, gloved: false, speed: 2, duration: 1 } as const;
    const settings = { rope: 10, speed: 2, time: 1, load: 50 };
    expect(value(hot, "It hurts from", settings)).toBeCloseTo(safeLostForce(ease, "pain").value, 6);
    expect(value(hot, "It burns from", settings)).toBeCloseTo(safeLostForce(ease, "burn").value, 6);
    expect(value(hot, "Hottest living skin", settings)).toBeCloseTo(handHeat(ease, 50).living.value - 273.15, 6);
  });

  it("is what the hardware's own model says", () => {
    const ease = {
      fibre: "hmpe",
      ropeDiameter: 0.008,
      hardware: rubbedHardware.jammer,
      speed: 3,
      duration: 2,
    } as const;
    expect(value(hot, "The cover is marked from", { brake: "jammer", cover: "hmpe" })).toBeCloseTo(
      safeHardwareForce(ease).value,
      6,
    );
  });

  it("hurts before it burns, and from less the faster and longer it runs", () => {
    for (const control of ["speed", "time"]) {
      const [hurts, burns] = [along(model, "It hurts from", control), along(model, "It burns from", control)];
      expect(falls(hurts), control).toBe(true);
      expect(falls(burns), control).toBe(true);
      for (const [index, one] of hurts.entries()) expect(one).toBeLessThan(burns[index]!);
    }
    expect(rises(along(model, "It burns from", "rope"))).toBe(true);
  });

  it("gets hotter in step with the load", () => {
    const at = (load: number) => value(hot, "Hottest cover", { brake: "ring", load }) - 20;
    expect(at(200) / at(50)).toBeCloseTo(4, 9);
  });

  it("judges by the whole range", () => {
    const said = (settings: Record<string, number | string>) => hot.compute(settings).sentence;
    expect(said({ load: 5, speed: 1 })).toContain("burns no hand");
    expect(said({ load: 55 })).toContain("may burn the hand");
    expect(said({ load: 300 })).toContain("That burns the hand");
    expect(said({ brake: "jammer", load: 400 })).toContain("marked for good");
  });
});
