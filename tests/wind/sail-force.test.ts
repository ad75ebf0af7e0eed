import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { OutsideModelError, ValueError } from "../../src/quantity/errors.js";
import { type SailEdition, sailCoefficients, sailEditions } from "../../src/wind/coefficients.js";
import { coefficientForce, sailForce } from "../../src/wind/sail-force.js";
import type { SailName, SailTable } from "../../src/wind/sail-table.js";
import { evenly } from "../numerics/evenly.js";

const seed = { seed: 7 };
const radians = (degrees: number) => degrees * (Math.PI / 180);

interface NamedTable {
  readonly edition: SailEdition;
  readonly sail: SailName;
  readonly table: SailTable;
}

const tables: readonly NamedTable[] = (Object.keys(sailEditions) as SailEdition[]).flatMap((edition) =>
  Object.entries(sailEditions[edition].sails).map(([sail, table]) => ({ edition, sail: sail as SailName, table })),
);

const anyTable = fc.constantFrom(...tables);
const fraction = evenly(0, 1);
const wind = { sailArea: 7, apparentWindSpeed: 8, airDensity: 1.225 };

describe("sail coefficients", () => {
  it("has the same number of angles, lifts and drags in all 16 tables", () => {
    expect(tables).toHaveLength(16);
    for (const { table } of tables) {
      expect(table.lift).toHaveLength(table.angleDegrees.length);
      expect(table.drag).toHaveLength(table.angleDegrees.length);
    }
  });

  it("gives the printed values at every printed angle, both ends included", () => {
    for (const { edition, sail, table } of tables) {
      table.angleDegrees.forEach((degrees, i) => {
        const found = sailCoefficients({ edition, sail, apparentWindAngle: radians(degrees) });
        expect(found.liftCoefficient).toBeCloseTo(table.lift[i]!, 12);
        expect(found.dragCoefficient).toBeCloseTo(table.drag[i]!, 12);
      });
    }
  });

  it("stays between the two printed values around an angle", () => {
    fc.assert(
      fc.property(anyTable, fraction, fraction, ({ edition, sail, table }, piece, t) => {
        const i = Math.min(Math.floor(piece * (table.angleDegrees.length - 1)), table.angleDegrees.length - 2);
        const degrees = table.angleDegrees[i]! + t * (table.angleDegrees[i + 1]! - table.angleDegrees[i]!);
        const found = sailCoefficients({ edition, sail, apparentWindAngle: radians(degrees) });
        for (const [value, nodes] of [
          [found.liftCoefficient, table.lift],
          [found.dragCoefficient, table.drag],
        ] as const) {
          expect(value).toBeGreaterThanOrEqual(Math.min(nodes[i]!, nodes[i + 1]!) - 1e-12);
          expect(value).toBeLessThanOrEqual(Math.max(nodes[i]!, nodes[i + 1]!) + 1e-12);
        }
      }),
      seed,
    );
  });

  it("refuses an angle outside the table and names edition and range", () => {
    const input = { edition: "orc-2013", sail: "symmetricSpinnaker" } as const;
    const refused = () => sailCoefficients({ ...input, apparentWindAngle: radians(20) });
    expect(refused).toThrow(OutsideModelError);
    expect(refused).toThrow(/ORC 2013.*20°.*28° to 180°/u);
    expect(() => sailCoefficients({ ...input, apparentWindAngle: radians(27.99) })).toThrow(OutsideModelError);
    expect(() => sailCoefficients({ ...input, apparentWindAngle: Number.NaN })).toThrow(ValueError);
    expect(() => sailCoefficients({ ...input, apparentWindAngle: -0.1 })).toThrow(ValueError);
  });

  it("refuses an unknown edition or sail and lists what there is", () => {
    const edition = "orc-1999" as SailEdition;
    expect(() => sailCoefficients({ edition, sail: "main", apparentWindAngle: 1 })).toThrow(/"orc-2013"/u);
    expect(() => sailCoefficients({ edition: "orc-undated", sail: "jib", apparentWindAngle: 1 })).toThrow(/"main"/u);
    const sail = "toString" as SailName;
    expect(() => sailCoefficients({ edition: "orc-2013", sail, apparentWindAngle: 1 })).toThrow(ValueError);
  });
});

