import { describe, expect, it } from "vitest";
import { rubbedHardware } from "../../src/materials/rubbed-hardware.js";
import type { HeatFibre } from "../../src/materials/thermal.js";
import { ValueError } from "../../src/quantity/errors.js";
import type { HandEase } from "../../src/rope/hand-burn.js";
import { safeLostForce } from "../../src/rope/hand-burn.js";
import { type HardwareEase, safeHardwareForce } from "../../src/rope/hardware-heat.js";
import { easeVerdict, handVerdict, touchVerdict } from "../../src/rope/heat-verdict.js";

const at = (celsius: number) => ({ value: celsius + 273.15, low: celsius + 273.15, high: celsius + 273.15 });
const jammer: HardwareEase = {
  fibre: "polyester",
  ropeDiameter: 0.008,
  hardware: rubbedHardware.jammer,
  speed: 4,
  duration: 2,
};
const hand: HandEase = { fibre: "polyester", ropeDiameter: 0.008, gloved: false, speed: 4, duration: 2 };

describe("a touch", () => {
  it("of 200 °C spoils polyester and HMPE, and neither the blend nor PBO", () => {
    const outcome = (fibre: HeatFibre) => touchVerdict({ fibre, temperature: at(200) }).outcome;
    expect(outcome("hmpe")).toBe("not enough");
    expect(outcome("polyester")).toBe("not enough");
    expect(outcome("aramidBlend")).toBe("enough");
    expect(outcome("pbo")).toBe("enough");
  });

  it("names the next fibre that holds, and warns of one that the sun spoils", () => {
    const warm = touchVerdict({ fibre: "polyester", temperature: at(200) });
    expect(warm.change).toContain("aramid and polyester blend");
    expect(warm.reason).toContain("melts at 260 °C");
    const hot = touchVerdict({ fibre: "polyester", temperature: at(320) });
    expect(hot.change).toBe("a cover of PBO, kept out of the sun");
    expect(touchVerdict({ fibre: "pbo", temperature: at(800) }).change).toBeUndefined();
    expect(touchVerdict({ fibre: "polyester", temperature: at(60) })).not.toHaveProperty("change");
  });

  it("is doubtful where only the middle holds", () => {
    expect(touchVerdict({ fibre: "polyester", temperature: at(185) }).outcome).toBe("can't tell");
    expect(touchVerdict({ fibre: "hmpe", temperature: { ...at(100), high: 473.15 } }).outcome).toBe("can't tell");
    expect(() => touchVerdict({ fibre: "hmpe", temperature: at(5) })).toThrow(ValueError);
  });
});

describe("an ease over hardware", () => {
  it("fails at a jammer, and the slower speed that it names passes while the next faster one does not", () => {
    const verdict = easeVerdict(jammer, 60);
    expect(verdict.outcome).toBe("not enough");
    const speed = Number(/at most ([\d.]+) m\/s/u.exec(verdict.change!)![1]);
    expect(safeHardwareForce({ ...jammer, speed }).low).toBeGreaterThanOrEqual(60);
    expect(safeHardwareForce({ ...jammer, speed: speed + 0.11 }).low).toBeLessThan(60);
    expect(easeVerdict({ ...jammer, speed }, 60).outcome).toBe("enough");
  });

  it("names a fibre only when that fibre holds", () => {
    const { change } = easeVerdict({ ...jammer, hardware: rubbedHardware.ring, fibre: "hmpe" }, 60);
    expect(change).toContain("aramid and polyester blend");
    const held = { ...jammer, hardware: rubbedHardware.ring, fibre: "aramidBlend" } as const;
    expect(easeVerdict(held, 60).outcome).toBe("enough");
  });

  it("holds with little to lose, and says nothing of changes", () => {
    expect(easeVerdict(jammer, 1)).not.toHaveProperty("change");
    expect(() => easeVerdict(jammer, 0)).toThrow(ValueError);
  });
});

describe("a hand on a running rope", () => {
  it("fails with a reason, and each change that it names passes", () => {
    const verdict = handVerdict(hand, 90);
    expect(verdict.outcome).toBe("not enough");
    expect(verdict.subject).toContain("90 N");
    expect(verdict.reason).toContain("hurts");
    const speed = Number(/at most ([\d.]+) m\/s/u.exec(verdict.change!)![1]);
    expect(safeLostForce({ ...hand, speed }, "burn").low).toBeGreaterThanOrEqual(90);
    if (verdict.change!.includes("gloves")) expect(handVerdict({ ...hand, gloved: true }, 90).outcome).toBe("enough");
    expect(verdict.change).toContain("let it go");
  });

  it("under far too much says only to let go", () => {
    expect(handVerdict({ ...hand, gloved: true }, 5000).change).toMatch(/^let it go/u);
  });

  it("holds a light line", () => {
    expect(handVerdict({ ...hand, speed: 1, duration: 1 }, 10)).toMatchObject({ outcome: "enough" });
  });
});
