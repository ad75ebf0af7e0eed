import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { ValueError } from "../../src/quantity/errors.js";
import { diffusivity } from "../../src/rope/effusivity.js";
import { fluxRise, streamTemperatureAt } from "../../src/rope/half-space.js";
import { heatHistory, warmingElsewhere } from "../../src/rope/heat-history.js";
import { evenly } from "../numerics/evenly.js";
import { seed, skin } from "./solids.js";

const steps = 100;
const all = (value: number) => Array.from({ length: steps }, () => value);
const response = (duration: number, depth = 0) =>
  Array.from({ length: steps }, (_, index) =>
    fluxRise({ flux: 1, depth, time: ((index + 1) * duration) / steps, solid: skin }),
  );

const responseAfter = (duration: number, depth: number) => {
  const all = response(duration, depth);
  return (count: number) => all[count - 1]!;
};

describe("heat shared out between a body and the rope that runs past", () => {
  it("without a rope that carries heat away is the steady flux, at any depth", () => {
    const made = { response: response(2), flux: all(1e4), heatTransfer: all(0), ropeExcess: 0 };
    const { surface, intoBody } = heatHistory(made);
    expect(surface.at(-1)).toBeCloseTo(fluxRise({ flux: 1e4, depth: 0, time: 2, solid: skin }), 8);
    expect(warmingElsewhere(intoBody, responseAfter(2, 0.0005)).at(-1)).toBeCloseTo(
      fluxRise({ flux: 1e4, depth: 0.0005, time: 2, solid: skin }),
      8,
    );
  });

  it("with one is the closed solution of a body in a stream, within half a per cent", () => {
    fc.assert(
      fc.property(evenly(200, 5000), evenly(0.2, 5), (h, duration) => {
        const flux = 5e4;
        const { surface } = heatHistory({
          response: response(duration),
          flux: all(flux),
          heatTransfer: all(h),
          ropeExcess: -10,
        });
        const exact = streamTemperatureAt({
          initialTemperature: 305,
          streamTemperature: 295 + flux / h,
          heatTransfer: h,
          conductivity: skin.conductivity,
          thermalDiffusivity: diffusivity(skin),
          depth: 0,
          time: duration,
        });
        expect(Math.abs((surface.at(-1)! - (exact - 305)) / (flux / h))).toBeLessThan(0.005);
      }),
      seed,
    );
  });

  it("balances in every step: what is made goes into the body or with the rope", () => {
    const h = 1500;
    const { intoBody, surface } = heatHistory({
      response: response(1),
      flux: all(8e4),
      heatTransfer: all(h),
      ropeExcess: -5,
    });
    for (const [index, into] of intoBody.entries()) expect(into + h * (surface[index]! + 5)).toBeCloseTo(8e4, 6);
    expect(intoBody[0]!).toBeGreaterThan(intoBody.at(-1)!);
  });

  it("adds up: two heatings together warm as much as the sum of each alone", () => {
    const common = { response: response(1), heatTransfer: all(900) };
    const of = (flux: number[], ropeExcess: number) => heatHistory({ ...common, flux, ropeExcess }).surface;
    const early = all(0).map((_, index) => (index < 30 ? 4e4 : 0));
    const late = all(0).map((_, index) => (index < 30 ? 0 : 9e4));
    const both = of(
      early.map((one, index) => one + late[index]!),
      -8,
    );
    const [first, second] = [of(early, 0), of(late, -8)];
    both.forEach((one, index) => {
      expect(one).toBeCloseTo(first[index]! + second[index]!, 7);
    });
  });

  it("cools after the heating has stopped, and the depth later than the surface", () => {
    const flux = all(0).map((_, index) => (index < 40 ? 6e4 : 0));
    const { surface, intoBody } = heatHistory({ response: response(2), flux, heatTransfer: all(0), ropeExcess: 0 });
    const deep = warmingElsewhere(intoBody, responseAfter(2, 0.0004));
    expect(surface.indexOf(Math.max(...surface))).toBe(39);
    expect(deep.indexOf(Math.max(...deep))).toBeGreaterThan(39);
    expect(surface.at(-1)!).toBeLessThan(0.5 * Math.max(...surface));
  });

  it("goes on after the last step as if nothing more were made", () => {
    const short = heatHistory({
      response: response(2).slice(0, 40),
      flux: all(6e4).slice(0, 40),
      heatTransfer: all(0).slice(0, 40),
      ropeExcess: 0,
    });
    const long = all(0).map((_, index) => (index < 40 ? 6e4 : 0));
    const full = warmingElsewhere(long, responseAfter(2, 0.0004));
    const later = warmingElsewhere(short.intoBody, responseAfter(2, 0.0004), [40, 70, 100]);
    expect(later[0]).toBeCloseTo(full[39]!, 9);
    expect(later[1]).toBeCloseTo(full[69]!, 9);
    expect(later[2]).toBeCloseTo(full[99]!, 9);
    for (const instant of [0, 1.5, Number.NaN])
      expect(() => warmingElsewhere([1], () => 1, [instant])).toThrow(ValueError);
  });

  it("refuses lists that do not fit", () => {
    expect(() => heatHistory({ response: [1], flux: [1, 2], heatTransfer: [0], ropeExcess: 0 })).toThrow(ValueError);
    expect(() => heatHistory({ response: [], flux: [], heatTransfer: [], ropeExcess: 0 })).toThrow(/at least one/u);
    expect(() => heatHistory({ response: [1], flux: [-1], heatTransfer: [0], ropeExcess: 0 })).toThrow(ValueError);
  });
});
