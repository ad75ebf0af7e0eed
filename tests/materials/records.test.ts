import { describe, expect, it } from "vitest";
import * as library from "../../src/index.js";
import { fibres } from "../../src/materials/fibres.js";
import { convert } from "../../src/quantity/parse.js";
import { bibliography } from "../../src/sources/bibliography.js";
import type { Coefficient } from "../../src/sources/coefficient.js";

/** Every table that the library offers: whatever stands in it as a record is a coefficient. */
const tables = Object.entries(library).filter(([, value]) => typeof value === "object");

/** Every coefficient below a table, with the path that leads to it. */
function* walk(path: string, value: unknown): Generator<[string, Coefficient]> {
  if (typeof value !== "object" || value === null) return;
  if ("status" in value && "value" in value) yield [path, value as Coefficient];
  else for (const [key, inner] of Object.entries(value)) yield* walk(`${path}.${key}`, inner);
}

const records = tables.flatMap(([name, table]) => [...walk(name, table)]);

describe("coefficients of the materials", () => {
  it("are many, and of all folders", () => {
    expect(records.length).toBeGreaterThanOrEqual(120);
    for (const name of ["bearings", "fibres", "practice", "surfaces", "ropeEnds", "constructions", "safetyFactors"])
      expect(
        records.some(([path]) => path.startsWith(`${name}.`)),
        name,
      ).toBe(true);
  });

  it.each(records)(
    "%s holds its value within its spread, above zero where it is no exponent or term",
    (path, { low, value, high }) => {
      if (!/exponent$|Terms\./u.test(path)) expect(low).toBeGreaterThan(0);
      expect(value).toBeGreaterThanOrEqual(low);
      expect(high).toBeGreaterThanOrEqual(value);
      expect(Number.isFinite(high)).toBe(true);
    },
  );

  it.each(records)("%s has a unit of SI", (_path, { unit }) => {
    if (unit === "1") return;
    const base = unit
      .replaceAll(/\bW\b/gu, "(kg m^2 / s^3)")
      .replaceAll(/\bJ\b/gu, "(kg m^2 / s^2)")
      .replaceAll(/\bPa\b/gu, "(kg / m / s^2)")
      .replaceAll(/\bN\b/gu, "(kg m / s^2)");
    expect(base.replaceAll(/\b(?:kg|m|s|K|rad)\b/gu, "")).not.toMatch(/[a-z]/iu);
    expect(convert(1, unit, base)).toBeCloseTo(1, 12);
  });

  it.each(records)("%s says where it comes from", (_path, { status, source, place }) => {
    expect(place.length).toBeGreaterThan(5);
    expect(source !== undefined).toBe(status === "published");
    if (source !== undefined) expect(Object.keys(bibliography)).toContain(source);
  });

  it.each(records)(
    "%s has a real spread unless it is a reference, a printed rule or law",
    (path, { low, high, place }) => {
      if (place.startsWith("the reference")) expect(low).toBe(high);
      else if (/^(?:block|sheave)Rules\./u.test(path)) expect(high).toBeGreaterThanOrEqual(low);
      else expect(high).toBeGreaterThan(low);
    },
  );
});

describe("the fibre table", () => {
  const rows = Object.entries(fibres);

  it.each(rows)("%s: a yarn breaks before it has stretched by half", (_name, { tenacity, modulus }) => {
    const strainAtBreak = tenacity.value / modulus.value;
    expect(strainAtBreak).toBeGreaterThan(0.01);
    expect(strainAtBreak).toBeLessThan(0.5);
  });

  it("keeps tenacity in N/(kg/m), a million times the printed newtons a tex", () => {
    expect(fibres.hmpe.tenacity.value).toBeCloseTo(2.65 * convert(1, "N/tex", "N*m/kg"), 3);
  });

  it("lets polypropylene and HMPE float and all others sink", () => {
    for (const [name, { density }] of rows)
      expect(density.value < 1000).toBe(["polypropylene", "hmpe", "hmpeHighModulus"].includes(name));
  });
});
