import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { ValueError } from "../../src/quantity/errors.js";
import { breakLoad } from "../../src/rope/break-load.js";
import type { LineJob } from "../../src/rope/thin-limits.js";
import { lineLimits } from "../../src/rope/thin-limits.js";
import { howThin, stockDiameters, thinVerdict } from "../../src/rope/thinnest.js";
import { evenly } from "../numerics/evenly.js";

const kind = { fibre: "hmpeHighModulus", construction: "bareBraid" } as const;
const job: LineJob = { workingLoad: 400, safetyFactor: 5, ends: ["splice"], use: "season", wet: false };
const whole: LineJob = {
  ...job,
  handTension: 80,
  cleat: { thinnest: 0.003, thickest: 0.006 },
  sheave: { diameter: 0.02, grooveWidth: 0.006 },
  stretch: { length: 4, tensionChange: 200, allowed: 0.02 },
};

describe("how thin a line may get", () => {
  it("asks exactly for the break load of the safety factor where nothing else limits", () => {
    const plain: LineJob = { workingLoad: 400, safetyFactor: 5, ends: [], use: "new", wet: false };
    const found = howThin(kind, plain);
    const needed = 2000;
    expect(breakLoad({ ...kind, diameter: found.thinnest!.diameter }).value).toBeGreaterThanOrEqual(needed);
    const next = stockDiameters[stockDiameters.indexOf(found.thinnest!.diameter) - 1]!;
    expect(breakLoad({ ...kind, diameter: next }).value).toBeLessThan(needed);
    expect(found.firstLimit).toMatchObject({ name: "strength", outcome: "not enough" });
  });

  it("says that a knot may slip before it breaks, where it may", () => {
    const reason = (end: "bowline" | "splice", fibre: "hmpe" | "polyester" = "hmpe") =>
      lineLimits({ fibre, construction: "bareBraid", diameter: 0.004 }, { ...job, ends: [end] })[0]!.reason;
    expect(reason("bowline")).toContain("(weakest: bowline, which may slip before it breaks)");
    expect(reason("splice")).toContain("(weakest: eye splice)");
    expect(reason("bowline", "polyester")).toContain("(weakest: bowline)");
  });

  it("names every limit of the job with its margin, and only those", () => {
    expect(lineLimits({ ...kind, diameter: 0.004 }, job).map(({ name }) => name)).toEqual(["strength"]);
    expect(lineLimits({ ...kind, diameter: 0.004 }, whole).map(({ name }) => name)).toEqual([
      "strength",
      "hand comfort",
      "stretch",
      "cleat",
      "groove",
    ]);
  });

  it.each([
    ["hand comfort", { handTension: 200 }],
    ["cleat", { cleat: { thinnest: 0.005, thickest: 0.01 } }],
    ["stretch", { stretch: { length: 10, tensionChange: 300, allowed: 0.005 } }],
    ["groove", { sheave: { diameter: 0.06, grooveWidth: 0.012 } }],
  ] as const)("finds that %s stops it first", (name, extra) => {
    expect(howThin(kind, { ...job, ...extra }).firstLimit?.name).toBe(name);
  });

  it("never gets thinner for more load, a larger factor or a worse end", () => {
    fc.assert(
      fc.property(evenly(20, 2000), evenly(1, 2), (load, factor) => {
        const size = (more: Partial<LineJob>) =>
          howThin(kind, { ...job, workingLoad: load, ...more }).thinnest?.diameter ?? Number.POSITIVE_INFINITY;
        expect(size({ workingLoad: factor * load })).toBeGreaterThanOrEqual(size({}));
        expect(size({ safetyFactor: 5 * factor })).toBeGreaterThanOrEqual(size({}));
        expect(size({ ends: ["anyKnot"] })).toBeGreaterThanOrEqual(size({}));
        expect(size({ use: "worn" })).toBeGreaterThanOrEqual(size({}));
      }),
      { seed: 7 },
    );
  });

  it("says that no size passes when limits contradict each other", () => {
    const found = howThin(kind, { ...job, workingLoad: 20_000, cleat: { thinnest: 0.003, thickest: 0.006 } });
    expect(found.thinnest).toBeUndefined();
    expect(found.firstLimit?.name).toBe("cleat");
  });

  it("refuses no sizes, and sizes that do not rise", () => {
    for (const sizes of [[], [0.003, 0.002], [0.002, 0.002]])
      expect(() => howThin(kind, job, sizes)).toThrow(ValueError);
    expect(() => howThin(kind, { ...job, workingLoad: Number.NaN })).toThrow(/working load/u);
    expect(() => howThin(kind, { ...job, safetyFactor: 0.5 })).toThrow(/safety factor/u);
  });
});

describe("a line that would fail", () => {
  it("says why and names the nearest size that passes, which does", () => {
    const verdict = thinVerdict({ ...kind, diameter: 0.0012 }, job);
    expect(verdict.outcome).toBe("not enough");
    expect(verdict.reason).toMatch(/breaks at .* ask for 2000 N/u);
    const size = Number(/take ([\d.]+) mm/u.exec(verdict.change!)![1]) / 1000;
    expect(thinVerdict({ ...kind, diameter: size }, job).outcome).not.toBe("not enough");
    const below = stockDiameters[stockDiameters.indexOf(size) - 1]!;
    expect(thinVerdict({ ...kind, diameter: below }, job).outcome).toBe("not enough");
  });

  it("too thick for its cleat is told to go down", () => {
    const verdict = thinVerdict({ ...kind, diameter: 0.01 }, whole);
    expect(verdict.outcome).toBe("not enough");
    expect(Number(/take ([\d.]+) mm/u.exec(verdict.change!)![1])).toBeLessThan(10);
  });

  it("that no size of its own fibre mends is led to another fibre, which passes", () => {
    const trim: LineJob = {
      ...job,
      sheave: { diameter: 0.016, grooveWidth: 0.004 },
      stretch: { length: 2.2, tensionChange: 200, allowed: 0.008 },
    };
    const polyester = { fibre: "polyester", construction: "doubleBraid", diameter: 0.003 } as const;
    expect(thinVerdict(polyester, trim)).not.toHaveProperty("change");
    const { change } = thinVerdict(polyester, trim, { others: [kind] });
    const size = Number(/take ([\d.]+) mm HMPE/u.exec(change!)![1]) / 1000;
    expect(thinVerdict({ ...kind, diameter: size }, trim).outcome).not.toBe("not enough");
  });

  it("that holds needs no change", () => {
    expect(thinVerdict({ ...kind, diameter: 0.004 }, job)).not.toHaveProperty("change");
  });
});
