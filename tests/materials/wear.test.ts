import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Cover, type CoverFibre, coverName, type StrandCount } from "../../src/materials/covers.js";
import { type TreadName, treads } from "../../src/materials/surfaces.js";
import {
  fibreWear,
  treadHarshness,
  type WearInput,
  wearRate,
  wearRule,
  wearVerdict,
} from "../../src/materials/wear.js";

const seed = { seed: 7 };
const names = Object.keys(treads) as TreadName[];
const counts: readonly StrandCount[] = [8, 16, 24];
const kinds: readonly CoverFibre[] = ["polyester", "aramidBlend", "bareCore"];
const pairs: fc.Arbitrary<WearInput> = fc.record({
  tread: fc.constantFrom(...names),
  cover: fc.record({ strands: fc.constantFrom(...counts), fibre: fc.constantFrom(...kinds), wet: fc.boolean() }),
});
const dry = (strands: StrandCount, fibre: CoverFibre = "polyester"): Cover => ({ strands, fibre, wet: false });
const all = names.flatMap((tread) =>
  counts.flatMap((strands) => kinds.map((fibre): WearInput => ({ tread, cover: dry(strands, fibre) }))),
);

describe("the wear rate of a cover on a tread", () => {
  it("is one, without a range, for the pair that it is measured by", () => {
    const reference = wearRate({ tread: "toothed", cover: dry(24) });
    expect(reference.value).toBe(1);
    expect(reference.low).toBeCloseTo(1, 12);
    expect(reference.high).toBeCloseTo(1, 12);
  });

  it("grows with coarseness between the thickness and the width of a strand", () => {
    for (const [strands, coarser] of [
      [16, 1.5],
      [8, 3],
    ] as const) {
      const { low, value, high } = wearRate({ tread: "toothed", cover: dry(strands) });
      expect(low).toBeCloseTo(Math.sqrt(coarser), 12);
      expect(high).toBeCloseTo(coarser, 12);
      expect(value).toBeGreaterThan(low);
      expect(value).toBeLessThan(high);
    }
  });

  it("scales with the harshness of the tread, whatever the cover", () => {
    fc.assert(
      fc.property(pairs, fc.constantFrom(...names), ({ tread, cover }, other) => {
        const ratio = wearRate({ tread: other, cover }).value / wearRate({ tread, cover }).value;
        expect(ratio).toBeCloseTo(treadHarshness[other].value / treadHarshness[tread].value, 10);
      }),
      seed,
    );
  });

  it("does not ask whether the cover is wet, and has its value inside its range", () => {
    fc.assert(
      fc.property(pairs, ({ tread, cover }) => {
        const rate = wearRate({ tread, cover });
        expect(wearRate({ tread, cover: { ...cover, wet: !cover.wet } })).toEqual(rate);
        expect(rate.low).toBeGreaterThan(0);
        expect(rate.low).toBeLessThanOrEqual(rate.value);
        expect(rate.high).toBeGreaterThanOrEqual(rate.value);
      }),
      seed,
    );
  });

  it("counts the strands of a stripped core, not those of the cover it has lost", () => {
    const rates = counts.map((strands) => wearRate({ tread: "faceted", cover: dry(strands, "bareCore") }));
    expect(rates[1]).toEqual(rates[0]);
    expect(rates[2]).toEqual(rates[0]);
    expect(rates[0]!.value).toBeGreaterThan(wearRate({ tread: "faceted", cover: dry(16) }).value);
    expect(rates[0]!.value).toBeLessThan(wearRate({ tread: "faceted", cover: dry(8) }).value);
  });

  it("is surest for polyester", () => {
    const width = (fibre: CoverFibre) => fibreWear[fibre].high / fibreWear[fibre].low;
    expect(width("polyester")).toBe(1);
    expect(width("aramidBlend")).toBeGreaterThan(1);
    expect(width("bareCore")).toBeGreaterThan(width("aramidBlend"));
  });
});

describe("the verdict on a cover and a tread", () => {
  const outcome = (tread: TreadName, strands: StrandCount) => wearVerdict({ tread, cover: dry(strands) }).outcome;

  it("lets only a smooth cover last on toothed metal, and sends a coarse one to a softer tread", () => {
    expect(counts.map((strands) => outcome("toothed", strands))).toEqual(["not enough", "not enough", "enough"]);
    expect(counts.map((strands) => outcome("ribbed", strands))).toEqual(["enough", "enough", "enough"]);
    expect(counts.map((strands) => outcome("smooth", strands))).toEqual(["enough", "enough", "enough"]);
  });

  it("never gets better on a harsher tread or with fewer strands", () => {
    const rank = (input: WearInput) => ["not enough", "can't tell", "enough"].indexOf(wearVerdict(input).outcome);
    fc.assert(
      fc.property(pairs, pairs, (one, other) => {
        const { fibre, wet } = one.cover;
        const second = { tread: other.tread, cover: { strands: other.cover.strands, fibre, wet } };
        const harsher = treadHarshness[second.tread].value >= treadHarshness[one.tread].value;
        if (harsher && second.cover.strands <= one.cover.strands) expect(rank(second)).toBeLessThanOrEqual(rank(one));
      }),
      seed,
    );
  });

  it("agrees with the rate and the limit at both ends", () => {
    for (const input of all) {
      const rate = wearRate(input);
      const verdict = wearVerdict(input).outcome;
      if (rate.high <= wearRule.lastingRate.low) expect(verdict).toBe("enough");
      expect(verdict === "not enough").toBe(rate.value > wearRule.lastingRate.value);
    }
  });

  it("names a change where a pair does not hold, and the change holds", () => {
    for (const input of all) {
      const { outcome, change } = wearVerdict(input);
      expect(change === undefined).toBe(outcome === "enough");
    }
    expect(wearVerdict({ tread: "toothed", cover: dry(8) }).change).toMatch(/^a 24-strand cover: wear rate 1,/u);
    expect(outcome("toothed", 24)).toBe("enough");
    expect(wearVerdict({ tread: "faceted", cover: dry(8) }).change).toMatch(/^a 16-strand cover/u);
    expect(outcome("faceted", 16)).toBe("enough");
    expect(wearVerdict({ tread: "toothed", cover: dry(24, "bareCore") }).change).toMatch(/^a ribbed soft tread/u);
  });

  it("says which cover and tread it speaks of, with numbers", () => {
    const { subject, reason } = wearVerdict({ tread: "toothed", cover: { ...dry(8), wet: true } });
    expect(subject).toBe("8-strand polyester, wet, on a toothed metal tread");
    expect(reason).toMatch(/\d/u);
    expect(coverName(dry(24, "bareCore"))).toBe("stripped HMPE core, dry");
  });
});
