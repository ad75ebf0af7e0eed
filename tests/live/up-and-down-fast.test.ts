import { describe, expect, it } from "vitest";
import { long } from "../long.js";
import { along, falls, named, rises, value } from "./asked.js";

const model = "up-and-down-fast";
const sail = named(model);

describe("a sail that goes up and down", () => {
  it("goes up slower the heavier it is and the more wind presses it", () => {
    expect(rises([500, 1500, 4000, 8000].map((mass) => value(sail, "Up in", { mass })))).toBe(true);
    expect(rises(along(model, "Up in", "wind"))).toBe(true);
  });

  it("goes up sooner with two, and over bigger sheaves", () => {
    expect(falls(along(model, "Up in", "people"))).toBe(true);
    expect(falls([15, 30, 80].map((sheave) => value(sail, "Up in", { sheave })))).toBe(true);
  });

  it("comes down sooner the heavier it is", () => {
    expect(falls([1500, 3000, 6000].map((mass) => value(sail, "Down in", { mass })))).toBe(true);
  });

  it("never falls faster than free", () => {
    const lift = 6.5;
    const free = Math.sqrt((2 * lift) / 9.80665);
    expect(value(sail, "Down in", { mass: 20000, wind: 0, lift })).toBeGreaterThan(free);
  });

  it("covers its way at its mean speed", () => {
    const [time, speed] = [value(sail, "Down in", { wind: 4 }), value(sail, "Mean speed, going down", { wind: 4 })];
    expect(time * speed).toBeCloseTo(6.5, 3);
  });

  it("stays up out of the lee, until it is drawn", () => {
    const open = sail.compute({ lee: false });
    expect(open.sentence).toContain("does not come down by itself");
    expect(open.results.some(({ label }) => label === "Down in")).toBe(false);
    expect(value(sail, "Down in", { lee: false, down: "drawn" })).toBeGreaterThan(0);
  });

  it("answers at the steps of its sliders, and never goes higher than its way", () => {
    for (const control of ["mass", "area", "lift"]) {
      const known = sail.controls[control]!;
      if (known.kind !== "range") throw new Error(`${control} is no slider.`);
      const steps = Math.round((known.maximum - known.minimum) / known.step);
      for (let step = 0; step <= steps; step += long(5, 1)) {
        const at = Number((known.minimum + step * known.step).toPrecision(12));
        const { results } = sail.compute({ [control]: at });
        const stopped = results.find(({ label }) => label === "Up as far as")?.value ?? 0;
        expect(stopped, `${control} ${at}`).toBeLessThan(control === "lift" ? at : 6.5);
      }
    }
  });

  it("says how far a hoist gets that stalls", () => {
    const stalled = sail.compute({ mass: 20000 });
    expect(stalled.sentence).toContain("The hoist stops after");
    expect(value(sail, "Up as far as", { mass: 20000 })).toBeLessThan(6.5);
  });
});
