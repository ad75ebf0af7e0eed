import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { FibreName } from "../../src/materials/fibres.js";
import { exposures, lampToSun } from "../../src/materials/sunlight.js";
import { ValueError } from "../../src/quantity/errors.js";
import { sunlightRetained } from "../../src/rope/sunlight.js";
import { evenly } from "../numerics/evenly.js";
import { seed } from "./solids.js";

const names = Object.keys(exposures) as FibreName[];

describe("strength left in the sun", () => {
  it.each(names)("of %s begins whole and only falls, inside its range", (fibre) => {
    expect(sunlightRetained({ fibre, days: 0 })).toMatchObject({ value: 1, low: 1, high: 1 });
    fc.assert(
      fc.property(evenly(1, 400), evenly(1, 200), (days, more) => {
        const now = sunlightRetained({ fibre, days });
        const later = sunlightRetained({ fibre, days: days + more });
        expect(later.value).toBeLessThan(now.value);
        expect(now.low).toBeLessThanOrEqual(now.value);
        expect(now.high).toBeGreaterThanOrEqual(now.value);
        expect(now.high).toBeLessThanOrEqual(1);
        expect(now.low).toBeGreaterThan(0);
      }),
      seed,
    );
  });

  it("falls at one rate: twice the days square it", () => {
    const once = sunlightRetained({ fibre: "polyester", days: 100 }).value;
    expect(sunlightRetained({ fibre: "polyester", days: 200 }).value).toBeCloseTo(once ** 2, 12);
  });

  it("after the lamp's days turned into sun is what was tested", () => {
    const days = exposures.pbo.days * lampToSun.value;
    expect(sunlightRetained({ fibre: "pbo", days }).value).toBeCloseTo(exposures.pbo.retained.value, 12);
  });

  it("orders the fibres: PBO and LCP lose most, aramid less, polyester least", () => {
    const left = (fibre: FibreName) => sunlightRetained({ fibre, days: 60 }).value;
    expect(left("pbo")).toBeLessThan(left("aramid"));
    expect(left("lcp")).toBeLessThan(left("aramid"));
    expect(left("aramid")).toBeLessThan(left("polyester"));
    expect(left("polypropylene")).toBeLessThan(left("polyamide"));
  });

  it("refuses days that cannot be", () => {
    expect(() => sunlightRetained({ fibre: "pbo", days: -1 })).toThrow(ValueError);
  });
});
