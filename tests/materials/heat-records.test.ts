import { describe, expect, it } from "vitest";
import { fibres } from "../../src/materials/fibres.js";
import { heatLimits } from "../../src/materials/heat-limits.js";
import { rubbedHardware } from "../../src/materials/rubbed-hardware.js";
import { hand, skinLimits } from "../../src/materials/skin.js";
import { exposures, lampToSun } from "../../src/materials/sunlight.js";
import { crownShare, fibreHeat, solids, yarnFill } from "../../src/materials/thermal.js";
import { convert } from "../../src/quantity/parse.js";
import type { Coefficient } from "../../src/sources/coefficient.js";

const tables = {
  fibreHeat,
  solids,
  heatLimits,
  rubbedHardware,
  hand,
  skinLimits,
  exposures,
  lampToSun,
  crownShare,
  yarnFill,
};

function* walk(path: string, value: unknown): Generator<[string, Coefficient]> {
  if (typeof value !== "object" || value === null) return;
  if ("status" in value && "value" in value) yield [path, value as Coefficient];
  else for (const [key, inner] of Object.entries(value)) yield* walk(`${path}.${key}`, inner);
}

const records = Object.entries(tables).flatMap(([name, table]) => [...walk(name, table)]);
const units = new Set(["1", "W/(m K)", "kg/m^3", "J/(kg K)", "K", "m", "kg", "1/s"]);

describe("records of heat", () => {
  it("are many", () => {
    expect(records.length).toBeGreaterThan(80);
  });

  it.each(records)("%s lies above zero, says where it comes from, in a unit of SI", (_path, { low, place, unit }) => {
    expect(low).toBeGreaterThan(0);
    expect(place.length).toBeGreaterThan(10);
    expect(units.has(unit)).toBe(true);
    if (unit !== "1") expect(Number.isFinite(convert(1, unit, unit))).toBe(true);
  });

  it.each(records.filter(([path]) => path !== "skinLimits.damageFactor"))("%s has a spread", (_path, { low, high }) => {
    expect(high).toBeGreaterThan(low);
  });
});

describe("limits of fibres", () => {
  const rows = Object.entries(heatLimits);

  it.each(rows)("%s: in service cooler than marked, marked before its end", (_name, { service, damage, end }) => {
    expect(service.value).toBeLessThan(damage.value);
    expect(damage.value).toBeLessThan(end.value);
  });

  it("are known for every fibre of the table, and for the blend of covers", () => {
    expect(Object.keys(heatLimits).sort()).toEqual([...Object.keys(fibres), "aramidBlend"].sort());
    expect(Object.keys(exposures).sort()).toEqual(Object.keys(fibres).sort());
  });
});
