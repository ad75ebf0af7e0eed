import { describe, expect, it } from "vitest";
import { ValueError } from "../../src/quantity/errors.js";
import { type Coefficient, coefficient, origin } from "../../src/sources/coefficient.js";

const judged: Coefficient = { value: 0.15, unit: "1", low: 0.1, high: 0.2, status: "from memory", place: "handbooks" };
const read: Coefficient = { ...judged, status: "published", source: "delaney-2022", place: "p. 88" };

describe("coefficient record", () => {
  it("lets records through that agree with themselves", () => {
    expect(coefficient(judged)).toBe(judged);
    expect(coefficient(read)).toBe(read);
    expect(coefficient({ ...judged, low: 0.15, high: 0.15 }).value).toBe(0.15);
  });

  it.each([
    ["value below low", { ...judged, value: 0.05 }],
    ["value above high", { ...judged, value: 0.25 }],
    ["low above high", { ...judged, low: 0.3 }],
    ["value that is no number", { ...judged, value: Number.NaN }],
    ["low that is no number", { ...judged, low: Number.NaN }],
    ["high that is no number", { ...judged, high: Number.NaN }],
    ["endless high", { ...judged, high: Number.POSITIVE_INFINITY }],
    ["endless low", { ...judged, low: Number.NEGATIVE_INFINITY }],
  ])("refuses a %s", (_what, record) => {
    expect(() => coefficient(record)).toThrow(ValueError);
    expect(() => coefficient(record)).toThrow(/low ≤ value ≤ high, all finite/u);
  });

  it("refuses a published value without a source, and a source without a published value", () => {
    const { source: _source, ...unsourced } = read;
    expect(() => coefficient(unsourced)).toThrow(/status "published" with no source/u);
    for (const status of ["common practice", "from memory", "invented for the demo"] as const)
      expect(() => coefficient({ ...read, status })).toThrow(/a source exactly when the status is published/u);
  });

  it("says in words where it comes from", () => {
    expect(origin(read)).toBe("Physics for Roping Technicians: p. 88");
    expect(origin(judged)).toBe("from memory: handbooks");
    expect(origin({ status: "common practice", place: "" })).toBe("common practice");
  });
});
