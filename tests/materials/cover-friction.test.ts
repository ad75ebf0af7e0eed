import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type CoverFibre, coverFriction, type StrandCount } from "../../src/materials/covers.js";
import { type Surface, surfaces, treads } from "../../src/materials/surfaces.js";

const places: Surface[] = [...Object.values(surfaces), ...Object.values(treads)];
const named = places.map((surface) => [surface.name, surface] as const);
const counts: readonly StrandCount[] = [8, 16, 24];
const kinds: readonly CoverFibre[] = ["polyester", "aramidBlend", "bareCore"];

const covers = fc.record({
  strands: fc.constantFrom(...counts),
  fibre: fc.constantFrom(...kinds),
  wet: fc.boolean(),
});
const anywhere = fc.constantFrom(...places);
const seed = { seed: 7 };

describe("friction of a cover", () => {
  it.each(named)("on %s: fewer strands grip more, whatever the fibre, wet or dry", (_name, surface) => {
    for (const fibre of kinds) {
      for (const wet of [false, true]) {
        const [eight, sixteen, twentyFour] = counts.map((strands) => coverFriction({ strands, fibre, wet }, surface));
        expect(eight!.value).toBeGreaterThan(sixteen!.value);
        expect(sixteen!.value).toBeGreaterThan(twentyFour!.value);
      }
    }
  });

  it.each(named)("on %s: a wet aramid blend grips more than a dry one, a bare core least of all", (_name, surface) => {
    for (const strands of counts) {
      const of = (fibre: CoverFibre, wet: boolean) => coverFriction({ strands, fibre, wet }, surface).value;
      expect(of("aramidBlend", true)).toBeGreaterThan(of("aramidBlend", false));
      for (const wet of [false, true]) {
        expect(of("bareCore", wet)).toBeLessThan(of("polyester", wet));
        expect(of("polyester", wet)).toBeLessThan(of("aramidBlend", wet));
      }
    }
  });

  it("has a spread around its value that is at least as wide as that of each part", () => {
    fc.assert(
      fc.property(covers, anywhere, (cover, surface) => {
        const { low, value, high, parts } = coverFriction(cover, surface);
        expect(low).toBeLessThanOrEqual(value);
        expect(high).toBeGreaterThanOrEqual(value);
        expect(low).toBeGreaterThan(0);
        for (const part of parts) {
          expect(low / value).toBeLessThanOrEqual((part.low / part.value) * (1 + 1e-12));
          expect(high / value).toBeGreaterThanOrEqual((part.high / part.value) * (1 - 1e-12));
        }
      }),
      seed,
    );
  });

  it("is the product of the records that it names, and never wider than all spreads at once", () => {
    fc.assert(
      fc.property(covers, anywhere, (cover, surface) => {
        const { low, value, high, parts } = coverFriction(cover, surface);
        const product = (side: "low" | "value" | "high") => parts.reduce((all, part) => all * part[side], 1);
        expect(value).toBeCloseTo(product("value"), 12);
        expect(low).toBeGreaterThanOrEqual(product("low") * (1 - 1e-12));
        expect(high).toBeLessThanOrEqual(product("high") * (1 + 1e-12));
        expect(parts).toContain(surface.friction);
      }),
      seed,
    );
  });

  it("of a dry 24-strand polyester cover is that of the surface itself", () => {
    for (const surface of places) {
      const { low, value, high } = coverFriction({ strands: 24, fibre: "polyester", wet: false }, surface);
      expect(value).toBe(surface.friction.value);
      expect(low).toBeCloseTo(surface.friction.low, 12);
      expect(high).toBeCloseTo(surface.friction.high, 12);
    }
  });

  it("rises from smooth to ribbed to faceted to toothed treads", () => {
    fc.assert(
      fc.property(covers, (cover) => {
        const order = [treads.smooth, treads.ribbed, treads.faceted, treads.toothed];
        const values = order.map((tread) => coverFriction(cover, tread).value);
        expect(values).toEqual([...values].sort((a, b) => a - b));
      }),
      seed,
    );
  });
});
