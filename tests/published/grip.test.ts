import { describe, expect, it } from "vitest";
import { publishedChecks } from "../../src/published/registry.js";

const rows = publishedChecks("grip");

describe("what is known of grip", () => {
  it("is little in print, and much in the trade", () => {
    expect(rows.filter(({ evidence }) => evidence === "published")).toHaveLength(4);
    expect(rows.filter(({ evidence }) => evidence === "none")).toHaveLength(12);
    expect(rows).toHaveLength(16);
  });

  it("counts no rule of the trade as evidence", () => {
    for (const { evidence, status, source } of rows) {
      expect(status).toBe(evidence === "none" ? "common practice" : "published");
      expect(source === undefined).toBe(evidence === "none");
    }
  });
});
