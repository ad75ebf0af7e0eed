import { describe, expect, it } from "vitest";
import { sailCoefficients } from "../../src/wind/coefficients.js";
import { sailRecords } from "../../src/wind/sail-records.js";

const choice = { edition: "orc-2013", sail: "gennaker", apparentWindAngle: (100 * Math.PI) / 180 } as const;

describe("records of a sail at one angle", () => {
  it("hold the values of the table, with a spread and the edition's source", () => {
    const { lift, drag } = sailRecords(choice);
    const { liftCoefficient, dragCoefficient } = sailCoefficients(choice);
    expect(lift.value).toBe(liftCoefficient);
    expect(drag.value).toBe(dragCoefficient);
    expect(lift.low).toBeLessThan(lift.value);
    expect(lift).toMatchObject({ status: "published", source: "orc-coefficients-2013" });
    expect(lift.place).toContain("gennaker at 100°");
  });

  it("hold their value where the lift is below zero", () => {
    const { lift } = sailRecords({ ...choice, apparentWindAngle: Math.PI });
    expect(lift.value).toBeLessThan(0);
    expect(lift.low).toBeLessThan(lift.value);
  });
});
