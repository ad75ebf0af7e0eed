import { describe, expect, it } from "vitest";
import { publishedChecks } from "../../src/published/registry.js";

const rows = publishedChecks("crew");

describe("what is known of endurance", () => {
  it("is whole: three groups at nine loads by law, by model and in their difference", () => {
    expect(rows).toHaveLength(81);
    expect(rows.filter(({ unit }) => unit === "s")).toHaveLength(54);
    expect(rows.every(({ evidence }) => evidence === "published")).toBe(true);
  });

  it("shows the model's own errors to a point, from +11 % to −71 % for grip", () => {
    const grip = rows.filter(({ id }) => id.includes("-error-hand-"));
    expect(grip.map(({ expected }) => expected)).toEqual([1, 6, 11, 10, 3, -9, -25, -46, -71]);
    expect(grip.every(({ deviation }) => Math.abs(deviation) <= 0.5)).toBe(true);
  });
});
