import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { solids } from "../../src/materials/thermal.js";
import { ValueError } from "../../src/quantity/errors.js";
import { contactTemperature, diffusivity, effusivity } from "../../src/rope/effusivity.js";
import { fluxRise, heldSurfaceTemperature, streamTemperatureAt } from "../../src/rope/half-space.js";
import { evenly } from "../numerics/evenly.js";
import { seed, skin, wood } from "./solids.js";

describe("two thick bodies that touch", () => {
  it("meet between their temperatures, nearer to the one that takes up heat better", () => {
    fc.assert(
      fc.property(evenly(100, 30_000), evenly(100, 30_000), evenly(250, 500), evenly(250, 500), (e1, e2, t1, t2) => {
        const one = { effusivity: e1, temperature: t1 };
        const other = { effusivity: e2, temperature: t2 };
        const meeting = contactTemperature(one, other);
        expect(meeting).toBeGreaterThanOrEqual(Math.min(t1, t2) - 1e-9);
        expect(meeting).toBeLessThanOrEqual(Math.max(t1, t2) + 1e-9);
        expect(contactTemperature(other, one)).toBeCloseTo(meeting, 9);
        expect((meeting - t1) * e1).toBeCloseTo((t2 - meeting) * e2, 4);
      }),
      seed,
    );
  });

  it("have effusivity and diffusivity that give conductivity back", () => {
    expect(effusivity(wood) * Math.sqrt(diffusivity(wood))).toBeCloseTo(wood.conductivity, 12);
  });

  it("have effusivities near the printed ones: skin 1000 to 1300, steel 14 000 or less, aluminium 20 800", () => {
    const of = (name: keyof typeof solids) => {
      const { conductivity, density, specificHeat } = solids[name];
      return effusivity({
        conductivity: conductivity.value,
        density: density.value,
        specificHeat: specificHeat.value,
      });
    };
    expect(of("skin")).toBeGreaterThan(1000);
    expect(of("skin")).toBeLessThan(1300);
    expect(of("stainlessSteel")).toBeLessThan(14_000);
    expect(Math.abs(of("aluminium") / 20_800 - 1)).toBeLessThan(0.1);
  });
});

describe("a thick body", () => {
  it("under a steady flux stores exactly the heat that goes in", () => {
    const [flux, time, cells, deepest] = [2e4, 3, 4000, 0.02];
    const width = deepest / cells;
    let stored = 0;
    for (let cell = 0; cell < cells; cell += 1)
      stored += fluxRise({ flux, depth: (cell + 0.5) * width, time, solid: skin }) * width;
    expect((stored * skin.density * skin.specificHeat) / (flux * time)).toBeCloseTo(1, 5);
  });

  it("warms with the root of time at its surface, and in step with the flux", () => {
    const at = (flux: number, time: number) => fluxRise({ flux, depth: 0, time, solid: skin });
    expect(at(1e4, 4) / at(1e4, 1)).toBeCloseTo(2, 12);
    expect(at(3e4, 1) / at(1e4, 1)).toBeCloseTo(3, 12);
    expect(at(1e4, 0)).toBe(0);
  });

  it("has the surface temperature that a flux of 1/√t holds steady", () => {
    const alpha = diffusivity(wood);
    const held = (depth: number) =>
      heldSurfaceTemperature({
        initialTemperature: 300,
        surfaceTemperature: 350,
        depth,
        time: 2,
        thermalDiffusivity: alpha,
      });
    expect(held(0)).toBeCloseTo(350, 10);
    const gradient = (held(0) - held(1e-7)) / 1e-7;
    expect((gradient * wood.conductivity) / ((50 * effusivity(wood)) / Math.sqrt(2 * Math.PI))).toBeCloseTo(1, 3);
  });

  it("in a stream goes from a steady flux at first to a held surface at last", () => {
    const body = {
      initialTemperature: 300,
      streamTemperature: 400,
      conductivity: wood.conductivity,
      thermalDiffusivity: diffusivity(wood),
    };
    const early = streamTemperatureAt({ ...body, heatTransfer: 10, depth: 0, time: 1e-4 }) - 300;
    expect(early / fluxRise({ flux: 1000, depth: 0, time: 1e-4, solid: wood })).toBeCloseTo(1, 3);
    const late = streamTemperatureAt({ ...body, heatTransfer: 1e7, depth: 0.001, time: 5 });
    const held = heldSurfaceTemperature({
      initialTemperature: 300,
      surfaceTemperature: 400,
      depth: 0.001,
      time: 5,
      thermalDiffusivity: diffusivity(wood),
    });
    expect(late).toBeCloseTo(held, 2);
    expect(streamTemperatureAt({ ...body, heatTransfer: 0, depth: 0, time: 9 })).toBeCloseTo(300, 10);
    expect(streamTemperatureAt({ ...body, heatTransfer: 50, depth: 0, time: 0 })).toBe(300);
  });

  it("refuses what cannot be", () => {
    expect(() => fluxRise({ flux: -1, depth: 0, time: 1, solid: wood })).toThrow(ValueError);
    expect(() => fluxRise({ flux: 1, depth: -1, time: 1, solid: wood })).toThrow(/depth/u);
    expect(() => effusivity({ ...wood, density: 0 })).toThrow(ValueError);
    expect(() => contactTemperature({ effusivity: 1, temperature: -5 }, { effusivity: 1, temperature: 5 })).toThrow(
      ValueError,
    );
  });
});
