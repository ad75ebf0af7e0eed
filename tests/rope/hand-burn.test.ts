import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { hand, skinLimits } from "../../src/materials/skin.js";
import { ValueError } from "../../src/quantity/errors.js";
import { diffusivity, effusivity } from "../../src/rope/effusivity.js";
import { gripLoss } from "../../src/rope/grip-loss.js";
import { streamTemperatureAt } from "../../src/rope/half-space.js";
import {
  type HandEase,
  handContact,
  handHeat,
  handRecords,
  handStands,
  safeForceByRecord,
  safeHandSpeed,
  safeLostForce,
} from "../../src/rope/hand-burn.js";
import { type HandContact, handArea, handCourse } from "../../src/rope/hand-course.js";
import { ropeHeatTransfer } from "../../src/rope/rope-stream.js";
import { evenly } from "../numerics/evenly.js";
import { leather, skin, wood } from "./solids.js";

const few = { seed: 7, numRuns: 8 } as const;
const bare: HandEase = { fibre: "polyester", ropeDiameter: 0.008, gloved: false, speed: 2, duration: 2 };
const contact: HandContact = {
  ropeDiameter: 0.008,
  yarn: wood,
  ropeTemperature: 293.15,
  touchingShare: 0.6,
  contactLength: 0.085,
  girthShare: 0.6,
  skin,
  handTemperature: 305.15,
  livingDepth: 0.0003,
};

describe("course of a hand", () => {
  it("is the closed solution of skin in a stream while the rope runs", () => {
    const course = handCourse(contact, 2, 3);
    const [outside, living] = [course.outside(60), course.living(60)];
    const h = ropeHeatTransfer({ effusivity: effusivity(wood), contactLength: 0.085, speed: 2, touchingShare: 0.6 });
    const flux = (60 * 2) / handArea(contact);
    const exact = (depth: number) =>
      streamTemperatureAt({
        initialTemperature: 305.15,
        streamTemperature: 293.15 + flux / h,
        heatTransfer: h,
        conductivity: skin.conductivity,
        thermalDiffusivity: diffusivity(skin),
        depth,
        time: 3,
      });
    expect(course.times[36]).toBeCloseTo(3, 12);
    expect(course.times.at(-1)).toBeGreaterThanOrEqual(13);
    expect(Math.abs(outside[36]! - exact(0))).toBeLessThan(0.5);
    expect(Math.abs(living[36]! - exact(0.0003))).toBeLessThan(0.5);
  });

  it("only cools towards the rope when nothing is lost, and stays when rope and hand are alike", () => {
    const cold = handCourse(contact, 2, 3);
    expect(Math.max(...cold.living(0))).toBe(305.15);
    const alike = handCourse({ ...contact, ropeTemperature: 305.15 }, 2, 3);
    expect(alike.outside(0).every((one) => one === 305.15)).toBe(true);
  });

  it("with a glove of skin is the bare hand, that much deeper", () => {
    const deeper = handCourse({ ...contact, livingDepth: 0.0008 }, 1, 2).living(50);
    const glove = { leather: skin, thickness: 0.0005 };
    const gloved = handCourse({ ...contact, glove }, 1, 2).living(50);
    gloved.forEach((one, index) => {
      expect(one).toBeCloseTo(deeper[index]!, 8);
    });
  });

  it("goes on warming the living skin after the rope has stopped, under a glove above all", () => {
    const living = handCourse({ ...contact, glove: { leather, thickness: 0.001 } }, 2, 1).living(200);
    expect(living.indexOf(Math.max(...living))).toBeGreaterThan(36);
  });

  it("refuses a rope, a speed or a duration that cannot be", () => {
    expect(() => handCourse({ ...contact, ropeDiameter: 0 }, 1, 1)).toThrow(ValueError);
    expect(() => handCourse(contact, -1, 1)).toThrow(ValueError);
    expect(() => handCourse(contact, 1, 0)).toThrow(ValueError);
    expect(() => handCourse(contact, 1, 1).living(-1)).toThrow(ValueError);
  });
});