describe("sail force", () => {
  it("is nothing in a calm", () => {
    const force = sailForce({
      ...wind,
      edition: "orc-2013",
      sail: "main",
      apparentWindAngle: 1,
      apparentWindSpeed: 0,
    });
    expect(force).toMatchObject({ lift: 0, drag: 0, sailForce: 0, drive: 0, side: 0 });
  });

  it("grows with area, with density and with the square of wind speed", () => {
    fc.assert(
      fc.property(anyTable, fraction, ({ edition, sail, table }, t) => {
        const first = table.angleDegrees[0]!;
        const apparentWindAngle = radians(first + t * (180 - first));
        const base = { ...wind, edition, sail, apparentWindAngle };
        const once = sailForce(base).sailForce;
        expect(sailForce({ ...base, sailArea: 14 }).sailForce).toBeCloseTo(2 * once, 7);
        expect(sailForce({ ...base, airDensity: 2.45 }).sailForce).toBeCloseTo(2 * once, 7);
        expect(sailForce({ ...base, apparentWindSpeed: 16 }).sailForce).toBeCloseTo(4 * once, 7);
      }),
      seed,
    );
  });

  it("is one force in two pairs of axes: the resultant is the same", () => {
    fc.assert(
      fc.property(
        evenly(-1, 2),
        evenly(0, 2),
        evenly(0, Math.PI),
        (liftCoefficient, dragCoefficient, apparentWindAngle) => {
          const force = coefficientForce({ ...wind, liftCoefficient, dragCoefficient, apparentWindAngle });
          expect(Math.hypot(force.drive, force.side)).toBeCloseTo(force.sailForce, 8);
          // Drag is the part of the force along the wind, which blows from β towards β + 180°.
          const alongWind = -force.drive * Math.cos(apparentWindAngle) + force.side * Math.sin(apparentWindAngle);
          expect(alongWind).toBeCloseTo(force.drag, 8);
        },
      ),
      seed,
    );
  });

  it("pushes forward from dead astern by drag alone, and sideways from the beam by drag", () => {
    const given = { ...wind, liftCoefficient: 0, dragCoefficient: 1.3 };
    const astern = coefficientForce({ ...given, apparentWindAngle: Math.PI });
    expect(astern.drive).toBeCloseTo(astern.drag, 9);
    expect(astern.side).toBeCloseTo(0, 9);
    const beam = coefficientForce({ ...given, apparentWindAngle: Math.PI / 2 });
    expect(beam.side).toBeCloseTo(beam.drag, 9);
    expect(beam.forceAngle).toBeCloseTo(Math.PI / 2, 9);
  });

  it("has more drag and less drive with the drag that lift induces, and none of it at a great aspect ratio", () => {
    const base = { ...wind, edition: "orc-2013", sail: "main", apparentWindAngle: radians(28) } as const;
    const without = sailForce(base);
    const low = sailForce({ ...base, effectiveAspectRatio: 3 });
    expect(low.lift).toBe(without.lift);
    expect(low.drive).toBeLessThan(without.drive);
    const expected = without.liftCoefficient ** 2 * (1 / (3 * Math.PI) + 0.005);
    expect(low.dragCoefficient - without.dragCoefficient).toBeCloseTo(expected, 12);
    expect(() => sailForce({ ...base, effectiveAspectRatio: 0.3 })).toThrow(OutsideModelError);
    expect(() => sailForce({ ...base, effectiveAspectRatio: 0 })).toThrow(ValueError);
    expect(() => sailForce({ ...base, effectiveAspectRatio: Number.NaN })).toThrow(ValueError);
  });

  it("refuses a sail without area and winds that cannot be", () => {
    const base = { ...wind, edition: "orc-2013", sail: "main", apparentWindAngle: 1 } as const;
    expect(() => sailForce({ ...base, sailArea: 0 })).toThrow(/sail area/u);
    expect(() => sailForce({ ...base, sailArea: -7 })).toThrow(ValueError);
    expect(() => sailForce({ ...base, apparentWindSpeed: Number.NaN })).toThrow(ValueError);
  });
});
