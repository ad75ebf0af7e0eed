import { describe, expect, it } from "vitest";
import { coverage } from "../../src/published/fit-trials.js";

describe("the 95 % intervals over a thousand made-up lines", () => {
  it.each(Object.entries(coverage()))("hold the truth in 93 to 97 %%: %s", (_, share) => {
    expect(share).toBeGreaterThanOrEqual(0.93);
    expect(share).toBeLessThanOrEqual(0.97);
  });

  it("are counted for ratio and drag, of the line, of a turn, and with what was known before", () => {
    expect(Object.keys(coverage())).toHaveLength(6);
  });
});
