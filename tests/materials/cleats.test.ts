import { describe, expect, it } from "vitest";
import { cleats, gripRecords } from "../../src/materials/cleats.js";
import { creepLaws } from "../../src/materials/creep.js";
import { stiffnessConversion, stiffnessRatios } from "../../src/materials/elasticity.js";
import type { Coefficient } from "../../src/sources/coefficient.js";

/** Every coefficient below a table, with the path that leads to it. */
function* walk(path: string, value: unknown): Generator<[string, Coefficient]> {
  if (typeof value !== "object" || value === null) return;
  if ("status" in value && "value" in value) yield [path, value as Coefficient];
  else for (const [key, inner] of Object.entries(value)) yield* walk(`${path}.${key}`, inner);
}

const tables = { cleats, gripRecords, creepLaws, stiffnessRatios, stiffnessConversion };
const records = Object.entries(tables).flatMap(([name, table]) => [...walk(name, table)]);

describe("records of cleats, stretch and creep", () => {
  it("are many", () => expect(records.length).toBeGreaterThan(50));

  it.each(records)("%s has a real spread above zero and says where it comes from", (_path, record) => {
    expect(record.low).toBeGreaterThan(0);
    expect(record.high).toBeGreaterThan(record.low);
    expect(record.place.length).toBeGreaterThan(5);
    expect(["1", "rad", "N", "m", "K", "1/s", "Pa"]).toContain(record.unit);
  });

  it("claim to be printed only where a source was read", () => {
    const printed = records.filter(([, { status }]) => status === "published").map(([path]) => path);
    const cleatsPrinted = printed.filter((path) => !path.startsWith("stiffnessRatios"));
    expect(cleatsPrinted).toEqual(["cleats.vee.stands", "gripRecords.veeOverRound"]);
  });

  it("let every fibre creep less than a rope stretches at a fifth of its break load", () => {
    for (const { perDecade } of Object.values(creepLaws)) expect(perDecade.value).toBeLessThan(0.0143);
  });
});
