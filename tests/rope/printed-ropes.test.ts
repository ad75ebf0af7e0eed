import { describe, expect, it } from "vitest";
import { makeOf } from "../../src/boat/pieces.js";
import { stiffnessRatios } from "../../src/materials/elasticity.js";
import type { FibreName } from "../../src/materials/fibres.js";
import { breakLoad, ropeStiffness } from "../../src/rope/break-load.js";
import type { RopeMake } from "../../src/rope/make.js";
import { howThin, thinVerdict } from "../../src/rope/thinnest.js";
import type { Band } from "../../src/sources/band.js";
import { small } from "../boat/small-boat.js";

const covered = { fibre: "hmpe", construction: "coveredCore", coverFibre: "polyester" } as const;
const double = { fibre: "polyester", construction: "doubleBraid" } as const;
const laid = (fibre: FibreName) => ({ fibre, construction: "plaited" }) as const;

/** Printed break loads, in kgf by size in millimetres. */
const printed: readonly (readonly [string, Omit<RopeMake, "diameter">, Readonly<Record<number, number>>])[] = [
  ["HMPE braid", covered, { 6: 1800, 8: 3200, 12: 5700 }],
  ["covered HMPE", covered, { 10: 41_320 / 9.80665 }],
  ["high-grade HMPE of 12 strands", { fibre: "hmpeHighModulus", construction: "bareBraid" }, { 6: 5440 }],
  ["polyester double braid", double, { 6: 1230, 8: 2000, 10: 2550, 12: 4000, 14: 6000 }],
  ["matt 16-plait", double, { 6: 600, 8: 1460, 10: 1580, 12: 3400, 14: 4350 }],
  ["polyamide, three strands", laid("polyamide"), { 6: 780, 8: 1800, 10: 2800, 12: 3100, 14: 4900 }],
  ["polypropylene, three strands", laid("polypropylene"), { 6: 480, 8: 960, 10: 1430, 12: 2030, 14: 2790 }],
];
const rows = printed.flatMap(([name, make, sizes]) =>
  Object.entries(sizes).map(([size, load]) => [name, Number(size), load, make] as const),
);

const holds = ({ low, high }: Band, value: number) => {
  expect(low).toBeLessThanOrEqual(value);
  expect(high).toBeGreaterThanOrEqual(value);
};

describe("printed break loads", () => {
  it.each(rows)("%s of %f mm, %f kgf, lies in the band", (_name, size, load, make) => {
    holds(breakLoad({ ...make, diameter: size / 1000 }), 9.80665 * load);
  });
});

describe("strength that the maker states", () => {
  const make = { ...double, diameter: 0.006 };

  it("takes the place of the estimate, with a small spread", () => {
    expect(breakLoad({ ...make, ratedStrength: 12_000 })).toEqual({
      value: 12_000,
      low: expect.closeTo(10_800, 6),
      high: expect.closeTo(13_800, 6),
    });
    expect(ropeStiffness({ ...make, ratedStrength: 12_000 })).toEqual(ropeStiffness(make));
    expect(() => breakLoad({ ...make, ratedStrength: 0 })).toThrow(/break load/iu);
    expect(() => breakLoad({ ...make, coverFibre: "polyester", ratedStrength: 1000 })).toThrow(/cover of a rope/u);
  });

  it("comes from the catalogue of a boat", () => {
    const boat = small(["diameter: 4 mm, price", "diameter: 4 mm, ratedStrength: 11 kN, price"]);
    expect(makeOf(boat.catalogue.ropes, "braid 4").ratedStrength).toBe(11_000);
    expect(makeOf(small().catalogue.ropes, "braid 4")).not.toHaveProperty("ratedStrength");
  });

  it("grows with the square of the size where another size is sought", () => {
    const job = { workingLoad: 3000, safetyFactor: 5, ends: [], use: "new", wet: false } as const;
    const verdict = thinVerdict({ ...make, ratedStrength: 5000 }, job, { sizes: [0.006, 0.008, 0.012] });
    expect(verdict.change).toBe("take 12 mm");
    expect(howThin({ ...double }, job, [0.006, 0.008, 0.012]).thinnest?.diameter).toBe(0.008);
  });
});

describe("printed stretch at a fifth of the break load", () => {
  const stretch = (make: Omit<RopeMake, "diameter">): Band => {
    const rope = { ...make, diameter: 0.008 };
    const pull = 20 * breakLoad(rope).value;
    const { value, low, high } = ropeStiffness(rope);
    return { value: pull / value, low: pull / high, high: pull / low };
  };

  it.each([
    ["polyamide", 8.5, "polyamide"],
    ["polyester", 2.5, "polyester"],
  ] as const)("of a small double braid of %s is %f %, and a big rope's lies in the band", (fibre, small, big) => {
    const band = stretch({ fibre, construction: "doubleBraid" });
    holds(band, small);
    holds(band, 20 / stiffnessRatios[big].slow.value);
    expect(band.value / small).toBeGreaterThan(0.75);
    expect(band.value / small).toBeLessThan(1.25);
  });

  it.each(["hmpe", "hmpeHighModulus", "pbo"] as const)("of %s stays below 0.6 % at the middle", (fibre) => {
    for (const make of [
      { fibre, construction: "bareBraid" },
      { fibre, construction: "coveredCore", coverFibre: "polyester" },
    ] as const)
      expect(stretch(make).value).toBeLessThan(0.6);
  });

  it.each(["hmpe", "hmpeHighModulus"] as const)("of %s holds what big ropes have, and 0.6 %", (fibre) => {
    const band = stretch({ fibre, construction: "bareBraid" });
    holds(band, 20 / stiffnessRatios.hmpe.slow.value);
    holds(band, 0.6);
  });

  it.each(["aramid", "aramidHighModulus", "lcp"] as const)("of %s reaches below 0.6 % at the stiff end", (fibre) => {
    expect(stretch({ fibre, construction: "bareBraid" }).low).toBeLessThan(0.6);
  });
});
