import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { heatLimits } from "../../src/materials/heat-limits.js";
import { rubbedHardware } from "../../src/materials/rubbed-hardware.js";
import { ValueError } from "../../src/quantity/errors.js";
import { bulkRise, frictionHeat } from "../../src/rope/friction-heat.js";
import {
  type HardwareEase,
  hardwareHeat,
  hardwareRecords,
  hardwareStands,
  safeHardwareForce,
  safeHardwareSpeed,
} from "../../src/rope/hardware-heat.js";
import { evenly } from "../numerics/evenly.js";

const few = { seed: 7, numRuns: 20 } as const;
const room = 293.15;
const ring: HardwareEase = {
  fibre: "polyester",
  ropeDiameter: 0.008,
  hardware: rubbedHardware.ring,
  speed: 2,
  duration: 2,
};

describe("heat at hardware", () => {
  it("is nothing at rest or without loss", () => {
    expect(hardwareHeat({ ...ring, speed: 0 }, 100).rope).toMatchObject({ value: room, low: room, high: room });
    expect(hardwareHeat(ring, 0).hardware.value).toBe(room);
  });

  it("rises with load, speed and time, in step with the load", () => {
    fc.assert(
      fc.property(evenly(0.2, 5), evenly(0.2, 5), evenly(5, 200), (speed, duration, force) => {
        const rise = (other: Partial<HardwareEase>, lost = force) =>
          hardwareHeat({ ...ring, speed, duration, ...other }, lost).rope.value - room;
        const now = rise({});
        expect(rise({}, 2 * force) / now).toBeCloseTo(2, 9);
        expect(rise({ speed: 1.2 * speed })).toBeGreaterThan(now);
        expect(rise({ duration: 1.2 * duration })).toBeGreaterThan(now);
      }),
      few,
    );
  });

  it("leaves no more in the hardware than was made, and the face hotter than the whole", () => {
    for (const hardware of Object.values(rubbedHardware)) {
      const ease = { ...ring, hardware };
      const { share, hardware: face } = hardwareHeat(ease, 50);
      expect(share.value).toBeGreaterThan(0);
      expect(share.value).toBeLessThan(1);
      const specificHeat = hardwareRecords("polyester", hardware).specificHeat.value;
      const heat = share.value * frictionHeat({ lostForce: 50, distance: 4 });
      expect(face.value - room).toBeGreaterThan(bulkRise({ heat, mass: hardware.mass.value, specificHeat }));
    }
  });

  it("goes into metal more than into plastic, so the rope stays cooler on metal", () => {
    const plastic = { ...ring, hardware: rubbedHardware.plasticRing };
    expect(hardwareHeat(ring, 50).share.value).toBeGreaterThan(hardwareHeat(plastic, 50).share.value);
    expect(hardwareHeat(ring, 50).rope.value).toBeLessThan(hardwareHeat(plastic, 50).rope.value);
  });

  it("marks the rope just where the safe force says", () => {
    for (const fibre of ["hmpe", "polyester", "aramidBlend", "pbo"] as const) {
      const force = safeHardwareForce({ ...ring, fibre }).value;
      expect(hardwareHeat({ ...ring, fibre }, force).rope.value).toBeCloseTo(heatLimits[fibre].damage.value, 6);
    }
  });

  it("lets a fibre that stands more lose more", () => {
    const force = (fibre: HardwareEase["fibre"]) => safeHardwareForce({ ...ring, fibre }).value;
    expect(force("hmpe")).toBeLessThan(force("polyester"));
    expect(force("polyester")).toBeLessThan(force("aramidBlend"));
    expect(force("aramidBlend")).toBeLessThan(force("pbo"));
  });

  it("is solved back for the speed, at the middle and at both ends", () => {
    const force = safeHardwareForce(ring);
    for (const end of ["value", "low", "high"] as const)
      expect(safeHardwareSpeed(ring, force[end])[end] / ring.speed).toBeCloseTo(1, 3);
    expect(safeHardwareSpeed(ring, 0.01).low).toBe(20);
    expect(() => safeHardwareSpeed(ring, 0)).toThrow(ValueError);
  });

  it("refuses what cannot be", () => {
    expect(() => safeHardwareForce({ ...ring, speed: 0 })).toThrow(ValueError);
    expect(() => hardwareHeat({ ...ring, duration: -1 }, 5)).toThrow(ValueError);
    expect(() => hardwareHeat(ring, Number.NaN)).toThrow(/lost force/u);
    expect(() => hardwareHeat({ ...ring, airTemperature: -20 }, 5)).toThrow(ValueError);
  });
});

describe("what a cover stands on hardware, in one go", () => {
  const ease: HardwareEase = {
    fibre: "hmpe",
    ropeDiameter: 0.007,
    hardware: rubbedHardware.ratchet,
    speed: 2,
    duration: 3,
  };

  it("is what heat and safe force say one by one, with their ranges", () => {
    const { rope, marked } = hardwareStands(ease);
    for (const force of [0, 30, 120]) expect(rope(force)).toEqual(hardwareHeat(ease, force).rope);
    expect(marked).toEqual(safeHardwareForce(ease));
  });

  it("refuses a rope at rest, and a force below zero", () => {
    expect(() => hardwareStands({ ...ease, speed: 0 })).toThrow(ValueError);
    expect(() => hardwareStands(ease).rope(-1)).toThrow(ValueError);
  });
});
