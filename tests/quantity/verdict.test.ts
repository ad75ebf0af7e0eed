import { describe, expect, it } from "vitest";
import { outcomeOf } from "../../src/quantity/verdict.js";

describe("how a limit stands", () => {
  it.each([
    [1.5, 1.2, "holds"],
    [1.5, 1, "holds"],
    [1.5, 0.99, "doubtful"],
    [1, 0.5, "doubtful"],
    [0.99, 0.5, "fails"],
    [Number.NaN, Number.NaN, "fails"],
  ] as const)("middle %s, worst %s: %s", (middle, worst, outcome) => {
    expect(outcomeOf({ middle, worst })).toBe(outcome);
  });
});