describe("what a hand stands", () => {
  it("is all the less the faster and the longer the rope runs", () => {
    fc.assert(
      fc.property(evenly(0.2, 4), evenly(0.5, 4), (speed, duration) => {
        for (const limit of ["pain", "burn"] as const) {
          const now = safeLostForce({ ...bare, speed, duration }, limit);
          expect(safeLostForce({ ...bare, speed: 1.3 * speed, duration }, limit).value).toBeLessThan(now.value);
          expect(safeLostForce({ ...bare, speed, duration: 1.5 * duration }, limit).value).toBeLessThan(now.value);
          expect(now.low).toBeLessThan(now.value);
          expect(now.high).toBeGreaterThan(now.value);
        }
      }),
      few,
    );
  });

  it("hurts before it burns, and a glove helps against both", () => {
    const [pain, burn] = [safeLostForce(bare, "pain"), safeLostForce(bare, "burn")];
    expect(pain.value).toBeLessThan(burn.value);
    expect(safeLostForce({ ...bare, gloved: true }, "pain").value).toBeGreaterThan(pain.value);
    expect(safeLostForce({ ...bare, gloved: true }, "burn").value).toBeGreaterThan(burn.value);
  });

  it("is where the living skin reaches the threshold, and where the dose is one", () => {
    const pain = safeLostForce(bare, "pain").value;
    expect(handHeat(bare, pain).living.value).toBeCloseTo(skinLimits.pain.value, 3);
    const burn = safeLostForce(bare, "burn").value;
    expect(handHeat(bare, burn).dose.value).toBeCloseTo(1, 3);
  });

  it("is solved back for the speed", () => {
    for (const limit of ["pain", "burn"] as const) {
      const force = safeLostForce(bare, limit).value;
      expect(safeHandSpeed(bare, force, limit).value / bare.speed).toBeCloseTo(1, 3);
    }
    expect(safeHandSpeed(bare, 0.01, "burn").value).toBe(20);
    expect(safeHandSpeed(bare, 9e5, "burn").low).toBe(1e-3);
  });

  it("lets no dose build up at rest", () => {
    expect(handHeat({ ...bare, speed: 0 }, 500).dose.value).toBeLessThan(1e-6);
    expect(() => safeLostForce({ ...bare, speed: 0 }, "burn")).toThrow(ValueError);
    expect(() => safeHandSpeed(bare, 0, "burn")).toThrow(ValueError);
  });

  it("rests on records, the glove's only with a glove", () => {
    const records = handRecords("polyester", true);
    expect(records.livingDepth).toBe(hand.livingDepth);
    expect(Object.keys(records).filter((name) => name.startsWith("glove")).length).toBe(4);
    expect(Object.keys(handRecords("polyester", false)).filter((name) => name.startsWith("glove"))).toEqual([]);
  });

  it("has a range that the single records make up, in squares of logarithms", () => {
    const whole = safeLostForce(bare, "burn");
    const parts = Object.values(safeForceByRecord(bare, "burn"));
    for (const { value } of parts) expect(value).toBeCloseTo(whole.value, 6);
    const low = Math.hypot(...parts.map(({ low: end }) => Math.log(end / whole.value)));
    expect(low / Math.log(whole.value / whole.low)).toBeCloseTo(1, 6);
    expect(safeForceByRecord(bare, "burn").pain).toMatchObject({ low: whole.value, high: whole.value });
  });

  it("at the middle of its records is the course of that contact", () => {
    const { living } = handCourse(handContact(bare), bare.speed, bare.duration);
    expect(Math.max(...living(40))).toBeCloseTo(handHeat(bare, 40).living.value, 9);
  });
});

describe("a squeezing hand", () => {
  it("takes twice the friction of one face, nothing without a grip", () => {
    expect(gripLoss(100).value).toBeCloseTo(200 * hand.friction.value, 12);
    expect(gripLoss(0).value).toBe(0);
    expect(gripLoss(50).high / gripLoss(50).low).toBeCloseTo(hand.friction.high / hand.friction.low, 12);
    expect(() => gripLoss(-1)).toThrow(ValueError);
  });
});

describe.each([false, true])("what a hand stands, in one go, gloved %s", (gloved) => {
  const ease: HandEase = { fibre: "aramid", ropeDiameter: 0.009, gloved, speed: 2.5, duration: 1.5 };

  it("is what heat and safe forces say one by one, with their ranges", () => {
    const { living, pain, burn } = handStands(ease);
    for (const force of [0, 40, 90]) expect(living(force)).toEqual(handHeat(ease, force).living);
    expect(pain).toEqual(safeLostForce(ease, "pain"));
    expect(burn).toEqual(safeLostForce(ease, "burn"));
  });

  it("refuses a rope at rest, and a force below zero", () => {
    expect(() => handStands({ ...ease, speed: 0 })).toThrow(ValueError);
    expect(() => handStands(ease).living(-1)).toThrow(ValueError);
  });

  it("has the same course where the skin's answer was known", () => {
    const known = new Map<string, Map<number, number>>();
    const contact = handContact(ease);
    const other = { ...contact, touchingShare: 0.5 * contact.touchingShare };
    handCourse(other, 2.5, 1.5, known);
    const count = known.size;
    expect(handCourse(contact, 2.5, 1.5, known).living(50)).toEqual(handCourse(contact, 2.5, 1.5).living(50));
    expect(known.size).toBe(count);
    handCourse({ ...contact, livingDepth: 2 * contact.livingDepth }, 2.5, 1.5, known);
    expect(known.size).toBeGreaterThan(count);
  });
});
