import { describe, expect, it } from "vitest";
import { outcomeOf } from "../../src/quantity/verdict.js";

describe("how a limit stands", () => {
  it.each([
    [1.5, 1.2, "enough"],
    [1.5, 1, "enough"],
    [1.5, 0.99, "can't tell"],
    [1, 0.5, "can't tell"],
    [0.99, 0.5, "not enough"],
    [Number.NaN, Number.NaN, "not enough"],
  ] as const)("middle %s, worst %s: %s", (middle, worst, outcome) => {
    expect(outcomeOf({ middle, worst })).toBe(outcome);
  });
});
